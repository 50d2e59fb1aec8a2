package coldwright.terminal;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFolder;
import coldwright.terminal.check.ParallelLessonChecks;
import coldwright.terminal.console.BlockingBench;
import coldwright.terminal.console.ExitCode;
import coldwright.terminal.console.TerminalScreen;
import coldwright.terminal.marking.ClassMarking;
import coldwright.terminal.marking.HandInFiles;
import coldwright.workbook.handin.HandIn;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

/** {@code check LESSON...}. */
@Command(
        name = "check",
        customSynopsis = {
            "coldwright check [-h] [--brief] [--seconds=N] [--table=FILE.csv]",
            "                        [--trust] LESSON..."
        },
        description = {
            "Runs every snippet of the lessons, every line of their checks and every number that their text holds to the calculator. For each failure it"
                    + " prints a line: file:line: what, expected, got.",
            "Or, for hand-ins (FILE.handin.txt, or a folder of them): runs what learners handed in"
                    + " and prints who, what runs, what holds, and what they expected."
        },
        exitCodeListHeading = "%nIt ends with%n",
        exitCodeList = {
            "0:everything holds",
            "1:something failed",
            "2:the command was not understood, or there is no such lesson"
        })
final class CheckCommand implements Callable<Integer> {
    private static final int MOST_SECONDS = 3600;

    /** Time per hand-in: a class of thirty must not wait for one bad file. */
    private static final Duration FOR_HAND_INS = Duration.ofSeconds(10);

    private final TerminalScreen screen;
    private final LessonFolder courseLessons;

    @Parameters(
            paramLabel = "LESSON...",
            hideParamSyntax = true,
            arity = "0..*",
            description =
                    "Numbers or names of lessons, lesson files, or folders or zip files of them; or"
                            + " hand-ins and folders of them.")
    private List<String> words = List.of();

    @Spec private CommandSpec spec;

    @Option(
            names = "--seconds",
            paramLabel = "N",
            description =
                    "Seconds of processor time that one snippet may use; if left out, 60 for lessons"
                            + " and 10 for hand-ins.")
    private Integer seconds;

    @Option(
            names = "--table",
            paramLabel = "FILE.csv",
            description =
                    "Of hand-ins: writes a table for a spreadsheet, a row each; and FILE-steps.csv,"
                            + " a row for each step.")
    private Path table;

    @Option(
            names = "--brief",
            description = "Of hand-ins: only the table, not what came of each step.")
    private boolean brief;

    @Option(
            names = "--trust",
            description =
                    "Let the snippets do all that you may do. Without it they can't use files, the"
                            + " network or other programs.")
    private boolean trust;

    CheckCommand(TerminalScreen screen, LessonFolder shelf) {
        this.screen = screen;
        this.courseLessons = shelf;
    }

    @Override
    public Integer call() {
        List<Lesson> lessons = new ArrayList<>();
        requireWords();
        try {
            requireSeconds();
            if (words.stream().anyMatch(HandInFiles::areMeantBy)) {
                return new ClassMarking(
                                screen,
                                courseLessons,
                                patience(FOR_HAND_INS),
                                Optional.ofNullable(table),
                                brief,
                                trust)
                        .check(words);
            }
            if (table != null || brief) {
                throw new IllegalArgumentException(
                        "--table and --brief are for hand-ins, whose names end in "
                                + HandIn.ENDING);
            }
            words.forEach(word -> lessons.addAll(LessonArguments.lessons(word, courseLessons)));
        } catch (IllegalArgumentException e) {
            screen.complain(e.getMessage());
            return ExitCode.NOT_UNDERSTOOD;
        }
        return new ParallelLessonChecks(screen, patience(BlockingBench.PATIENCE), trust)
                .check(lessons);
    }

    /** Catches {@code --table} without a file name: it takes the hand-ins' name as its own. */
    private void requireWords() {
        if (!words.isEmpty()) {
            return;
        }
        if (table != null) {
            throw new ParameterException(
                    spec.commandLine(),
                    ("--table takes the name of the file to write, here \"%s\"; behind it, name"
                                    + " the hand-ins: check --table marks.csv FOLDER")
                            .formatted(table));
        }
        throw new ParameterException(spec.commandLine(), "\"check\" needs LESSON");
    }

    private Duration patience(Duration usual) {
        return seconds == null ? usual : Duration.ofSeconds(seconds);
    }

    private void requireSeconds() {
        if (seconds == null) {
            return;
        }
        if (seconds < 1 || seconds > MOST_SECONDS) {
            throw new IllegalArgumentException(
                    "--seconds is %d; it must be between 1 and %d"
                            .formatted(seconds, MOST_SECONDS));
        }
    }
}
