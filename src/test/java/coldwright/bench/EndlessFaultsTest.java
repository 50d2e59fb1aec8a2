package coldwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Snippets that do not end, or leave something behind that does not. */
final class EndlessFaultsTest extends Faults {
    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "while (true) { }", // endless loop
                "int n = 0;\nfor (int i = 0; i < 2_000_000_000; i++) for (int k = 0; k < 2_000_000_000; k++) n += i ^ k;", // counted hot loop
                "while (true) { try { while (true) { } } catch (Throwable all) { } }", // catch-all
                "while (true) { try { while (true) { } } finally { continue; } }", // looping
                // finally
                "Thread.sleep(100_000);", // sleep
                "Object o = new Object();\nsynchronized (o) { o.wait(); }", // wait
                "IntStream.range(0, Integer.MAX_VALUE).parallel().forEach(i -> { while (true) { } });", // parallel stream
                "while (true) System.out.println(\"flood\");", // endless printing
            })
    void stops(String snippet) {
        stopped(snippet);
    }

    @Test
    void stopsADeadlockOfMonitors() {
        stopped(
                """
                Object a = new Object();
                Object b = new Object();
                Thread other = new Thread(() -> {
                    synchronized (b) {
                        try { Thread.sleep(50); } catch (InterruptedException e) { }
                        synchronized (a) { }
                    }
                });
                other.start();
                synchronized (a) {
                    Thread.sleep(100);
                    synchronized (b) { }
                }
                """);
    }

    @Test
    void leavesBehindAThreadThatSpins() {
        assertTrue(run("new Thread(() -> { while (true) { } }).start();").outcome().finished());
    }

    @Test
    void leavesBehindAThreadPool() {
        String pool =
                "var pool = java.util.concurrent.Executors.newFixedThreadPool(4);\n"
                        + "pool.submit(() -> { while (true) System.out.print(\"noise\"); });";
        assertTrue(run(pool).outcome().finished());
        assertEquals("", run("double quiet = 1;").printed());
    }
}
