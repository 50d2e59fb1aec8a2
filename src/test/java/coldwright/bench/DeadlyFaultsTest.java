package coldwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/** Snippets that run out of something, or end their bench. */
final class DeadlyFaultsTest extends Faults {
    @Test
    void saysThatASnippetEndedItsBench() {
        assertEquals(
                "The snippet ended its own bench (exit status 3). Remove `System.exit` or `halt`.",
                died("System.exit(3);"));
        assertEquals(
                "The snippet ended its own bench (exit status 0). Remove `System.exit` or `halt`.",
                died("Runtime.getRuntime().halt(0);"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "List<double[]> all = new ArrayList<>();\nwhile (true) all.add(new double[1_000_000]);",
                "Map<Integer, Object> all = new HashMap<>();\nfor (int i = 0; ; i++) all.put(i, new Object());",
                "int[] one = new int[Integer.MAX_VALUE];",
            })
    void saysThatMemoryIsOut(String snippet) {
        SnippetProblem problem = threw(snippet);
        assertEquals(
                "This needs more memory than the bench has (64 MB). Keep less at once.",
                problem.words());
        assertTrue(problem.line() > 0, "its line is known");
    }

    @Test
    void endsASnippetThatStartsThreadsWithoutEnd() {
        String why =
                died(
                        """
                        while (true) {
                            new Thread(() -> {
                                try { Thread.sleep(100_000); } catch (InterruptedException e) { }
                            }).start();
                        }
                        """);
        assertTrue(why.startsWith("The snippet started more threads than"), why);
    }

    @Test
    void saysThatAMethodCallsItselfWithoutEnd() {
        SnippetProblem problem = threw("int deep(int n) {\n  return deep(n + 1) + 1;\n}\ndeep(0);");
        assertEquals(
                "A method calls itself without end. Give it a case in which it returns.",
                problem.words());
        assertEquals(2, problem.line());
    }

    @Test
    void saysWhyAClassCouldNotGetReady() {
        SnippetProblem problem = threw("class Bad { static int size = 1 / 0; }\nint s = Bad.size;");
        assertEquals(
                "A whole number was divided by zero. Check the divisor first.", problem.words());
    }

    @Test
    void saysThatItsBenchWasKilled() {
        assertEquals(
                "The bench’s process was ended from outside. Run the snippet again.",
                died(
                        "new ProcessBuilder(\"kill\", \"-9\", \"\" + ProcessHandle.current().pid())"
                                + ".start();\nThread.sleep(10_000);"));
    }

    @Test
    void saysThatItsBenchWasKilledFromOutside() {
        RunListener killer =
                new RunListener() {
                    @Override
                    public void printed(String text) {
                        ProcessHandle.current().children().forEach(ProcessHandle::destroyForcibly);
                    }
                };
        CompletableFuture<FinishedRun> run =
                Benches.start(bench, ABOVE, "System.out.println(1);\nwhile (true) { }", killer);
        RunOutcome outcome = run.orTimeout(Benches.HUNG_SECONDS, TimeUnit.SECONDS).join().outcome();
        assertEquals(
                new RunOutcome.Died(
                        "The bench’s process was ended from outside. Run the snippet again."),
                outcome);
    }
}
