package coldwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Figure;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** What runs give, in the separate process. */
final class BenchRunsTest {
    private static final Bench bench = Benches.shared();

    private static FinishedRun run(String snippet, String... above) {
        return Benches.run(bench, List.of(above), snippet);
    }

    private static RunOutcome.Finished finished(String snippet, String... above) {
        RunOutcome outcome = run(snippet, above).outcome();
        return assertInstanceOf(RunOutcome.Finished.class, outcome, outcome.toString());
    }

    private static SnippetProblem threw(String snippet, String... above) {
        RunOutcome outcome = run(snippet, above).outcome();
        return assertInstanceOf(RunOutcome.Threw.class, outcome, outcome.toString()).problem();
    }

    @Test
    void givesTheValueOfTheLastExpression() {
        assertEquals(
                new RunOutcome.Finished("42", "int"), finished("int a = 6;\nint b = 7;\na * b;"));
        assertEquals(new RunOutcome.Finished("malt", "String"), finished("\"malt\""));
        assertEquals(
                new RunOutcome.Finished("3", "int"),
                finished("1 + 2; double later = 4; // no more"));
        assertEquals(new RunOutcome.Finished("", ""), finished("double only = 4;"));
        assertEquals(new RunOutcome.Finished("", ""), finished("// nothing but a remark"));
    }

    @Test
    void roundsWhatIsShownAndKeepsEveryDigitBeside() {
        assertEquals(
                new RunOutcome.Finished("0.333333", "double", "0.3333333333333333"),
                finished("1.0 / 3"));
        assertEquals("[0.333333, 120]", finished("List.of(1.0 / 3, 120.0)").value());
        assertEquals("[0.1, 2]", finished("new double[] {0.1, 2}").value());
        assertEquals("[a: 0.666667]", finished("Map.of(\"a\", 2.0 / 3)").value());
    }

    @Test
    void cutsAValueThatIsTooLong() {
        int length = finished("\"x\".repeat(1_000_000)").value().length();
        assertTrue(length > 10_000 && length < 30_000, "length " + length);
    }

    @Test
    void givesWhatIsPrintedAsItComes() throws Exception {
        List<String> parts = Collections.synchronizedList(new ArrayList<>());
        RunListener watcher =
                new RunListener() {
                    @Override
                    public void printed(String text) {
                        parts.add(text);
                    }
                };
        String snippet =
                "System.out.println(\"süß −2 °C\"); Thread.sleep(300); System.err.print(\"end\");";
        FinishedRun run =
                Benches.start(bench, List.of(), snippet, watcher)
                        .get(Benches.HUNG_SECONDS, TimeUnit.SECONDS);
        assertEquals("süß −2 °C\nend", run.printed());
        assertFalse(run.printedCut());
        assertEquals(run.printed(), String.join("", parts));
        assertTrue(parts.size() >= 2, "the first line comes before the end: " + parts);
    }

    @Test
    void givesFiguresInOrder() {
        FinishedRun run =
                run(
                        """
                        for (int i = 1; i <= 3; i++) {
                            Page.show(Figure.of("no. " + i).line("sine", 0, i, t -> Math.sin(t)));
                        }
                        """);
        assertEquals(
                List.of("no. 1", "no. 2", "no. 3"),
                run.figures().stream().map(Figure::title).toList());
        assertEquals(Figure.of("no. 2").line("sine", 0, 2, Math::sin), run.figures().get(1));
    }

    @Test
    void showsAFigureThatIsTheValueOnce() {
        String figure = "Figure f = Figure.of(\"curve\").line(\"l\", 0, 1, t -> t);\n";
        assertEquals(1, run(figure + "f").figures().size());
        assertEquals(1, run(figure + "Page.show(f);\nf").figures().size());
        assertEquals("the figure “curve”", finished(figure + "f").value());
    }

    @Test
    void namesTheLineAtWhichItFails() {
        SnippetProblem problem =
                threw("int[] grams = {1, 2};\n\n// the third\nint g = grams[2];\n");
        assertEquals("Index 2 is out of range. The index goes from 0 to 1.", problem.words());
        assertEquals(4, problem.line());
        assertEquals(36, problem.start());
        assertTrue(problem.compilerWords().startsWith("java.lang.ArrayIndexOutOfBoundsException"));
    }

    @Test
    void namesTheLineOfTheCallWhenAMethodAboveFails() {
        String above = "double share(int parts) {\n  return 1 / parts;\n}";
        SnippetProblem problem = threw("double a = 1;\ndouble b = share(0);", above);
        assertEquals(
                "A whole number was divided by zero. Check the divisor first.", problem.words());
        assertEquals(2, problem.line());
    }

