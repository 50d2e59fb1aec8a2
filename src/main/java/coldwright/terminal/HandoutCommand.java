package coldwright.terminal;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFolder;
import coldwright.print.Handout;
import coldwright.print.HandoutEdition;
import coldwright.print.HandoutOptions;
import coldwright.print.HandoutPlay;
import coldwright.print.SnippetOutput;
import coldwright.terminal.console.BenchSource;
import coldwright.terminal.console.BlockingBench;
import coldwright.terminal.console.ExitCode;
import coldwright.terminal.console.RunConsent;
import coldwright.terminal.console.RunFailureText;
import coldwright.terminal.console.TerminalScreen;
import coldwright.text.TextFile;
import coldwright.workbook.DataFolder;
import coldwright.workbook.Workbook;
import coldwright.workbook.handin.HandIn;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.Stream;

/** {@code handout LESSON -o FILE}. */
@Command(name = "handout")
final class HandoutCommand implements Callable<Integer> {
    private static final int MOST_BYTES = 16_000_000;

    private final TerminalScreen screen;
    private final LessonFolder courseLessons;
    private final DataFolder folder;
    private final BenchSource benches;

    @Mixin private LessonSelection selection;

    @Option(names = "-o", required = true, paramLabel = "FILE")
    private Path file;

    @Option(names = "--blank")
    private boolean blank;

    @Option(names = "--answers")
    private boolean answers;

    @Option(names = "--figures")
    private boolean figures;

    @Option(names = "--paper", paramLabel = "a4|letter", defaultValue = "a4")
    private String paper;

    @Option(names = "--data")
    private boolean data;

    @Option(names = "--work", paramLabel = "HAND-IN")
    private Path work;

    @Option(names = "--replace")
    private boolean replace;

    HandoutCommand(
            TerminalScreen screen, LessonFolder shelf, DataFolder folder, BenchSource benches) {
        this.screen = screen;
        this.courseLessons = shelf;
        this.folder = folder;
        this.benches = benches;
    }

    @Override
    public Integer call() {
        PrintFile.isPdf(file);
        HandoutOptions options = options();
        List<Lesson> lessons = selection.lessons(courseLessons);
        Function<Lesson, Path> place = one -> lessons.size() == 1 ? file : beside(one);
        List<Path> files = lessons.stream().map(place).toList();
        if (!PrintFile.mayWrite(files, "-o", replace, screen)) {
            return ExitCode.FAILED;
        }
        int worst = ExitCode.DONE;
        for (Lesson lesson : lessons) {
            worst = Math.max(worst, write(lesson, options, place.apply(lesson)));
        }
        return worst;
    }

    /** Asks when a snippet of the lesson, or of a learner's work, first goes beyond. */
    private boolean mayGoBeyond(Lesson lesson, HandoutOptions options) {
        if (selection.trusts() || options.edition() == HandoutEdition.BLANK) {
            return selection.trusts();
        }
        RunConsent consent = new RunConsent(screen);
        try (Workbook workbook = Workbook.open(folder)) {
            return consent.ask(lesson, workbook)
                    && options.work().stream().allMatch(one -> consent.ask(one, workbook));
        }
    }

    /** A file name for one of several lessons, such as {@code out-02-salt.pdf}. */
    private Path beside(Lesson lesson) {
        String name = file.getFileName().toString();
        int end = name.lastIndexOf('.');
        return file.resolveSibling(
                name.substring(0, end) + "-" + lesson.name() + name.substring(end));
    }

    private HandoutOptions options() {
        if (Stream.of(blank, answers, figures).filter(one -> one).count() > 1) {
            throw new IllegalArgumentException(text("handout.both"));
        }
        HandoutEdition edition =
                blank
                        ? HandoutEdition.BLANK
                        : answers
                                ? HandoutEdition.ANSWERS
                                : figures ? HandoutEdition.FIGURES : HandoutEdition.READER;
        return new HandoutOptions(
                edition, PrintFile.paper(paper), data, Optional.ofNullable(work).map(this::handIn));
    }

    private HandIn handIn(Path path) {
        return TextFile.read(path, MOST_BYTES)
                .text()
                .flatMap(text -> HandIn.read(text).value())
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        text("handout.no-hand-in", path, HandIn.ENDING)));
    }

    private int write(Lesson lesson, HandoutOptions options, Path to) {
        lesson.faults().forEach(fault -> screen.complain(fault.toString()));
        if (lesson.steps().isEmpty() && lesson.opening().isEmpty()) {
            return ExitCode.FAILED;
        }
        Map<Integer, SnippetOutput> given = run(lesson, options);
        String html = Handout.html(lesson, given, options);
        int written = PrintFile.write(to, html, screen);
        boolean failed = Handout.showsTrouble(given, options);
        return written == ExitCode.DONE && (failed || !lesson.faults().isEmpty())
                ? ExitCode.FAILED
                : written;
    }

    private Map<Integer, SnippetOutput> run(Lesson lesson, HandoutOptions options) {
        try (BlockingBench runs =
                new BlockingBench(
                        benches, BlockingBench.PATIENCE, () -> mayGoBeyond(lesson, options))) {
            return HandoutPlay.of(
                    lesson,
                    options,
                    runs,
                    outcome -> RunFailureText.troubles(outcome).get(0).sentence());
        }
    }
}
