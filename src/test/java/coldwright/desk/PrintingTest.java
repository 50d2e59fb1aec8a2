package coldwright.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.desk.say.Say;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonReader;
import coldwright.print.Edition;
import coldwright.print.Wish;
import coldwright.workbook.settings.Preferences;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Real runs, real files; only the window is missing. */
class PrintingTest {
    private static final Lesson LESSON =
            LessonReader.read(
                    "weighing.md",
                    "# Weighing\n\n## Twice\n\n```java\nint massG = 20;\nmassG * 2\n```\n\n```java\nmassG +\n```\n");

    @TempDir Path folder;

    private List<String> printed(Edition edition, Path file, boolean agreed) {
        return printed(LESSON, edition, file, agreed);
    }

    private static List<String> printed(Lesson lesson, Edition edition, Path file, boolean agreed) {
        List<String> told = new ArrayList<>();
        ExecutorService work = Executors.newCachedThreadPool();
        try {
            new Printing(
                            work,
                            Runnable::run,
                            () -> new BenchRunner(work, Preferences::usual),
                            told::add)
                    .write(lesson, Wish.of(edition), file, agreed)
                    .join();
        } finally {
            work.shutdown();
        }
        return told;
    }

    @Test
    void runsTheLessonAnewAndSaysWhatFailed() throws IOException {
        Path file = folder.resolve("a.html");
        assertEquals(
                List.of(
                        Say.of("handout.going", "a.html"),
                        Say.of("handout.done-with-trouble", "a.html")),
                printed(Edition.READER, file, true));
        String html = Files.readString(file);
        assertTrue(html.contains("<pre class=\"came\">40</pre>"), html);
        assertTrue(html.contains("<p class=\"trouble\">"), html);
    }

    @Test
    void theBlankOfAStrangersLessonIsAPdfAndRunsNothing() throws IOException {
        Path file = folder.resolve("b.pdf");
        assertEquals(
                List.of(Say.of("handout.going", "b.pdf"), Say.of("handout.done", "b.pdf")),
                printed(Edition.BLANK, file, false));
        assertTrue(Files.readString(file, StandardCharsets.ISO_8859_1).startsWith("%PDF-"));
    }

    @Test
    void theBlankHasTheAxesOfItsFiguresToDrawOn() throws IOException {
        Path file = folder.resolve("d.html");
        Lesson drawn =
                LessonReader.read(
                        "drawn.md",
                        "# Drawn\n\n## One\n\n```java\nshow(Figure.of(\"Brine\").x(\"salt\", \"%\").y(\"t\", \"°C\").line(\"a\", 0, 20, Brine::freezingPointC));\n```\n");
        printed(drawn, Edition.BLANK, file, true);
        assertTrue(Files.readString(file).contains("<svg"));
        printed(drawn, Edition.BLANK, file, false);
        assertFalse(Files.readString(file).contains("<svg"));
    }

    @Test
    void aFolderThatIsNotThereIsToldOf() {
        List<String> told = printed(Edition.BLANK, folder.resolve("no").resolve("c.pdf"), false);
        assertEquals(2, told.size());
        assertTrue(told.get(1).contains("c.pdf can’t be written"), told.get(1));
    }
}
