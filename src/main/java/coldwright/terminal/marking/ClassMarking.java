package coldwright.terminal.marking;

import coldwright.lesson.LessonFolder;
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
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;

/**
 * Marks hand-ins, several in parallel, each in its own bench. One bad file never stops the rest;
 * results appear in order while others are still running.
 */
public final class ClassMarking {
    /** A bench and its spare take some 250 MB; more in parallel would fill a small machine. */
    private static final int MOST_AT_A_TIME = 4;

    private final TerminalScreen screen;
    private final HandInMarking reader;
    private final Duration patience;
    private final Optional<Path> table;
    private final boolean brief;
    private final boolean trust;

    /**
     * Sets up the marking.
     *
     * @param shelf the known lessons
     * @param patience how long one snippet may run
     * @param table the CSV file for the table; empty for none
     * @param brief whether to leave out the steps
     * @param trust whether snippets may do everything
     */
    public ClassMarking(
            TerminalScreen screen,
            LessonFolder shelf,
            Duration patience,
            Optional<Path> table,
            boolean brief,
            boolean trust) {
        this.screen = screen;
        this.reader = new HandInMarking(shelf, patience);
        this.patience = patience;
        this.table = table;
        this.brief = brief;
        this.trust = trust;
    }

    private record Turn(Path file, String name, CompletableFuture<MarkedHandIn> marked) {}

    /** Marks files and folders of hand-ins and returns the exit code. */
    public int check(List<String> words) {
        List<Turn> turns = new ArrayList<>();
        List<Path> leftAlone = new ArrayList<>();
        for (String word : words) {
            if (!HandInFiles.areMeantBy(word)) {
                screen.complain(
                        "%s is no hand-in; their names end in %s, and lessons are checked by a command of their own"
                                .formatted(word, HandIn.ENDING));
                return ExitCode.NOT_UNDERSTOOD;
            }
            HandInFiles found = HandInFiles.of(word);
            found.files().forEach(file -> turns.add(turn(file)));
            leftAlone.addAll(found.leftAlone());
        }
        List<MarkedHandIn> all = work(turns);
        MarkTable.lines(all, screen.width()).forEach(screen::fold);
        leftAlone.forEach(
                file ->
                        screen.say(
                                "%s was left alone; the names of hand-ins end in %s"
                                        .formatted(
                                                MarkedHandIn.oneLine(file.toString()),
                                                HandIn.ENDING)));
        return kept(all) ? summary(all) : ExitCode.NOT_UNDERSTOOD;
    }

    private static Turn turn(Path file) {
        return new Turn(file, MarkedHandIn.oneLine(file.toString()), new CompletableFuture<>());
    }

    private List<MarkedHandIn> work(List<Turn> turns) {
        Queue<Turn> waiting = new ConcurrentLinkedQueue<>(turns);
        int side =
                Math.min(
                        turns.size(),
                        Math.min(MOST_AT_A_TIME, Runtime.getRuntime().availableProcessors()));
        List<Thread> workers = new ArrayList<>();
        for (int i = 0; i < side; i++) {
            Thread worker = new Thread(() -> work(waiting), "hand-ins-" + (i + 1));
            worker.setDaemon(true);
            worker.start();
            workers.add(worker);
        }
        List<MarkedHandIn> all = new ArrayList<>();
        Map<List<String>, String> first = new HashMap<>();
        for (Turn turn : turns) {
            MarkedHandIn markedHandIn = twice(turn.marked().join(), first);
            all.add(markedHandIn);
            say(markedHandIn, all.size() + " of " + turns.size());
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
        return other == null
                ? markedHandIn
                : markedHandIn.noting(
                        "the same learner handed this lesson in as " + other + " too");
    }

    private void say(MarkedHandIn markedHandIn, String count) {
        List<String> lines = markedHandIn.lines();
        screen.say("%s: %s".formatted(count, lines.get(0)));
        if (!brief) {
            lines.subList(1, lines.size()).forEach(screen::fold);
        }
    }

    private void work(Queue<Turn> waiting) {
        try (BlockingBench runs = new BlockingBench(patience, () -> trust)) {
            for (Turn turn = waiting.poll(); turn != null; turn = waiting.poll()) {
                turn.marked().complete(mark(turn, runs));
                runs.startAfresh();
            }
        }
    }

    private MarkedHandIn mark(Turn turn, BlockingBench blockingBench) {
        try {
            return reader.mark(turn.file(), turn.name(), blockingBench);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            System.getLogger("coldwright.terminal")
                    .log(System.Logger.Level.WARNING, "a hand-in's check broke", e);
            return MarkedHandIn.refused(
                    turn.name(),
                    List.of(
                            "its check broke and was given up: "
                                    + MarkedHandIn.oneLine(e.toString())));
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
        long failed = all.stream().filter(one -> !one.passes()).count();
        screen.say(
                "%s: %s"
                        .formatted(
                                MarkedHandIn.counted(all.size(), "hand-in"),
                                failed == 0
                                        ? "everything holds"
                                        : "not everything holds in " + failed));
        return failed == 0 ? ExitCode.DONE : ExitCode.FAILED;
    }
}
