package coldwright.terminal;

import coldwright.bench.Bench;
import coldwright.bench.BenchClassPath;
import coldwright.bench.BenchSettings;
import coldwright.bench.Outcome;
import coldwright.bench.Run;
import coldwright.bench.RunWatcher;
import coldwright.lesson.Prelude;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** A bench whose runs are waited for, and stopped when they take too long. */
final class Runs implements AutoCloseable {
    /** A snippet of a lesson takes well under a second; one that needs this never ends. */
    static final Duration PATIENCE = Duration.ofSeconds(60);

    private final Bench bench;
    private final Duration patience;

    Runs(Duration patience) {
        this.bench =
                Bench.open(BenchSettings.usual(BenchClassPath.ofThisProgram(), Prelude.imports()));
        this.patience = patience;
    }

    /**
     * Runs a snippet after those above it.
     *
     * @param above the snippets above, in order
     * @param snippet the snippet
     * @return how it ended; one that took too long as died, with the reason
     */
    Run run(List<String> above, String snippet) {
        CompletableFuture<Run> running = bench.run(above, snippet, RunWatcher.NONE);
        try {
            return running.get(patience.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            bench.stop();
            Run stopped = running.join();
            String why =
                    "it did not end within %d seconds and was stopped; look for a loop without an end"
                            .formatted(patience.toSeconds());
            return new Run(
                    new Outcome.Died(why),
                    stopped.printed(),
                    stopped.printedCut(),
                    stopped.figures(),
                    stopped.elapsed());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("a run was interrupted", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("a run failed", e);
        }
    }

    @Override
    public void close() {
        bench.close();
    }
}
