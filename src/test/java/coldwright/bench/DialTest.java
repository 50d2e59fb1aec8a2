package coldwright.bench;

import static coldwright.bench.SnippetRights.CONFINED;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.bench.compile.SnippetSource;
import coldwright.figure.Figure;

import org.junit.jupiter.api.Test;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;

/** Turning a dial. */
final class DialTest {
    private static final List<String> ABOVE = List.of("double milk = 500;");
    private static final String SNIPPET =
            """
            double sugar = 120; // dial 0 to 300 step 5 g
            double share = 100 * sugar / (milk + sugar);
            Page.show(Figure.of("share").line("l", 0, 1, t -> t * share));
            share
            """;

    private static final Bench bench = Benches.shared();

    private static FinishedRun turn(String snippet, String variable, double value) {
        return turn(ABOVE, snippet, variable, value);
    }

    private static FinishedRun turn(
            List<String> above, String snippet, String variable, double value) {
        List<SnippetSource> snippets = new ArrayList<>();
        above.forEach(one -> snippets.add(SnippetSource.of(one)));
        snippets.add(turned(snippet, variable, value));
        return Benches.run(bench, snippets);
    }

    /** The snippet with its dial at another number, as the page asks for it. */
    private static SnippetSource turned(String snippet, String variable, double value) {
        String number =
                value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
        return new SnippetSource(
                snippet.replaceFirst(variable + " = [-0-9.]+", variable + " = " + number),
                snippet,
                Map.of(snippet.indexOf(variable + " = ") + variable.length() + 3, value));
    }

    private static String exact(FinishedRun run) {
        return assertInstanceOf(RunOutcome.Finished.class, run.outcome()).exact();
    }

    @Test
    void givesWhatTheWrittenNumberGives() {
        assertEquals(Double.toString(100 * 120.0 / 620), exact(Benches.run(bench, ABOVE, SNIPPET)));
        FinishedRun turned = turn(SNIPPET, "sugar", 200);
        assertEquals(Double.toString(100 * 200.0 / 700), exact(turned));
        double share = 100 * 200.0 / 700;
        assertEquals(List.of(Figure.of("share").line("l", 0, 1, t -> t * share)), turned.figures());
    }

    @Test
    void theNextStepSeesTheTurnedNumber() {
        turn(SNIPPET, "sugar", 250);
        List<String> above = new ArrayList<>(ABOVE);
        List<SnippetSource> turned =
                List.of(
                        SnippetSource.of(ABOVE.get(0)),
                        turned(SNIPPET, "sugar", 250),
                        SnippetSource.of("sugar"));
        assertEquals("250.0", exact(Benches.run(bench, turned)));
        above.add(SNIPPET);
        assertEquals("120.0", exact(Benches.run(bench, above, "sugar")));
    }

    /** The compiler asks before each statement whether to give up. */
    @Test
    void turnsWithoutCompiling() throws SnippetCompilation.RejectedSnippet {
        AtomicInteger asked = new AtomicInteger();
        BooleanSupplier stopped = () -> asked.incrementAndGet() < 0;
        try (SnippetCompilation compilation =
                new SnippetCompilation(
                        new CompilerClient(
                                Benches.settings(), CompilerClient.MOST_PROCESSOR_TIME))) {
            compilation.compile(SnippetSource.of(ABOVE, SNIPPET), CONFINED, stopped);
            assertTrue(asked.get() > 0, "the snippet was compiled once");
            asked.set(0);
            for (int i = 0; i < 50; i++) {
                List<SnippetSource> turned =
                        List.of(SnippetSource.of(ABOVE.get(0)), turned(SNIPPET, "sugar", i));
                assertEquals(2, compilation.compile(turned, CONFINED, stopped).size());
            }
            assertEquals(0, asked.get(), "a turn of the dial was compiled");
            String renamed = SNIPPET.replace("share", "part");
            compilation.compile(SnippetSource.of(ABOVE, renamed), CONFINED, stopped);
            assertTrue(asked.get() > 0, "a changed name is compiled");
        }
        for (int i = 0; i < 10; i++) {
            assertEquals(Double.toString(100.0 * i / (500 + i)), exact(turn(SNIPPET, "sugar", i)));
        }
    }

    @Test
    void compilesWhereANumberChangesTheType() {
        String whole = "var scoops = 3;\n10 / scoops";
        assertEquals("2.5", exact(Benches.run(bench, ABOVE, "var scoops = 4.0;\n10 / scoops")));
        assertEquals("2", exact(turn(whole, "scoops", 4)));
        assertEquals(Double.toString(10 / 2.5), exact(turn(whole, "scoops", 2.5)));
        assertInstanceOf(
                RunOutcome.Rejected.class,
                turn("int scoops = 3;\n10 / scoops", "scoops", 2.5).outcome());
    }

    @Test
    void aThingAboveThatChangesAsItIsUsedIsMadeAnew() {
        List<String> above =
                List.of(
                        "import coldwright.science.bath.*;",
                        "var bath = IceAndSalt.of(1000, 300).start();");
        String stirred = "double heat = 1000;\nbath.pass(60, heat);\nbath.fromBatchJ()";
        for (double heat : new double[] {1000, 2000, 3000, 4000}) {
            FinishedRun turned = turn(above, stirred, "heat", heat);
            assertEquals(Double.toString(heat), exact(turned));
        }
    }

    @Test
    void aFinalNumberTurnsToo() {
        String snippet = "final double sugar = 120; // dial 0 to 300 step 5 g\nsugar + 1";
        assertEquals("121.0", exact(Benches.run(bench, ABOVE, snippet)));
        assertEquals("151.0", exact(turn(snippet, "sugar", 150)));
        List<SnippetSource> below =
                List.of(
                        SnippetSource.of(ABOVE.get(0)),
                        turned(snippet, "sugar", 200),
                        SnippetSource.of("sugar"));
        assertEquals("200.0", exact(Benches.run(bench, below)));
    }

    @Test
    void saysOfTheWrittenTextWhatDoesNotCompile() {
        String snippet = "double sugar = 5; double x = sugr;";
        RunOutcome.Rejected rejected =
                assertInstanceOf(
                        RunOutcome.Rejected.class, turn(snippet, "sugar", 12_345).outcome());
        SnippetProblem problem = rejected.problems().get(0);
        String now = snippet.replace("5", "12345");
        assertEquals("sugr", now.substring(problem.start(), problem.end()));
    }

    @Test
    void saysWhereATurnedNumberFails() {
        String snippet = "int parts = 1000;\n\ndouble each = 100 / parts;\neach";
        assertEquals("25.0", exact(turn(snippet, "parts", 4)));
        SnippetProblem problem =
                assertInstanceOf(RunOutcome.Threw.class, turn(snippet, "parts", 0).outcome())
                        .problem();
        assertEquals(3, problem.line());
        String now = snippet.replace("1000", "0");
        assertEquals("double each = 100 / parts;", now.substring(problem.start(), problem.end()));
    }
}
