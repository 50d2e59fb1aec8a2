package coldwright.terminal;

import coldwright.lesson.LessonShelf;
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
 * Checks what learners handed in, several side by side, each in a bench. One bad file never stops
 * the rest; they are told of in their order, while the others go on.
 */
final class HandInChecks {
    /** A bench and its spare take some 250 MB; more side by side would fill a small machine. */
    private static final int MOST_AT_A_TIME = 4;

    private final Screen screen;
    private final HandInRead reader;
    private final Duration patience;
    private final Optional<Path> table;
    private final boolean brief;

    /**
     * Sets the checks up.
     *
     * @param screen takes what came of them
     * @param shelf the lessons that may have been worked on
     * @param patience how long one snippet may run
     * @param table where the table goes, a CSV file; empty for none
     * @param brief whether to leave out what came of each step
     */
    HandInChecks(
            Screen screen,
            LessonShelf shelf,
            Duration patience,
            Optional<Path> table,
            boolean brief) {
        this.screen = screen;
        this.reader = new HandInRead(shelf, patience);
        this.patience = patience;
        this.table = table;
        this.brief = brief;
    }

    private record Turn(Path file, String name, CompletableFuture<Marked> marked) {}

    /**
     * Checks hand-ins.
     *
     * @param words files and folders
     * @return what the program ends with
     */
    int check(List<String> words) {
        List<Turn> turns = new ArrayList<>();
        List<Path> leftAlone = new ArrayList<>();
        for (String word : words) {
            if (!HandInFiles.areMeantBy(word)) {
                screen.complain(
                        "%s is no hand-in; their names end in %s, and lessons are checked by a command of their own"
                                .formatted(word, HandIn.ENDING));
                return Exit.NOT_UNDERSTOOD;
            }
            HandInFiles found = HandInFiles.of(word);
            found.files().forEach(file -> turns.add(turn(file)));
            leftAlone.addAll(found.leftAlone());
        }
        List<Marked> all = work(turns);
        MarkTable.lines(all, screen.width()).forEach(screen::fold);
        leftAlone.forEach(
                file ->
                        screen.say(
                                "%s was left alone; the names of hand-ins end in %s"
                                        .formatted(
                                                Marked.oneLine(file.toString()), HandIn.ENDING)));
        return kept(all) ? summary(all) : Exit.NOT_UNDERSTOOD;
    }

    private static Turn turn(Path file) {
        return new Turn(file, Marked.oneLine(file.toString()), new CompletableFuture<>());
    }

    private List<Marked> work(List<Turn> turns) {
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
        List<Marked> all = new ArrayList<>();
        Map<List<String>, String> first = new HashMap<>();
        for (Turn turn : turns) {
            Marked marked = twice(turn.marked().join(), first);
            all.add(marked);
            say(marked, all.size() + " of " + turns.size());
        }
        return all;
    }

    private static Marked twice(Marked marked, Map<List<String>, String> first) {
        if (marked.learner().isEmpty()) {
            return marked;
        }
        String other = first.putIfAbsent(List.of(marked.learner(), marked.lesson()), marked.file());
        return other == null
                ? marked
                : marked.noting("the same learner handed this lesson in as " + other + " too");
    }

    private void say(Marked marked, String count) {
        List<String> lines = marked.lines();
        screen.say("%s: %s".formatted(count, lines.get(0)));
        if (!brief) {
            lines.subList(1, lines.size()).forEach(screen::fold);
        }
    }

    private void work(Queue<Turn> waiting) {
        try (Runs runs = new Runs(patience)) {
            for (Turn turn = waiting.poll(); turn != null; turn = waiting.poll()) {
                turn.marked().complete(mark(turn, runs));
            }
        }
    }

    private Marked mark(Turn turn, Runs runs) {
        try {
            return reader.mark(turn.file(), turn.name(), runs);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            System.getLogger("coldwright.terminal")
                    .log(System.Logger.Level.WARNING, "a hand-in's check broke", e);
            return Marked.refused(
                    turn.name(),
                    List.of("its check broke and was given up: " + Marked.oneLine(e.toString())));
        }
    }

    private boolean kept(List<Marked> all) {
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

    private int summary(List<Marked> all) {
        long failed = all.stream().filter(one -> !one.holds()).count();
        screen.say(
                "%s: %s"
                        .formatted(
                                Marked.counted(all.size(), "hand-in"),
                                failed == 0
                                        ? "everything holds"
                                        : "not everything holds in " + failed));
        return failed == 0 ? Exit.DONE : Exit.FAILED;
    }
}
