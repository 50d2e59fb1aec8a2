package coldwright.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Folded lines as docs/lesson-format.md describes them. */
class AsideTest {
    @Test
    void foldsToTheNextEmptyLineOrTheEnd() {
        assertEquals(
                List.of(new Aside(1, 2, "draws"), new Aside(5, 7, "prints it")),
                Aside.in("a();\n// aside: draws\nb();\n\nc();\n//aside: prints it \nd();\ne();"));
    }

    @Test
    void quotedOrOrdinaryWordsFoldNothing() {
        assertEquals(List.of(), Aside.in("String a = \"\"\"\n// aside: x\nb\n\"\"\";"));
        assertEquals(List.of(), Aside.in("/*\n// aside: x\n*/\nb();\n// set it aside\nc();"));
        assertEquals(List.of(), Aside.in("// asides: two\nb();"));
    }

    @Test
    void eachMistakeHasItsLineAndItsFix() {
        assertEquals(
                List.of("4: the aside has no words; write it like `// aside: draws the chart`"),
                faults("// aside\na();"));
        assertEquals(
                List.of("4: the aside has no words; write it like `// aside: draws the chart`"),
                faults("// aside:\na();"));
        assertEquals(
                List.of("5: the aside is behind other code; put its comment on a line of its own"),
                faults("a();\nb(); // aside: draws\nc();"));
        assertEquals(
                List.of("6: the aside is inside another one; put an empty line before it"),
                faults("// aside: draws\na();\n// aside: prints\nb();"));
        assertEquals(
                List.of("4: nothing follows the aside; put the lines to fold directly under it"),
                faults("// aside: draws\n\na();"));
    }

    private static List<String> faults(String code) {
        FaultList faults = new FaultList("a.md");
        Aside.read(code, line -> line + 4, faults);
        return faults.inOrder().stream().map(one -> one.line() + ": " + one.words()).toList();
    }

    /** In every lesson something essential is left, dials included, and asides are in most. */
    @Test
    void theLessonsKeepTheirEssentialLines() throws Exception {
        int marked = 0;
        try (var files = Files.list(Path.of("lessons"))) {
            for (Path file : files.filter(one -> one.toString().endsWith(".md")).toList()) {
                Lesson lesson = LessonReader.read(file.toString(), Files.readString(file));
                for (LessonStep step : lesson.steps()) {
                    for (var snippet : LessonPart.only(LessonPart.Snippet.class, step.parts())) {
                        marked += keepsItsEssence(snippet, file);
                    }
                }
            }
        }
        assertTrue(marked >= 100, "marked: " + marked);
    }

    private static int keepsItsEssence(LessonPart.Snippet snippet, Path file) {
        List<Aside> asides = Aside.in(snippet.code());
        int folded = asides.stream().mapToInt(one -> one.size() + 1).sum();
        String where = file + ":" + snippet.line();
        assertTrue(folded < snippet.code().lines().count(), where);
        for (Dial dial : snippet.dials()) {
            long line = snippet.code().substring(0, dial.start()).lines().count() - 1;
            assertTrue(
                    asides.stream()
                            .noneMatch(one -> line >= one.firstLine() && line <= one.lastLine()),
                    where);
        }
        return asides.size();
    }
}
