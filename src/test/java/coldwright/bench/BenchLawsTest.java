package coldwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldwright.laws.Cases;
import coldwright.laws.Draw;

import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * However a learner edits, runs and turns, a run gives what a run from the top in a new bench would
 * give. The reference is JShell's own engine, new for each run.
 */
final class BenchLawsTest {
    /** Ten with the profile {@code long}: each has a reference of its own, half a second. */
    private static final int EDITS = Integer.getInteger("bench.edits", 3);

    /** What may stand at each place of the lesson. */
    private static final List<List<String>> CHOICES =
            List.of(
                    List.of(
                            "double sugar = 120;",
                            "double sugar = 80.5;",
                            "var sugar = 7;",
                            "var sugar = 7.5;",
                            "String sugar = \"much\";"),
                    List.of(
                            "List<Object> log = new ArrayList<>();\nlog.add(sugar);",
                            "var log = new ArrayList<Object>();"),
                    List.of(
                            "int count = 0;\nint next() { return ++count; }",
                            "int next() { return 5; }",
                            "int count = 3; int next() { count += 2; return count; }"),
                    List.of(
                            "log.add(next());",
                            "log.add(\"x\");\nnext();",
                            "System.setProperty(\"cold\", \"c\" + log.size());",
                            "double sugar = 1.5;\nlog.add(sugar);",
                            "class Tub { static int made = 0; int no = ++made; }\nlog.add(new Tub().no);"),
                    List.of(
                            "log.add(System.getProperty(\"cold\"));",
                            "next();\nlog.add(next());",
                            "int next() { return 100; }\nlog.add(next());",
                            "String sugar = \"s\";\nlog.add(sugar + sugar);",
                            "class Tub { int no = 9; }\nlog.add(new Tub().no);",
                            "int[] far = {1};\nint g = far[log.size()];",
                            "log.add(nope);"));

    private static final String LAST = "log + \" \" + sugar";

    private static final Bench bench = Benches.shared();

    @Cases(2)
    void anyEditingGivesWhatANewBenchGives(Draw draw) {
        long seed = draw.anyLong();
        Random random = new Random(seed);
        List<String> lesson = new ArrayList<>();
        CHOICES.forEach(choices -> lesson.add(any(choices, random)));
        for (int i = 0; i < EDITS; i++) {
            int place = random.nextInt(lesson.size());
            lesson.set(place, any(CHOICES.get(place), random));
            List<String> above = lesson.subList(0, random.nextInt(1, lesson.size() + 1));
            List<String> all = new ArrayList<>(above);
            all.add(above.size() < 2 ? "sugar" : LAST);
            assertEquals(reference(all), given(all), "seed " + seed + ", run " + i + ": " + all);
        }
    }

    @Cases(2)
    void aTurnedDialGivesWhatTheWrittenNumberGives(Draw draw) {
        long seed = draw.anyLong();
        Random random = new Random(seed);
        String dialled = "double sugar = 120; // dial 0 to 300 step 5 g\nlog.add(sugar);\n" + LAST;
        List<String> above =
                List.of(
                        "var log = new ArrayList<Object>();",
                        any(CHOICES.get(2), random),
                        "next();");
        for (int i = 0; i < EDITS; i++) {
            double value = random.nextInt(60) * 5 + random.nextInt(2) * 0.25;
            List<String> all = new ArrayList<>(above);
            all.add(dialled.replace("120", Double.toString(value)));
            assertEquals(reference(all), given(all), "seed " + seed + ", turn " + i);
        }
    }

