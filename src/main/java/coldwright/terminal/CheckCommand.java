package coldwright.terminal;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonShelf;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

/** {@code check LESSON...}. */
@Command(
        name = "check",
        description = {
            "Runs every snippet of the lessons, every line of their checks and every number that their text holds to the calculator. For each failure it"
                    + " prints a line: file:line: what, expected, got."
        },
        exitCodeListHeading = "%nIt ends with%n",
        exitCodeList = {
            "0:everything holds",
            "1:something failed",
            "2:the command was not understood, or there is no such lesson"
        })
final class CheckCommand implements Callable<Integer> {
    private static final int MOST_SECONDS = 3600;

    private final Screen screen;
    private final LessonShelf shelf;

    @Parameters(
            paramLabel = "LESSON",
            arity = "1..*",
            description =
                    "Numbers or names of lessons, lesson files, or folders or zip files of them.")
    private List<String> words;

    @Option(
            names = "--seconds",
            paramLabel = "N",
            defaultValue = "60",
            description = "How long one snippet may run before it is stopped; 60 if left out.")
    private int seconds;

    CheckCommand(Screen screen, LessonShelf shelf) {
        this.screen = screen;
        this.shelf = shelf;
    }

    @Override
    public Integer call() {
        List<Lesson> lessons = new ArrayList<>();
        try {
            requireSeconds();
            if (words.stream().anyMatch(HandInChecks::isMeant)) {
                return new HandInChecks(screen, shelf, Duration.ofSeconds(seconds)).check(words);
            }
            words.forEach(word -> lessons.addAll(Packs.lessons(word, shelf)));
        } catch (IllegalArgumentException e) {
            screen.complain(e.getMessage());
            return Exit.NOT_UNDERSTOOD;
        }
        return new LessonChecks(screen, Duration.ofSeconds(seconds)).check(lessons);
    }

    private void requireSeconds() {
        if (seconds < 1 || seconds > MOST_SECONDS) {
            throw new IllegalArgumentException(
                    "--seconds is %d; it must be between 1 and %d"
                            .formatted(seconds, MOST_SECONDS));
        }
    }
}
