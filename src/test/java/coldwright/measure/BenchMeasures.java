package coldwright.measure;

import static coldwright.science.mix.Amount.grams;

import coldwright.bench.Bench;
import coldwright.bench.BenchClassPath;
import coldwright.bench.BenchSettings;
import coldwright.bench.FinishedRun;
import coldwright.bench.RunListener;
import coldwright.bench.RunOutcome;
import coldwright.bench.SnippetRights;
import coldwright.bench.compile.SnippetSource;
import coldwright.figure.Figure;
import coldwright.lesson.Prelude;
import coldwright.paint.ChartPainter;
import coldwright.paint.style.FigureFormat;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import jdk.jshell.JShell;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** The bench beside its yardsticks: JShell's own engines and a plain call of the same code. */
final class BenchMeasures {
    private static final int RUNS = 50;
    private static final int STOPS = 10;
    private static final int LOSSES = 6;
    private static final int PATIENCE_S = 60;

    /** A step as lessons have them: three statements and a figure of 4 × 200 points. */
    private static final String STEP =
            """
            double sugar = %d; // dial 0 to 300 step 1 g
            var sorbet = Mix.of(grams(600, BLOOD_ORANGE_JUICE), grams(sugar, SUCROSE));
            var curve = sorbet.freezingCurve();
            show(Figure.of("As it cools")
                    .x("temperature", "°C").y("ice", "%% of the water")
                    .line("one", -25, 0, curve::icePercentAt)
                    .line("two", -25, 0, t -> curve.icePercentAt(t) / 2)
                    .line("three", -25, 0, t -> curve.icePercentAt(t) / 3)
                    .line("four", -25, 0, t -> curve.icePercentAt(t) / 4));
            """;

    /** A lesson of that one step. */
    static String lesson() {
        return "# Dial\n\n## Turn it\n\n```java\n" + STEP.formatted(40) + "```\n";
    }

    private final List<Sample> samples = new ArrayList<>();
    private int edit;

    static List<Sample> all() throws Exception {
        BenchMeasures measures = new BenchMeasures();
        measures.bench();
        measures.engine("local", "yardstick: JShell's own engine, same process, the same step");
        measures.engine("jdi", "yardstick: JShell's stock remote engine, the same step");
        measures.plainCall();
        return measures.samples;
    }

    private void bench() throws Exception {
        BenchSettings settings =
                BenchSettings.usual(BenchClassPath.ofThisProgram(), Prelude.imports());
        long opened = System.nanoTime();
        try (Bench bench = Bench.open(settings)) {
            run(bench, STEP.formatted(1));
            samples.add(
                    Sample.of(
                            "a bench opened, first run with a figure",
                            (System.nanoTime() - opened) / 1e6));
            samples.add(
                    Sample.of(
                            "warm run of the same step, a name changed: the compiler is needed",
                            10,
                            RUNS,
                            () -> run(bench, STEP.formatted(40).replace("sorbet", "s" + edit++))));
            String step = STEP.formatted(40);
            samples.add(
                    Sample.of(
                            "dial turned: new number to figure data",
                            10,
                            RUNS,
                            () -> turn(bench, step, 40 + edit++ % 200)));
            samples.add(
                    Sample.of(
                            "dial turned: new number to painted figure, 800 × 500",
                            20,
                            RUNS,
                            () ->
                                    ChartPainter.paint(
                                            turn(bench, step, 40 + edit++ % 200).figures().get(0),
                                            FigureFormat.of(800, 500))));
            stops(bench);
            losses(bench);
        }
    }