    /** Steps that mostly stand by themselves, so that they are run again where they stand. */
    private static final List<List<String>> QUIET =
            List.of(
                    List.of(
                            "double sugar = 12; // dial 0 to 300 step 1\nint made;",
                            "int made = 2;\ndouble sugar = 7;"),
                    List.of(
                            "double salt = 3;\ndouble both = sugar + salt;\nboth",
                            "double salt = 4;\nint both = made;\nboth += 1;\nboth",
                            "made += 10;\ndouble salt = 1;\nvar both = made;",
                            "double salt = 2;\nvar both = new double[] {sugar};\nboth[0] += 1;"),
                    List.of(
                            "double twice(double x) { return 2 * x + salt; }\ntwice(sugar)",
                            "double twice(double x) { salt += 1; return 2 * x + salt; }\ntwice(1)",
                            "record Pair(double x) { static int n = 0; int no() { return ++n; } }\n"
                                    + "double twice(double x) { return new Pair(x).no(); }",
                            "java.util.function.Function<Double, Double> keep = x -> x + ++made;\n"
                                    + "double twice(double x) { return keep.apply(x); }"),
                    List.of(
                            "double step = 5;\nIntStream.range(0, 3).mapToDouble(i -> i * step).sum() + twice(step)",
                            "double step = 6;\nvar all = new ArrayList<Double>();\nall.add(step);\nall + \" \" + made",
                            "double step = 7;\nString.valueOf(both) .length() > 99 ? 0 : twice(step) + made",
                            "double step = twice(2);\ndouble sugar = step;\nsugar + made"));

    @Cases(1)
    void runningAgainWhereItStandsGivesWhatANewBenchGives(Draw draw) {
        long seed = draw.anyLong();
        Random random = new Random(seed);
        List<String> lesson = new ArrayList<>();
        QUIET.forEach(choices -> lesson.add(any(choices, random)));
        for (int i = 0; i < 3 * EDITS; i++) {
            int place = random.nextInt(lesson.size());
            String edited =
                    random.nextInt(3) == 0 ? any(QUIET.get(place), random) : lesson.get(place);
            lesson.set(
                    place,
                    edited.replaceFirst(
                            "double (sugar|salt|step) = [0-9]+;",
                            "double $1 = " + random.nextInt(100) + ";"));
            List<String> all =
                    new ArrayList<>(lesson.subList(0, random.nextInt(1, lesson.size() + 1)));
            if (all.size() < QUIET.size() || random.nextBoolean()) {
                all.add("sugar + \" \" + made");
            }
            String expected = reference(all).replaceFirst("\\[D@.*|.*Lambda.*", "some object");
            String got = given(all).replaceFirst("^\\[[0-9., ]*\\]$|.*Lambda.*", "some object");
            if (!expected.equals("some object") && !got.equals("some object")) {
                assertEquals(expected, got, "seed " + seed + ", run " + i + ": " + all);
            }
        }
    }

    private static String any(List<String> choices, Random random) {
        return choices.get(random.nextInt(choices.size()));
    }

    private static String given(List<String> all) {
        int last = all.size() - 1;
        return words(Benches.run(bench, all.subList(0, last), all.get(last)).outcome());
    }

    private static String words(RunOutcome outcome) {
        if (outcome instanceof RunOutcome.Finished finished) {
            return finished.exact();
        }
        if (outcome instanceof RunOutcome.AboveFailed failed) {
            return failed.how().getClass().getSimpleName() + " at " + failed.index();
        }
        if (outcome instanceof RunOutcome.Rejected || outcome instanceof RunOutcome.Threw) {
            return outcome.getClass().getSimpleName();
        }
        return outcome.toString();
    }

    /** What JShell's own engine gives, in this process, from the top. */
    private static String reference(List<String> all) {
        System.clearProperty("cold");
        try (JShell shell = JShell.builder().executionEngine("local").build()) {
            Benches.IMPORTS.forEach(shell::eval);
            String value = "";
            for (int step = 0; step < all.size(); step++) {
                String rest = all.get(step);
                while (!rest.isBlank()) {
                    CompletionInfo info = shell.sourceCodeAnalysis().analyzeCompletion(rest);
                    for (SnippetEvent event : shell.eval(info.source())) {
                        if (event.status() == Snippet.Status.REJECTED) {
                            return ended("Rejected", step, all);
                        }
                        if (event.exception() != null) {
                            return ended("Threw", step, all);
                        }
                        value = event.value() == null ? value : event.value();
                    }
                    rest = info.remaining();
                }
            }
            return value.replace("\"", "");
        }
    }

    private static String ended(String how, int step, List<String> all) {
        return step == all.size() - 1 ? how : how + " at " + step;
    }
}
