package coldwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Figure;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/**
 * The worst code that a learner can write. After each fault the run has ended with a true word, and
 * the next run, after the same steps above, is right.
 */
final class ThirtyFaultsTest {
    private static final List<String> ABOVE =
            List.of(
                    "double sugar = 120;\nList<String> log = new ArrayList<>();",
                    "log.add(\"a\");");

    private static Bench bench;

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
        Run run = Benches.run(bench, ABOVE, "log.add(\"b\");\nsugar + \" \" + log");
        assertEquals(new Outcome.Finished("120.0 [a, b]", "String"), run.outcome());
    }

    private static Run run(String snippet) {
        return Benches.run(bench, ABOVE, snippet);
    }

    /** Runs what must be stopped, and stops it once it has printed its first word. */
    private static Run stopped(String snippet) {
        CompletableFuture<Void> begun = new CompletableFuture<>();
        RunWatcher watcher =
                new RunWatcher() {
                    @Override
                    public void printed(String text) {
                        begun.complete(null);
                    }
                };
        CompletableFuture<Run> run =
                bench.run(ABOVE, "System.out.println(\"on\");\n" + snippet, watcher);
        begun.orTimeout(Benches.HUNG_SECONDS, TimeUnit.SECONDS).join();
        bench.stop();
        Run ended = run.orTimeout(Benches.HUNG_SECONDS, TimeUnit.SECONDS).join();
        assertEquals(new Outcome.Stopped(), ended.outcome());
        assertTrue(ended.printed().startsWith("on\n"), "what it printed is kept");
        return ended;
    }

    private static String died(String snippet) {
        Outcome outcome = run(snippet).outcome();
        return assertInstanceOf(Outcome.Died.class, outcome, outcome.toString()).why();
    }

    private static Problem threw(String snippet) {
        Outcome outcome = run(snippet).outcome();
        return assertInstanceOf(Outcome.Threw.class, outcome, outcome.toString()).problem();
    }

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

    @Test
    void saysThatASnippetEndedItsBench() {
        assertEquals(
                "the snippet ended its own bench (exit status 3); take `System.exit` or `halt` out",
                died("System.exit(3);"));
        assertEquals(
                "the snippet ended its own bench (exit status 0); take `System.exit` or `halt` out",
                died("Runtime.getRuntime().halt(0);"));
    }

    @Test
    void keepsWhatWasPrintedBeforeTheEnd() {
        Run run = run("System.out.println(\"last words\");\nThread.sleep(200);\nSystem.exit(1);");
        assertEquals("last words\n", run.printed());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "List<double[]> all = new ArrayList<>();\nwhile (true) all.add(new double[1_000_000]);",
                "Map<Integer, Object> all = new HashMap<>();\nfor (int i = 0; ; i++) all.put(i, new Object());",
                "int[] one = new int[Integer.MAX_VALUE];",
            })
    void saysThatMemoryIsOut(String snippet) {
        Problem problem = threw(snippet);
        assertEquals(
                "this needs more memory than the bench has (64 MB); keep less at once",
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
        assertTrue(why.startsWith("the snippet started more threads than"), why);
    }

    @Test
    void saysThatAMethodCallsItselfWithoutEnd() {
        Problem problem = threw("int deep(int n) {\n  return deep(n + 1) + 1;\n}\ndeep(0);");
        assertEquals(
                "a method calls itself without end; give it a case in which it stops",
                problem.words());
        assertEquals(2, problem.line());
    }

    @Test
    void saysWhyAClassCouldNotGetReady() {
        Problem problem = threw("class Bad { static int size = 1 / 0; }\nint s = Bad.size;");
        assertEquals(
                "a whole number was divided by zero; check the divisor first", problem.words());
    }

    @Test
    void cutsAFlood() {
        Run run = run("for (int i = 0; i < 300_000; i++) System.out.println(\"flood \" + i);");
        assertTrue(run.outcome().finished());
        assertTrue(run.printedCut());
        assertEquals(100_000, run.printed().length());
        assertTrue(run.printed().startsWith("flood 0\nflood 1\n"));
    }

    @Test
    void cutsAFloodWithoutALineBreak() {
        Run run = run("for (int i = 0; i < 1_000_000; i++) System.out.print('ü');");
        assertTrue(run.printedCut());
        assertEquals("ü".repeat(100_000), run.printed());
    }

    @Test
    void endsAFloodOfFigures() {
        Run run = run("while (true) Page.show(Figure.of(\"again\"));");
        assertEquals(20, run.figures().size());
        assertEquals(
                "this snippet has drawn 20 figures; the page takes no more: draw fewer",
                assertInstanceOf(Outcome.Threw.class, run.outcome()).problem().words());
    }

    @Test
    void refusesAGiantFigure() {
        Problem problem =
                threw(
                        "double[] many = new double[500_000];\n"
                                + "Page.show(Figure.of(\"giant\").line(\"l\", many, many));");
        assertEquals(
                "the figure \"giant\" has 500000 points; the page takes up to 100000: draw fewer",
                problem.words());
        assertEquals(2, problem.line());
    }

    @Test
    void carriesPointsThatAreNoNumbers() {
        Run run =
                run(
                        "double[] odd = {1, 0.0 / 0, 1.0 / 0, -1.0 / 0};\n"
                                + "Page.show(Figure.of(\"odd\").line(\"l\", odd, odd));");
        double nan = 0.0 / 0;
        double inf = 1.0 / 0;
        double[] odd = {1, nan, inf, -inf};
        assertEquals(List.of(Figure.of("odd").line("l", odd, odd)), run.figures());
    }

    @Test
    void endsABenchThatForgesAFigure() {
        String why =
                died(
                        """
                        var reader = Page.class.getDeclaredField("reader");
                        reader.setAccessible(true);
                        Object figures = reader.get(null);
                        Object outlet = null;
                        for (var f : figures.getClass().getDeclaredFields()) {
                            f.setAccessible(true);
                            outlet = f.get(figures);
                        }
                        var frames = outlet.getClass().getDeclaredField("frames");
                        frames.setAccessible(true);
                        Object writer = frames.get(outlet);
                        var out = writer.getClass().getDeclaredField("out");
                        out.setAccessible(true);
                        var stream = (java.io.OutputStream) out.get(writer);
                        stream.write(new byte[1000]);
                        stream.flush();
                        Thread.sleep(10_000);
                        """);
        assertTrue(why.contains("no figure"), why);
    }

    @Test
    void survivesAClosedSystemOut() {
        Run run = run("System.out.close();\nSystem.out.println(\"still here\");");
        assertEquals("still here\n", run.printed());
    }

    @Test
    void hasNothingToReadFromSystemIn() {
        assertEquals(new Outcome.Finished("-1", "int"), run("System.in.read()").outcome());
        Problem problem = threw("new Scanner(System.in).nextLine()");
        assertTrue(problem.words().contains("can't ask at the keyboard"), problem.words());
    }

    @Test
    void saysThatItsBenchWasKilled() {
        assertEquals(
                "the bench's process was ended from outside; run the snippet again",
                died(
                        "new ProcessBuilder(\"kill\", \"-9\", \"\" + ProcessHandle.current().pid())"
                                + ".start();\nThread.sleep(10_000);"));
    }

    @Test
    void saysThatItsBenchWasKilledFromOutside() {
        CompletableFuture<Run> run = bench.run(ABOVE, "Thread.sleep(60_000);", RunWatcher.NONE);
        CompletableFuture.delayedExecutor(1, TimeUnit.SECONDS)
                .execute(
                        () ->
                                ProcessHandle.current()
                                        .children()
                                        .forEach(ProcessHandle::destroyForcibly));
        Outcome outcome = run.orTimeout(Benches.HUNG_SECONDS, TimeUnit.SECONDS).join().outcome();
        assertEquals(
                new Outcome.Died(
                        "the bench's process was ended from outside; run the snippet again"),
                outcome);
    }

    @Test
    void letsASnippetWriteFilesInItsOwnFolder() {
        String write =
                "java.nio.file.Files.writeString(java.nio.file.Path.of(\"note.txt\"), \"malt\");";
        assertTrue(run(write).outcome().finished());
        String list = "java.nio.file.Files.exists(java.nio.file.Path.of(\"note.txt\"))";
        assertEquals(new Outcome.Finished("false", "boolean"), run(list).outcome());
    }

    @Test
    void survivesTheLossOfItsFolder() {
        String delete = "new java.io.File(\"\").getAbsoluteFile().delete();";
        assertTrue(run(delete).outcome().finished());
    }

    @Test
    void takesAClassThatIsDeclaredAnew() {
        String snippet =
                """
                class Scoop { int grams = 60; }
                int before = new Scoop().grams;
                class Scoop { int grams = 75; String flavour = "malt"; }
                before + " " + new Scoop().grams + " " + new Scoop().flavour
                """;
        assertEquals(new Outcome.Finished("60 75 malt", "String"), run(snippet).outcome());
    }

    @Test
    void refusesASnippetOfAMegabyte() {
        Outcome outcome = run("double a = 1;\n".repeat(75_000)).outcome();
        assertEquals(
                "this snippet is 1050000 characters long; the bench takes up to 100000: make it"
                        + " shorter",
                assertInstanceOf(Outcome.Rejected.class, outcome).problems().get(0).words());
    }

    @Test
    void runsManySnippets() {
        List<String> above = new ArrayList<>(ABOVE);
        above.addAll(Collections.nCopies(60, "sugar = sugar + 1;"));
        assertEquals(
                new Outcome.Finished("180", "double", "180.0"),
                Benches.run(bench, above, "sugar").outcome());
    }
}
