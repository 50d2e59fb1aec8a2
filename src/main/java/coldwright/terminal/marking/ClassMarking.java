package coldwright.terminal.marking;

import static coldwright.terminal.console.ConsoleText.counted;
import static coldwright.terminal.console.ConsoleText.text;

import coldwright.lesson.LessonFolder;
import coldwright.terminal.console.BenchSource;
import coldwright.terminal.console.BenchWorkers;
import coldwright.terminal.console.BlockingBench;
import coldwright.terminal.console.ExitCode;
import coldwright.terminal.console.TerminalScreen;
import coldwright.workbook.handin.HandIn;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Marks hand-ins, several in parallel, each in its own bench. One bad file never stops the rest;
 * results appear in order while others are still running.
 */
public final class ClassMarking {
    /** A bench with its compiler takes some 250 MB; more in parallel would fill a small machine. */
    private static final int MOST_AT_A_TIME = 4;

    private final TerminalScreen screen;
    private final HandInMarking reader;
    private final BenchSource benches;
    private final Duration patience;
    private final Optional<Path> table;
    private final boolean brief;
    private final boolean trust;

    /**
     * Sets up the marking: how long one snippet may run, the CSV file for the table if any, whether
     * to leave out the steps, and whether snippets may do everything.
     */
    public ClassMarking(
            TerminalScreen screen,
            LessonFolder shelf,
            BenchSource benches,
            Duration patience,
            Optional<Path> table,
            boolean brief,
            boolean trust) {
        this.screen = screen;
        this.reader = new HandInMarking(shelf, patience);
        this.benches = benches;
        this.patience = patience;
        this.table = table;
        this.brief = brief;
        this.trust = trust;
    }

    /** Marks files and folders of hand-ins and returns the exit code. */
    public int check(List<String> words) {
        List<Path> files = new ArrayList<>();
        List<Path> leftAlone = new ArrayList<>();
        for (String word : words) {
            if (!HandInFiles.areMeantBy(word)) {
                screen.complain(text("hand-ins.no-hand-in", word, HandIn.ENDING));
                return ExitCode.NOT_UNDERSTOOD;
            }
            HandInFiles found = HandInFiles.of(word);
            files.addAll(found.files());
            leftAlone.addAll(found.leftAlone());
        }
        List<MarkedHandIn> all = mark(files);
        MarkTable.lines(all, screen.width()).forEach(screen::fold);
        leftAlone.forEach(
                file ->
                        screen.say(
                                text(
                                        "hand-ins.left-alone",
                                        MarkedHandIn.oneLine(file.toString()),
                                        HandIn.ENDING)));
        return kept(all) ? summary(all) : ExitCode.NOT_UNDERSTOOD;
    }

    private List<MarkedHandIn> mark(List<Path> files) {
        int most = Math.min(MOST_AT_A_TIME, Runtime.getRuntime().availableProcessors());
        List<MarkedHandIn> all = new ArrayList<>();
        Map<List<String>, String> first = new HashMap<>();
        for (CompletableFuture<MarkedHandIn> turn :
                BenchWorkers.start(
                        files,
                        most,
                        () -> new BlockingBench(benches, patience, () -> trust),
                        this::mark)) {
            MarkedHandIn one = twice(turn.join(), first);
            all.add(one);
            say(one, text("hand-in.count", all.size(), files.size()));
        }
        return all;
    }

    private static MarkedHandIn twice(MarkedHandIn markedHandIn, Map<List<String>, String> first) {
        if (markedHandIn.learner().isEmpty()) {
            return markedHandIn;
        }
        String other =
                first.putIfAbsent(
                        List.of(markedHandIn.learner(), markedHandIn.lesson()),
                        markedHandIn.file());
        return other == null ? markedHandIn : markedHandIn.noting(text("hand-in.twice", other));
    }

    private void say(MarkedHandIn markedHandIn, String count) {
        List<String> lines = markedHandIn.lines();
        screen.say("%s: %s".formatted(count, lines.get(0)));
        if (!brief) {
            lines.subList(1, lines.size()).forEach(screen::fold);
        }
    }

    private MarkedHandIn mark(Path file, BlockingBench bench) {
        String name = MarkedHandIn.oneLine(file.toString());
        try {
            return reader.mark(file, name, bench);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            System.getLogger("coldwright.terminal")
                    .log(System.Logger.Level.WARNING, "a hand-in's check broke", e);
            return MarkedHandIn.refused(
                    name, List.of(text("hand-in.broke", MarkedHandIn.oneLine(e.toString()))));
        }
    }

    private boolean kept(List<MarkedHandIn> all) {
        if (table.isEmpty()) {
            return true;
        }
        try {
            MarkTable.write(all, table.get()).forEach(file -> screen.say(file.toString()));
            return true;
        } catch (IOException e) {
            screen.complain(e.getMessage());
            return false;
        }
    }

    private int summary(List<MarkedHandIn> all) {
        long busy = all.stream().filter(MarkedHandIn::busy).count();
        long failed = all.stream().filter(one -> !one.passes()).count() - busy;
        String result = failed == 0 ? "" : text("hand-ins.failed", failed);
        String unmarked = busy == 0 ? "" : text("hand-ins.busy", busy);
        String both =
                Stream.of(result, unmarked)
                        .filter(one -> !one.isEmpty())
                        .collect(Collectors.joining(", "));
        screen.say(
                counted("hand-in", all.size())
                        + ": "
                        + (both.isEmpty() ? text("all-passed") : both));
        return both.isEmpty() ? ExitCode.DONE : ExitCode.FAILED;
    }
}
