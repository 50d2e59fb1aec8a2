package coldwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/**
 * The worst code that a learner can write. After each fault the run has ended with a true word, and
 * the next run, after the same steps above, is right.
 */
class Faults {
    protected static final List<String> ABOVE =
            List.of(
                    "double sugar = 120;\nList<String> log = new ArrayList<>();",
                    "log.add(\"a\");");

    protected static Bench bench;

    @BeforeAll
    static void open() {
        bench = Bench.open(Benches.settings());
    }

    @AfterAll
    static void close() {
        bench.close();
    }

    /** What must hold after each fault: earlier work stands, as if the fault had never been. */
    @AfterEach
    void theNextRunIsGood() {
        FinishedRun run = Benches.run(bench, ABOVE, "log.add(\"b\");\nsugar + \" \" + log");
        assertEquals(new RunOutcome.Finished("120.0 [a, b]", "String"), run.outcome());
    }

    protected static FinishedRun run(String snippet) {
        return Benches.run(bench, ABOVE, snippet);
    }

    /** Runs what must be stopped, and stops it once it has printed its first word. */
    protected static FinishedRun stopped(String snippet) {
        CompletableFuture<Void> begun = new CompletableFuture<>();
        RunListener watcher =
                new RunListener() {
                    @Override
                    public void printed(String text) {
                        begun.complete(null);
                    }
                };
        CompletableFuture<FinishedRun> run =
                Benches.start(bench, ABOVE, "System.out.print(\"on\\n\");\n" + snippet, watcher);
        begun.orTimeout(Benches.HUNG_SECONDS, TimeUnit.SECONDS).join();
        bench.stop();
        FinishedRun ended = run.orTimeout(Benches.HUNG_SECONDS, TimeUnit.SECONDS).join();
        assertEquals(new RunOutcome.Stopped(), ended.outcome());
        assertTrue(ended.printed().startsWith("on\n"), "what it printed is kept");
        return ended;
    }

    protected static String died(String snippet) {
        RunOutcome outcome = run(snippet).outcome();
        return assertInstanceOf(RunOutcome.Died.class, outcome, outcome.toString()).why();
    }

    protected static SnippetProblem threw(String snippet) {
        RunOutcome outcome = run(snippet).outcome();
        return assertInstanceOf(RunOutcome.Threw.class, outcome, outcome.toString()).problem();
    }
}
