package coldwright.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonReader;
import coldwright.terminal.check.LessonCheck;
import coldwright.terminal.check.ParallelLessonChecks;
import coldwright.terminal.console.BlockingBench;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Every lesson keeps its promises: its snippets run, its check lines pass and the numbers in its
 * text are the calculator's. Plays the lessons as the command {@code check lessons} does.
 */
class LessonsTest {
    private static final Path LESSONS = Path.of("lessons");

    @TestFactory
    Stream<DynamicTest> aLessonPasses() throws IOException {
        List<Lesson> lessons = lessons();
        var turns =
                ParallelLessonChecks.begin(
                        lessons, SharedBenches.SHARED, BlockingBench.PATIENCE, false);
        return IntStream.range(0, turns.size())
                .mapToObj(
                        i ->
                                DynamicTest.dynamicTest(
                                        lessons.get(i).file(), () -> passes(turns.get(i).join())));
    }

    private static List<Lesson> lessons() throws IOException {
        try (Stream<Path> files = Files.list(LESSONS)) {
            List<Lesson> all =
                    files.filter(file -> file.toString().endsWith(".md"))
                            .sorted()
                            .map(LessonReader::read)
                            .toList();
            assertTrue(all.size() > 1, "no lessons in " + LESSONS.toAbsolutePath());
            return all;
        }
    }

    private static void passes(LessonCheck.Report report) {
        assertEquals("", String.join("\n", report.failures()));
        assertTrue(report.snippets() > 0, "no snippet was run");
        assertTrue(report.lines() + report.numbers() > 0, "nothing was checked");
    }
}
