package coldwright.terminal.check;

import coldwright.lesson.Lesson;
import coldwright.terminal.console.BlockingBench;
import coldwright.terminal.console.ExitCode;
import coldwright.terminal.console.TerminalScreen;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentLinkedQueue;

/** Checks several lessons, two at a time, and reports them in order. */
public final class ParallelLessonChecks {
    private static final int MOST_AT_A_TIME = 2;

    private final TerminalScreen screen;
    private final Duration patience;
    private final boolean trust;

    public ParallelLessonChecks(TerminalScreen screen, Duration patience, boolean trust) {
        this.screen = screen;
        this.patience = patience;
        this.trust = trust;
    }

    /** A lesson and its future report. */
    public record Turn(Lesson lesson, CompletableFuture<LessonCheck.Report> pending) {
        /** Waits for the report. */
        public LessonCheck.Report report() {
            try {
                return pending.join();
            } catch (CompletionException e) {
                throw new IllegalStateException(
                        "the check of %s broke".formatted(lesson.file()), e);
            }
        }
    }

    /** Checks lessons and returns the exit code. */
    public int check(List<Lesson> lessons) {
        List<LessonCheck.Report> reports = new ArrayList<>();
        for (Turn turn : begin(lessons, patience, trust)) {
            LessonCheck.Report report = turn.report();
            report.failures().forEach(screen::say);
            reports.add(report);
        }
        return summary(reports);
    }

    /**
     * Starts to play lessons.
     *
     * @param patience how long one snippet may run
     * @param trust whether snippets may do everything
     * @return a turn for each lesson, in order
     */
    public static List<Turn> begin(List<Lesson> lessons, Duration patience, boolean trust) {
        List<Turn> turns =
                lessons.stream()
                        .map(lesson -> new Turn(lesson, new CompletableFuture<>()))
                        .toList();
        Queue<Turn> waiting = new ConcurrentLinkedQueue<>(turns);
        for (int i = 0; i < Math.min(MOST_AT_A_TIME, turns.size()); i++) {
            Thread worker = new Thread(() -> work(waiting, patience, trust), "check-" + (i + 1));
            worker.setDaemon(true);
            worker.start();
        }
        return turns;
    }

    private static void work(Queue<Turn> waiting, Duration patience, boolean trust) {
        try (BlockingBench runs = new BlockingBench(patience, () -> trust)) {
            for (Turn turn = waiting.poll(); turn != null; turn = waiting.poll()) {
                try {
                    turn.pending().complete(LessonCheck.of(turn.lesson(), runs));
                } catch (RuntimeException | Error e) {
                    turn.pending().completeExceptionally(e);
                }
            }
        }
    }

    private int summary(List<LessonCheck.Report> reports) {
        int snippets = reports.stream().mapToInt(LessonCheck.Report::snippets).sum();
        int lines = reports.stream().mapToInt(LessonCheck.Report::lines).sum();
        int numbers = reports.stream().mapToInt(LessonCheck.Report::numbers).sum();
        int held = reports.stream().mapToInt(LessonCheck.Report::passed).sum();
        int sourced = reports.stream().mapToInt(LessonCheck.Report::sourced).sum();
        int failures = reports.stream().mapToInt(report -> report.failures().size()).sum();
        screen.say(
                "%s, %s, %s%s: %s"
                        .formatted(
                                counted(reports.size(), "lesson"),
                                counted(snippets, "snippet"),
                                counted(lines, "check line"),
                                numbers == 0 ? "" : ", " + counted(numbers, "held number"),
                                failures == 0 ? "everything holds" : counted(failures, "failure")));
        if (lines > 0) {
            screen.say(
                    "%d of %s held, %d of those with a published source"
                            .formatted(held, counted(lines, "check line"), sourced));
        }
        return failures == 0 ? ExitCode.DONE : ExitCode.FAILED;
    }

    private static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }
}