    private void stops(Bench bench) throws Exception {
        double[] stopMs = new double[STOPS];
        double[] nextMs = new double[STOPS];
        for (int i = 0; i < STOPS; i++) {
            var running = bench.run(List.of(), "while (true) { }", RunListener.NONE);
            Thread.sleep(700);
            long start = System.nanoTime();
            bench.stop();
            RunOutcome outcome = running.get(PATIENCE_S, TimeUnit.SECONDS).outcome();
            stopMs[i] = (System.nanoTime() - start) / 1e6;
            require(outcome instanceof RunOutcome.Stopped, outcome);
            run(bench, STEP.formatted(i));
            nextMs[i] = (System.nanoTime() - start) / 1e6;
        }
        samples.add(Sample.of("stop of an endless loop", stopMs));
        samples.add(Sample.of("stop to the end of the next good run", nextMs));
    }

    private void losses(Bench bench) throws Exception {
        double[] nextMs = new double[LOSSES];
        for (int i = 0; i < LOSSES; i++) {
            Thread.sleep(1500);
            long start = System.nanoTime();
            RunOutcome outcome =
                    bench.run(
                                    SnippetSource.of(List.of(), "System.exit(" + i + ");"),
                                    SnippetRights.EVERYTHING,
                                    RunListener.NONE)
                            .get(PATIENCE_S, TimeUnit.SECONDS)
                            .outcome();
            require(outcome instanceof RunOutcome.Died, outcome);
            run(bench, STEP.formatted(i));
            nextMs[i] = (System.nanoTime() - start) / 1e6;
        }
        samples.add(Sample.of("bench lost (exit) to the end of the next good run", nextMs));
    }

    private void engine(String which, String what) throws Exception {
        try (JShell shell = JShell.builder().executionEngine(which).build()) {
            for (Path path : BenchClassPath.ofThisProgram()) {
                shell.addToClasspath(path.toString());
            }
            Prelude.imports().forEach(shell::eval);
            samples.add(Sample.of(what, 10, RUNS, () -> eval(shell, STEP.formatted(edit++))));
        }
    }

    private static int eval(JShell shell, String step) {
        String rest = step;
        int statements = 0;
        while (!rest.isBlank()) {
            SourceCodeAnalysis.CompletionInfo info =
                    shell.sourceCodeAnalysis().analyzeCompletion(rest);
            for (SnippetEvent event : shell.eval(info.source())) {
                require(event.exception() == null, event);
            }
            rest = info.remaining();
            statements++;
        }
        return statements;
    }

    private void plainCall() throws Exception {
        samples.add(
                Sample.of(
                        "yardstick: the same code called from Java",
                        50,
                        RUNS,
                        () -> {
                            var curve =
                                    Mix.of(
                                                    grams(600, Shelf.BLOOD_ORANGE_JUICE),
                                                    grams(edit++ % 300, Shelf.SUCROSE))
                                            .freezingCurve();
                            return Figure.of("As it cools")
                                    .line("one", -25, 0, curve::icePercentAt)
                                    .line("two", -25, 0, t -> curve.icePercentAt(t) / 2)
                                    .line("three", -25, 0, t -> curve.icePercentAt(t) / 3)
                                    .line("four", -25, 0, t -> curve.icePercentAt(t) / 4);
                        }));
    }

    private static FinishedRun run(Bench bench, String step) throws Exception {
        return good(bench.run(List.of(), step, RunListener.NONE).get(PATIENCE_S, TimeUnit.SECONDS));
    }

    private static FinishedRun turn(Bench bench, String step, double sugar) throws Exception {
        return good(
                bench.run(
                                List.of(
                                        new SnippetSource(
                                                step.replaceFirst(
                                                        "sugar = [0-9.]+", "sugar = " + sugar),
                                                step,
                                                Map.of(step.indexOf("= ") + 2, sugar))),
                                SnippetRights.CONFINED,
                                RunListener.NONE)
                        .get(PATIENCE_S, TimeUnit.SECONDS));
    }

    private static FinishedRun good(FinishedRun run) {
        require(run.outcome().finished() && run.figures().size() == 1, run.outcome());
        return run;
    }

    private static void require(boolean holds, Object told) {
        if (!holds) {
            throw new IllegalStateException("a measured run went wrong: " + told);
        }
    }
}
