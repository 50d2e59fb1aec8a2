package coldwright.terminal;

import coldwright.lesson.Lesson;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentLinkedQueue;

/** Checks several lessons, two at a time, and tells of them in their order. */
final class LessonChecks {
    private static final int MOST_AT_A_TIME = 2;

    private final Screen screen;
    private final Duration patience;

    /**
     * Sets the checks up.
     *
     * @param screen takes the failures and the summary
     * @param patience how long one snippet may run
     */
    LessonChecks(Screen screen, Duration patience) {
        this.screen = screen;
        this.patience = patience;
    }

    private record Turn(Lesson lesson, CompletableFuture<LessonCheck.Report> report) {}

    /**
     * Checks lessons.
     *
     * @param lessons the lessons
     * @return what the program ends with
     */
    int check(List<Lesson> lessons) {
        List<Turn> turns =
                lessons.stream()
                        .map(lesson -> new Turn(lesson, new CompletableFuture<>()))
                        .toList();
        Queue<Turn> waiting = new ConcurrentLinkedQueue<>(turns);
        for (int i = 0; i < Math.min(MOST_AT_A_TIME, turns.size()); i++) {
            Thread worker = new Thread(() -> work(waiting), "check-" + (i + 1));
            worker.setDaemon(true);
            worker.start();
        }
        List<LessonCheck.Report> reports = new ArrayList<>();
        for (Turn turn : turns) {
            reports.add(reportOf(turn));
        }
        return summary(reports);
    }

    private LessonCheck.Report reportOf(Turn turn) {
        try {
            LessonCheck.Report report = turn.report().join();
            report.failures().forEach(screen::say);
            return report;
        } catch (CompletionException e) {
            throw new IllegalStateException(
                    "the check of %s broke".formatted(turn.lesson().file()), e);
        }
    }

    private void work(Queue<Turn> waiting) {
        try (Runs runs = new Runs(patience)) {
            for (Turn turn = waiting.poll(); turn != null; turn = waiting.poll()) {
                try {
                    turn.report().complete(LessonCheck.of(turn.lesson(), runs));
                } catch (RuntimeException | Error e) {
                    turn.report().completeExceptionally(e);
                }
            }
        }
    }

    private int summary(List<LessonCheck.Report> reports) {
        int snippets = reports.stream().mapToInt(LessonCheck.Report::snippets).sum();
        int lines = reports.stream().mapToInt(LessonCheck.Report::lines).sum();
        int numbers = reports.stream().mapToInt(LessonCheck.Report::numbers).sum();
        int held = reports.stream().mapToInt(LessonCheck.Report::held).sum();
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
        return failures == 0 ? Exit.DONE : Exit.FAILED;
    }

    private static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }
}