    @Test
    void findsTheLineWithinALongStatement() {
        SnippetProblem problem =
                threw("int i = 1;\nfor (int k = 0; k < 3; k++) {\n  i++;\n  i = i / (k - 1);\n}");
        assertEquals(4, problem.line());
    }

    @Test
    void showsALibrarysSentenceAsItIs() {
        assertEquals(
                "count is 1; it must be 2 or more", threw("NumberColumn.spaced(0, 1, 1)").words());
    }

    @Test
    void putsCommonFailuresIntoWords() {
        assertEquals(
                "`name` is null. Give it a value first.",
                threw("String name = null;\nname.length();").words());
        assertEquals(
                "The string `12 g` can’t be read as a number.",
                threw("Integer.parseInt(\"12 g\")").words());
        assertEquals(
                "A method calls itself without end. Give it a case in which it returns.",
                threw("int deep(int n) { return deep(n + 1) + 1; }\ndeep(0)").words());
        assertEquals(
                "This list can’t be changed. Copy it first: `new ArrayList<>(list)`.",
                threw("List.of(1).add(2);").words());
    }

    @Test
    void runsNothingOfARefusedSnippet() {
        FinishedRun run = run("System.out.println(\"never\");\ndouble a = nope;\n");
        RunOutcome.Rejected rejected = assertInstanceOf(RunOutcome.Rejected.class, run.outcome());
        assertEquals("", run.printed());
        assertEquals(2, rejected.problems().get(0).line());
        assertEquals(40, rejected.problems().get(0).start());
    }

    @Test
    void saysWhichSnippetAboveFailed() {
        RunOutcome outcome = run("1", "double a = 1;", "a / nope", "double b = 2;").outcome();
        RunOutcome.AboveFailed failed = assertInstanceOf(RunOutcome.AboveFailed.class, outcome);
        assertEquals(1, failed.index());
        assertInstanceOf(RunOutcome.Rejected.class, failed.how());
        RunOutcome thrown = run("1", "double a = 1;", "int z = 1 / 0;").outcome();
        assertEquals(1, assertInstanceOf(RunOutcome.AboveFailed.class, thrown).index());
    }

    @Test
    void runsInOrderAndTellsWhichAboveRuns() throws Exception {
        List<String> heard = Collections.synchronizedList(new ArrayList<>());
        RunListener watcher =
                new RunListener() {
                    @Override
                    public void above(int index, int count) {
                        heard.add(index + " of " + count);
                    }
                };
        List<String> above = List.of("int order = 1;", "order = order * 10;");
        FinishedRun run =
                Benches.start(bench, above, "order + 1", watcher)
                        .get(Benches.HUNG_SECONDS, TimeUnit.SECONDS);
        assertEquals(new RunOutcome.Finished("11", "int"), run.outcome());
        assertEquals(List.of("0 of 2", "1 of 2"), heard);
    }

    @Test
    void keepsTheCallerFree(@TempDir Path folder) throws Exception {
        Path gate = folder.resolve("gate");
        var run = Benches.start(bench, List.of(), Benches.untilThereIs(gate), RunListener.NONE);
        var next = Benches.start(bench, List.of(), "\"next\"", RunListener.NONE);
        assertFalse(run.isDone(), "the caller waited for the run");
        Files.createFile(gate);
        assertTrue(run.get(Benches.HUNG_SECONDS, TimeUnit.SECONDS).outcome().finished());
        assertEquals(
                new RunOutcome.Finished("next", "String"),
                next.get(Benches.HUNG_SECONDS, TimeUnit.SECONDS).outcome());
    }

    @Test
    void hasAHomeOfItsOwnAndNothingOfTheUsers() {
        String snippet =
                """
                var known = List.of("LANG", "LC_ALL", "LC_CTYPE", "SystemRoot", "windir");
                var others = new ArrayList<>(System.getenv().keySet());
                others.removeAll(known);
                var files = new java.io.File(".").list().length;
                var home = System.getProperty("user.home").equals(new java.io.File("").getAbsolutePath());
                others + " " + files + " " + home + " " + System.in.read();
                """;
        assertEquals("[] 0 true -1", finished(snippet).value());
    }

    @Test
    void saysWhatIsWrongWithItsImports() throws Exception {
        BenchSettings wrong = BenchSettings.usual(List.of(), List.of("import nowhere.*;"));
        try (Bench other = Bench.open(wrong)) {
            assertEquals(
                    new RunOutcome.Died(
                            "\"import nowhere.*;\" can't be imported; is it on the class path?"),
                    Benches.run(other, List.of(), "1").outcome());
        }
    }
}
