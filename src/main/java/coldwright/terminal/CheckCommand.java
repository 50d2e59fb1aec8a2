package coldwright.terminal;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFolder;
import coldwright.terminal.check.ParallelLessonChecks;
import coldwright.terminal.console.BlockingBench;
import coldwright.terminal.console.TerminalScreen;
import coldwright.terminal.marking.ClassMarking;
import coldwright.terminal.marking.HandInFiles;
import coldwright.workbook.handin.HandIn;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import java.io.File;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

/** {@code check [LESSON...]}. */
@Command(name = "check")
final class CheckCommand implements Callable<Integer> {
    private static final int MOST_SECONDS = 3600;

    /** Time per hand-in: a class of thirty must not wait for one bad file. */
    private static final Duration FOR_HAND_INS = Duration.ofSeconds(10);

    private final TerminalScreen screen;
    private final LessonFolder courseLessons;

    @Parameters(paramLabel = "LESSON", arity = "0..*", descriptionKey = "lessons")
    private List<String> words = List.of();

    @Option(names = "--seconds", paramLabel = "N")
    private Integer seconds;

    @Option(names = "--table", paramLabel = "FILE.csv")
    private Path table;

    @Option(names = "--brief")
    private boolean brief;

    CheckCommand(TerminalScreen screen, LessonFolder shelf) {
        this.screen = screen;
        this.courseLessons = shelf;
    }

    @Override
    public Integer call() {
        if (seconds != null && (seconds < 1 || seconds > MOST_SECONDS)) {
            throw new IllegalArgumentException(text("check.seconds", seconds, MOST_SECONDS));
        }
        if (words.stream().anyMatch(HandInFiles::areMeantBy)) {
            return new ClassMarking(
                            screen,
                            courseLessons,
                            patience(FOR_HAND_INS),
                            Optional.ofNullable(table),
                            brief)
                    .check(words);
        }
        if (table != null && words.isEmpty()) {
            throw new IllegalArgumentException(text("check.table-without-name", table));
        }
        if (table != null || brief) {
            throw new IllegalArgumentException(text("check.for-hand-ins", HandIn.ENDING));
        }
        return ParallelLessonChecks.check(lessons(), patience(BlockingBench.PATIENCE), screen);
    }

    /** The lessons named; all that came with the program if none is. */
    private List<Lesson> lessons() {
        List<String> names = words.isEmpty() ? courseLessons.names() : words;
        if (names.isEmpty()) {
            throw new IllegalArgumentException(text("no-lessons", "check"));
        }
        words.forEach(CheckCommand::requireContent);
        return names.stream()
                .flatMap(word -> LessonSelection.lessons(word, courseLessons).stream())
                .toList();
    }

    /** A folder may have been meant as one of hand-ins. */
    private static void requireContent(String word) {
        File folder = new File(word);
        String[] lessons = folder.list((in, name) -> name.endsWith(".md"));
        if (lessons != null && lessons.length == 0) {
            throw new IllegalArgumentException(text("check.empty-folder", word, HandIn.ENDING));
        }
    }

    private Duration patience(Duration usual) {
        return seconds == null ? usual : Duration.ofSeconds(seconds);
    }
}
