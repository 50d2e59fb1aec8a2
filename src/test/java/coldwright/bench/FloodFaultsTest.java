package coldwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Figure;

import org.junit.jupiter.api.Test;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Snippets that give too much, or touch what is not theirs. */
final class FloodFaultsTest extends Faults {
    /** Two thousand with the profile {@code long}; their compilations take half a minute. */
    private static final int MANY = Integer.getInteger("bench.snippets", 300);

    /** Guards against a bench that hangs. */
    private static final int MANY_MINUTES = 10;

    @Test
    void keepsWhatWasPrintedBeforeTheEnd() {
        FinishedRun run =
                run("System.out.println(\"last words\");\nThread.sleep(200);\nSystem.exit(1);");
        assertEquals("last words\n", run.printed());
    }

    @Test
    void cutsAFlood() {
        FinishedRun run =
                run("for (int i = 0; i < 300_000; i++) System.out.println(\"flood \" + i);");
        assertTrue(run.outcome().finished());
        assertTrue(run.printedCut());
        assertEquals(100_000, run.printed().length());
        assertTrue(run.printed().startsWith("flood 0\nflood 1\n"));
    }

    @Test
    void cutsAFloodWithoutALineBreak() {
        FinishedRun run = run("for (int i = 0; i < 1_000_000; i++) System.out.print('ü');");
        assertTrue(run.printedCut());
        assertEquals("ü".repeat(100_000), run.printed());
    }

    @Test
    void endsAFloodOfFigures() {
        FinishedRun run = run("while (true) Page.show(Figure.of(\"again\"));");
        assertEquals(20, run.figures().size());
        assertEquals(
                "this snippet has drawn 20 figures; the page takes no more: draw fewer",
                assertInstanceOf(RunOutcome.Threw.class, run.outcome()).problem().words());
    }

    @Test
    void refusesAGiantFigure() {
        SnippetProblem problem =
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
        FinishedRun run =
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
                        var writers = outlet.getClass().getDeclaredField("program");
                        writers.setAccessible(true);
                        Object writer = writers.get(outlet);
                        var out = writer.getClass().getDeclaredField("out");
                        out.setAccessible(true);
                        var stream = (java.io.OutputStream) out.get(writer);
                        stream.write(new byte[1000]);
                        stream.flush();
                        Thread.sleep(10_000);
                        """);
        assertTrue(why.contains("isn’t a figure"), why);
    }

    @Test
    void survivesAClosedSystemOut() {
        FinishedRun run = run("System.out.close();\nSystem.out.println(\"still here\");");
        assertEquals("still here\n", run.printed());
    }

    @Test
    void hasNothingToReadFromSystemIn() {
        assertEquals(new RunOutcome.Finished("-1", "int"), run("System.in.read()").outcome());
        SnippetProblem problem = threw("new Scanner(System.in).nextLine()");
        assertTrue(problem.words().contains("can’t read the keyboard"), problem.words());
    }

    @Test
    void letsASnippetWriteFilesInItsOwnFolder() {
        String write =
                "java.nio.file.Files.writeString(java.nio.file.Path.of(\"note.txt\"), \"malt\");";
        assertTrue(run(write).outcome().finished());
        String list = "java.nio.file.Files.exists(java.nio.file.Path.of(\"note.txt\"))";
        assertEquals(new RunOutcome.Finished("false", "boolean"), run(list).outcome());
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
        assertEquals(new RunOutcome.Finished("60 75 malt", "String"), run(snippet).outcome());
    }

    @Test
    void refusesASnippetOfAMegabyte() {
        RunOutcome outcome = run("double a = 1;\n".repeat(75_000)).outcome();
        assertEquals(
                "This snippet has 1050000 characters, and the limit is 100000. Make it shorter.",
                assertInstanceOf(RunOutcome.Rejected.class, outcome).problems().get(0).words());
    }

    @Test
    void runsVeryManySnippets() throws Exception {
        List<String> above = new ArrayList<>(ABOVE);
        above.addAll(Collections.nCopies(MANY, "sugar = sugar + 1;"));
        FinishedRun run =
                Benches.start(bench, above, "sugar", RunListener.NONE)
                        .get(MANY_MINUTES, TimeUnit.MINUTES);
        assertEquals(
                new RunOutcome.Finished(Integer.toString(120 + MANY), "double", 120.0 + MANY + ""),
                run.outcome());
    }
}
