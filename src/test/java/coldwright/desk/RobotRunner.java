package coldwright.desk;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunListener;
import coldwright.bench.RunOutcome;
import coldwright.bench.SnippetProblem;
import coldwright.bench.SnippetRights;
import coldwright.bench.compile.SnippetSource;
import coldwright.desk.run.SnippetRunner;
import coldwright.figure.Exhibit;
import coldwright.figure.Figure;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/**
 * A bench for the robot, whose results show which text they belong to. A text with {@code while}
 * runs until it is stopped, one with {@code ?} is rejected, and one with {@code show} draws.
 */
final class RobotRunner implements SnippetRunner {
    private static final long TAKES_MS = 2;

    private CompletableFuture<FinishedRun> running;

    @Override
    public synchronized CompletableFuture<FinishedRun> run(
            List<SnippetSource> snippets, SnippetRights rights, RunListener watcher) {
        String text = snippets.get(snippets.size() - 1).text();
        running = new CompletableFuture<>();
        if (!text.contains("while")) {
            CompletableFuture<FinishedRun> now = running;
            CompletableFuture.delayedExecutor(TAKES_MS, TimeUnit.MILLISECONDS)
                    .execute(() -> now.complete(resultOf(text)));
        }
        return running;
    }

    private static FinishedRun resultOf(String text) {
        if (text.contains("?")) {
            SnippetProblem problem = new SnippetProblem(0, 1, 1, "no `?` here", "");
            return run(new RunOutcome.Rejected(List.of(problem)), "", List.of());
        }
        List<Exhibit> figures = new ArrayList<>();
        if (text.contains("show")) {
            figures.add(
                    Figure.of("A line")
                            .x("time", "min")
                            .y("height", "mm")
                            .line("line", 0, 10, x -> x * (text.length() % 7 + 1)));
        }
        return run(new RunOutcome.Finished(valueOf(text), "int"), "printed\n", figures);
    }

    private static FinishedRun run(RunOutcome outcome, String printed, List<Exhibit> figures) {
        return new FinishedRun(outcome, printed, false, figures, Duration.ofMillis(TAKES_MS));
    }

    /** The value that a text gives. */
    static String valueOf(String text) {
        return "value " + Integer.toHexString(text.hashCode());
    }

    @Override
    public synchronized void stop() {
        if (running != null) {
            running.complete(run(new RunOutcome.Stopped(), "", List.of()));
        }
    }
}
