package coldwright.bench;

import coldwright.bench.compile.SnippetSource;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Benches for tests, and how tests wait for them. */
final class Benches {
    /** A run that takes longer has hung, even on a busy machine. */
    static final int HUNG_SECONDS = 60;

    static final List<String> IMPORTS =
            List.of(
                    "import java.util.*;",
                    "import java.util.stream.*;",
                    "import coldwright.figure.*;");

    private Benches() {}

    static BenchSettings settings() {
        return new BenchSettings(BenchClassPath.ofThisProgram(), IMPORTS, 64, 100_000, 20, 100_000);
    }

    /** A snippet that goes on until a file is there. */
    static String untilThereIs(Path file) {
        return "while (!new java.io.File(\"%s\").exists()) { Thread.sleep(5); }"
                .formatted(file.toString().replace('\\', '/'));
    }

    /** Starts a run that may do everything: what goes wrong in the worst case is tested with it. */
    static CompletableFuture<FinishedRun> start(
            Bench bench, List<String> above, String snippet, RunListener watcher) {
        return bench.run(SnippetSource.of(above, snippet), SnippetRights.EVERYTHING, watcher);
    }

    static FinishedRun run(Bench bench, List<String> above, String snippet) {
        return run(bench, SnippetSource.of(above, snippet));
    }

    static FinishedRun run(Bench bench, List<SnippetSource> snippets) {
        try {
            return bench.run(snippets, SnippetRights.EVERYTHING, RunListener.NONE)
                    .get(HUNG_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException | ExecutionException | TimeoutException e) {
            throw new AssertionError("the run hung: " + snippets, e);
        }
    }
}
