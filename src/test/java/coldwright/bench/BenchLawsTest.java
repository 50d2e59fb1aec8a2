package coldwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * However a learner edits, runs and turns, a run gives what a run from the top in a new bench would
 * give. The reference is JShell's own engine, new for each run.
 */
final class BenchLawsTest {
    private static final int EDITS = 10;

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

    private static Bench bench;

    @BeforeContainer
    static void open() {
        bench = Bench.open(Benches.settings());
    }

    @AfterContainer
    static void close() {
        bench.close();
    }

    @Property(tries = 4, shrinking = ShrinkingMode.OFF)
    void anyEditingGivesWhatANewBenchGives(@ForAll long seed) {
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

    @Property(tries = 2, shrinking = ShrinkingMode.OFF)
    void aTurnedDialGivesWhatTheWrittenNumberGives(@ForAll long seed) {
        Random random = new Random(seed);
        String dialled = "double sugar = 120; // dial 0 to 300 step 5 g\nlog.add(sugar);\n" + LAST;
        List<String> above =
                List.of(
                        "var log = new ArrayList<Object>();",
                        any(CHOICES.get(2), random),
                        "next();");
        for (int i = 0; i < EDITS; i++) {
            double value = random.nextInt(60) * 5 + random.nextInt(2) * 0.25;
            Run run = bench.turn(above, dialled, Map.of("sugar", value), RunWatcher.NONE).join();
            List<String> all = new ArrayList<>(above);
            all.add(dialled.replace("120", Double.toString(value)));
            assertEquals(reference(all), words(run.outcome()), "seed " + seed + ", turn " + i);
        }
    }

    private static String any(List<String> choices, Random random) {
        return choices.get(random.nextInt(choices.size()));
    }

    private static String given(List<String> all) {
        int last = all.size() - 1;
        return words(Benches.run(bench, all.subList(0, last), all.get(last)).outcome());
    }

    private static String words(Outcome outcome) {
        if (outcome instanceof Outcome.Finished finished) {
            return finished.exact();
        }
        if (outcome instanceof Outcome.AboveFailed failed) {
            return failed.how().getClass().getSimpleName() + " at " + failed.index();
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
                            return "Rejected at " + step;
                        }
                        if (event.exception() != null) {
                            return "Threw at " + step;
                        }
                        value = event.value() == null ? value : event.value();
                    }
                    rest = info.remaining();
                }
            }
            return value.replace("\"", "");
        }
    }
}
