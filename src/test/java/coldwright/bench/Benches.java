package coldwright.bench;

import java.time.Duration;
import java.util.List;
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
        return new BenchSettings(
                BenchClassPath.ofThisProgram(),
                IMPORTS,
                64,
                100_000,
                20,
                100_000,
                Duration.ofMillis(300));
    }

    static Run run(Bench bench, List<String> above, String snippet) {
        try {
            return bench.run(above, snippet, RunWatcher.NONE).get(HUNG_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException | ExecutionException | TimeoutException e) {
            throw new AssertionError("the run hung: " + snippet, e);
        }
    }
}
