package coldwright.terminal.check;

import static coldwright.terminal.console.ConsoleText.counted;
import static coldwright.terminal.console.ConsoleText.text;

import coldwright.lesson.Lesson;
import coldwright.terminal.console.BenchSource;
import coldwright.terminal.console.BenchWorkers;
import coldwright.terminal.console.BlockingBench;
import coldwright.terminal.console.ExitCode;
import coldwright.terminal.console.TerminalScreen;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.ToIntFunction;

/** Checks several lessons, two at a time, and reports them in order. */
public final class ParallelLessonChecks {
    private static final int MOST_AT_A_TIME = 2;

    private ParallelLessonChecks() {}

    /**
     * Checks lessons and returns the exit code. One snippet may run for {@code patience}; with
     * {@code trust} it may do everything.
     */
    public static int check(
            List<Lesson> lessons,
            BenchSource benches,
            Duration patience,
            boolean trust,
            TerminalScreen screen) {
        List<LessonCheck.Report> reports = new ArrayList<>();
        for (CompletableFuture<LessonCheck.Report> turn :
                begin(lessons, benches, patience, trust)) {
            LessonCheck.Report report = turn.join();
            report.failures().forEach(screen::say);
            reports.add(report);
        }
        int lines = sum(reports, LessonCheck.Report::lines);
        int numbers = sum(reports, LessonCheck.Report::numbers);
        int failures = sum(reports, report -> report.failures().size());
        List<String> parts = new ArrayList<>();
        parts.add(counted("lesson", reports.size()));
        parts.add(counted("snippet", sum(reports, LessonCheck.Report::snippets)));
        parts.add(counted("check-line", lines));
        if (numbers > 0) {
            parts.add(counted("verified-number", numbers));
        }
        String result = failures == 0 ? text("all-passed") : counted("failure", failures);
        screen.say(String.join(", ", parts) + ": " + result);
        if (lines > 0) {
            screen.say(
                    text(
                            "check.lines-passed",
                            sum(reports, LessonCheck.Report::passed),
                            counted("check-line", lines),
                            sum(reports, LessonCheck.Report::sourced)));
        }
        return failures == 0 ? ExitCode.DONE : ExitCode.FAILED;
    }

    private static int sum(
            List<LessonCheck.Report> reports, ToIntFunction<LessonCheck.Report> count) {
        return reports.stream().mapToInt(count).sum();
    }

    /** Starts to play lessons, as above; the reports come in the order of the lessons. */
    public static List<CompletableFuture<LessonCheck.Report>> begin(
            List<Lesson> lessons, BenchSource benches, Duration patience, boolean trust) {
        return BenchWorkers.start(
                lessons,
                MOST_AT_A_TIME,
                () -> new BlockingBench(benches, patience, () -> trust),
                LessonCheck::of);
    }
}
