package coldwright.terminal;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFolder;
import coldwright.print.Handout;
import coldwright.print.HandoutEdition;
import coldwright.print.HandoutOptions;
import coldwright.print.HandoutPlay;
import coldwright.print.PdfWriter;
import coldwright.print.SnippetOutput;
import coldwright.terminal.console.BlockingBench;
import coldwright.terminal.console.ExitCode;
import coldwright.terminal.console.RunConsent;
import coldwright.terminal.console.RunFailureText;
import coldwright.terminal.console.TerminalScreen;
import coldwright.text.TextFile;
import coldwright.text.WholeFile;
import coldwright.workbook.DataFolder;
import coldwright.workbook.Workbook;
import coldwright.workbook.handin.HandIn;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;

/** {@code handout LESSON -o FILE}. */
@Command(
        name = "handout",
        description = {
            "Sets a lesson for paper, with the figures that its snippets draw: for reading, with"
                    + " room to write, or for the teacher."
        },
        exitCodeListHeading = "%nIt ends with%n",
        exitCodeList = {
            "0:the file was written",
            "1:a snippet of the lesson failed (the file says where), the lesson has faults, or"
                    + " nobody agreed that it is run or a file written over",
            "2:the command was not understood, or there is no such lesson"
        })
final class HandoutCommand implements Callable<Integer> {
    private static final int MOST_BYTES = 16_000_000;

    private final TerminalScreen screen;
    private final LessonFolder courseLessons;
    private final DataFolder folder;

    @Parameters(
            paramLabel = "LESSON",
            description =
                    "A lesson's number, its name, or a lesson file, a folder or a zip file of lessons; of several each gets a file of its own.")
    private String words;

    @Option(
            names = "-o",
            required = true,
            paramLabel = "FILE",
            description = "Where it goes: a name that ends in .pdf or .html.")
    private Path file;

    @Option(names = "--blank", description = "Room for forecasts and answers, and no results.")
    private boolean blank;

    @Option(
            names = "--answers",
            description = "Right answers, solutions, checks and the teacher's notes too.")
    private boolean answers;

    @Option(
            names = "--paper",
            paramLabel = "a4|letter",
            defaultValue = "a4",
            description = "The sheet; a4 if left out.")
    private String paper;

    @Option(names = "--data", description = "The numbers of the figures as tables.")
    private boolean data;

    @Option(
            names = "--work",
            paramLabel = "HAND-IN",
            description = "A learner's hand-in: its snippets and forecasts stand in the lesson.")
    private Path work;

    @Option(
            names = "--trust",
            description =
                    "Let the snippets do all that you may do, without asking. Without it they can't"
                            + " use files, the network or other programs.")
    private boolean trust;

    @Option(
            names = "--replace",
            description = "Write over a file that is there already, without asking.")
    private boolean replace;

    HandoutCommand(TerminalScreen screen, LessonFolder shelf, DataFolder folder) {
        this.screen = screen;
        this.courseLessons = shelf;
        this.folder = folder;
    }

    @Override
    public Integer call() {
        try {
            boolean pdf = PrintFile.isPdf(file);
            HandoutOptions handoutOptions = options();
            List<Lesson> lessons = LessonArguments.lessons(words, courseLessons);
            Function<Lesson, Path> place = one -> lessons.size() == 1 ? file : beside(one);
            List<Path> files = lessons.stream().map(place).toList();
            if (!PrintFile.mayWrite(files, "-o", replace, screen)) {
                return ExitCode.FAILED;
            }
            int worst = ExitCode.DONE;
            for (Lesson lesson : lessons) {
                worst = Math.max(worst, write(lesson, handoutOptions, place.apply(lesson), pdf));
            }
            return worst;
        } catch (IllegalArgumentException e) {
            screen.complain(e.getMessage());
            return ExitCode.NOT_UNDERSTOOD;
        }
    }

    /** Asks when a snippet of the lesson, or of a learner's work, first goes beyond. */
    private boolean mayGoBeyond(Lesson lesson, HandoutOptions handoutOptions) {
        if (trust || handoutOptions.edition() == HandoutEdition.BLANK) {
            return trust;
        }
        RunConsent consent = new RunConsent(screen);
        try (Workbook workbook = Workbook.open(folder)) {
            return consent.ask(lesson, workbook)
                    && handoutOptions.work().stream().allMatch(one -> consent.ask(one, workbook));
        }
    }

    /** A file name for one of several lessons, such as {@code out-02-salt.pdf}. */
    private Path beside(Lesson lesson) {
        String own = Path.of(lesson.file()).getFileName().toString().replaceFirst("\\.md$", "");
        String name = file.getFileName().toString();
        int end = name.lastIndexOf('.');
        return file.resolveSibling(name.substring(0, end) + "-" + own + name.substring(end));
    }

    private HandoutOptions options() {
        if (blank && answers) {
            throw new IllegalArgumentException(
                    "--blank and --answers exclude each other; ask for two handouts");
        }
        HandoutEdition edition =
                blank
                        ? HandoutEdition.BLANK
                        : answers ? HandoutEdition.ANSWERS : HandoutEdition.READER;
        return new HandoutOptions(
                edition, PrintFile.paper(paper), data, Optional.ofNullable(work).map(this::handIn));
    }

    private HandIn handIn(Path path) {
        TextFile read = TextFile.read(path, MOST_BYTES);
        return read.text()
                .flatMap(text -> HandIn.read(text).value())
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "%s is no hand-in that can be read; their names end in %s"
                                                .formatted(path, HandIn.ENDING)));
    }

    private int write(Lesson lesson, HandoutOptions handoutOptions, Path to, boolean pdf) {
        lesson.faults().forEach(fault -> screen.complain(fault.toString()));
        if (lesson.steps().isEmpty() && lesson.opening().isEmpty()) {
            return ExitCode.FAILED;
        }
        Map<Integer, SnippetOutput> given = run(lesson, handoutOptions);
        String html = Handout.html(lesson, given, handoutOptions);
        try {
            WholeFile.write(to, pdf ? PdfWriter.of(html) : html.getBytes(StandardCharsets.UTF_8));
        } catch (WholeFile.UnwrittenException e) {
            screen.complain(e.getMessage());
            return ExitCode.NOT_UNDERSTOOD;
        }
        screen.say(to.toString());
        boolean failed = Handout.showsTrouble(given, handoutOptions);
        return failed || !lesson.faults().isEmpty() ? ExitCode.FAILED : ExitCode.DONE;
    }

    private Map<Integer, SnippetOutput> run(Lesson lesson, HandoutOptions handoutOptions) {
        try (BlockingBench runs =
                new BlockingBench(
                        BlockingBench.PATIENCE, () -> mayGoBeyond(lesson, handoutOptions))) {
            return HandoutPlay.of(
                    lesson,
                    handoutOptions,
                    runs,
                    outcome -> RunFailureText.troubles(outcome).get(0).sentence());
        }
    }
}
