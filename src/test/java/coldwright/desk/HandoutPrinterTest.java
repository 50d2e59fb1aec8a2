package coldwright.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.desk.messages.Messages;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonReader;
import coldwright.print.HandoutEdition;
import coldwright.print.HandoutOptions;
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
class HandoutPrinterTest {
    private static final Lesson LESSON =
            LessonReader.read(
                    "weighing.md",
                    "# Weighing\n\n## Twice\n\n```java\nint massG = 20;\nmassG * 2\n```\n\n```java\nmassG +\n```\n");

    @TempDir Path folder;

    private List<String> printed(HandoutEdition edition, Path file, boolean agreed) {
        return printed(LESSON, edition, file, agreed);
    }

    private static List<String> printed(
            Lesson lesson, HandoutEdition edition, Path file, boolean agreed) {
        List<String> told = new ArrayList<>();
        ExecutorService work = Executors.newCachedThreadPool();
        try {
            new HandoutPrinter(
                            work,
                            Runnable::run,
                            () -> new BenchRunner(work, Preferences::usual),
                            told::add)
                    .write(lesson, HandoutOptions.of(edition), file, agreed)
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
                        Messages.of("handout.going", "a.html"),
                        Messages.of("handout.done-with-error", "a.html")),
                printed(HandoutEdition.READER, file, true));
        String html = Files.readString(file);
        assertTrue(html.contains("<pre class=\"came\">40</pre>"), html);
        assertTrue(html.contains("<p class=\"trouble\">"), html);
    }

    @Test
    void theBlankOfAStrangersLessonIsAPdfAndRunsNothing() throws IOException {
        Path file = folder.resolve("b.pdf");
        assertEquals(
                List.of(
                        Messages.of("handout.going", "b.pdf"),
                        Messages.of("handout.done", "b.pdf")),
                printed(HandoutEdition.BLANK, file, false));
        assertTrue(Files.readString(file, StandardCharsets.ISO_8859_1).startsWith("%PDF-"));
    }

    @Test
    void theBlankHasTheAxesOfItsFiguresToDrawOn() throws IOException {
        Path file = folder.resolve("d.html");
        Lesson drawn =
                LessonReader.read(
                        "drawn.md",
                        "# Drawn\n\n## One\n\n```java\nshow(Figure.of(\"Brine\").x(\"salt\", \"%\").y(\"t\", \"°C\").line(\"a\", 0, 20, Brine::freezingPointC));\n```\n");
        printed(drawn, HandoutEdition.BLANK, file, true);
        assertTrue(Files.readString(file).contains("<svg"));
        printed(drawn, HandoutEdition.BLANK, file, false);
        assertFalse(Files.readString(file).contains("<svg"));
    }

    @Test
    void aFolderThatIsNotThereIsToldOf() {
        List<String> told =
                printed(HandoutEdition.BLANK, folder.resolve("no").resolve("c.pdf"), false);
        assertEquals(2, told.size());
        assertTrue(told.get(1).contains("c.pdf can’t be written"), told.get(1));
    }
}
