package coldwright.bench;

import coldwright.bench.compile.CompiledStep;
import coldwright.bench.compile.Completer;
import coldwright.bench.compile.Lines;
import coldwright.bench.compile.Proposal;
import coldwright.bench.compile.RefusedException;
import coldwright.bench.compile.StepCompiler;
import coldwright.bench.compile.StepRun;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** The first half of a run: compiles what is not compiled yet, keeps what is. */
final class Compilation implements AutoCloseable {
    private final BenchSettings settings;
    private final Completer completer = new Completer(this::newCompiler);
    private StepCompiler compiler;

    Compilation(BenchSettings settings) {
        this.settings = settings;
    }

    /**
     * Compiles snippets, each after those before it.
     *
     * @param texts the snippets from the top
     * @param stopped asked now and then whether to give up
     * @return each compiled
     * @throws RefusedAt if one does not compile
     * @throws java.util.concurrent.CancellationException if it was given up
     * @throws IllegalArgumentException if the bench's imports are wrong
     */
    List<StepRun> compile(List<String> texts, BooleanSupplier stopped) throws RefusedAt {
        List<StepRun> runs = standing(texts);
        if (runs.size() < texts.size()) {
            compiler.rewindTo(runs.size());
            if (compiler.worn()) {
                runs = standing(texts);
            }
            for (int i = runs.size(); i < texts.size(); i++) {
                runs.add(compile(i, texts.get(i), stopped));
            }
        }
        return runs;
    }

    /** Compiles something, so that the first run finds the compiler warm. */
    void warmUp() {
        try {
            compiler()
                    .compile("double warm = 0.5; System.out.println(warm); warm * 2;", () -> false);
            compiler.rewindTo(0);
        } catch (RefusedException | IllegalArgumentException e) {
            // the first run will say it
        }
    }

    /** The steps that stand already. */
    private List<StepRun> standing(List<String> texts) {
        List<CompiledStep> steps = compiler().steps();
        List<StepRun> runs = new ArrayList<>();
        for (int i = 0; i < Math.min(texts.size(), steps.size()); i++) {
            Optional<StepRun> run = steps.get(i).read(texts.get(i));
            if (run.isEmpty()) {
                break;
            }
            runs.add(run.get());
        }
        return runs;
    }

    private StepRun compile(int index, String text, BooleanSupplier stopped) throws RefusedAt {
        try {
            return compiler.compile(text, stopped).read(text).orElseThrow();
        } catch (RefusedException e) {
            List<Problem> problems =
                    e.complaints().stream()
                            .map(
                                    one ->
                                            new Problem(
                                                    one.start(),
                                                    one.end(),
                                                    Lines.lineAt(text, one.start()),
                                                    one.words(),
                                                    one.compilerWords()))
                            .toList();
            throw new RefusedAt(index, problems);
        }
    }

    private StepCompiler compiler() {
        if (compiler != null && compiler.worn()) {
            compiler.close();
            compiler = null;
        }
        if (compiler == null) {
            compiler = newCompiler();
        }
        return compiler;
    }

    private StepCompiler newCompiler() {
        return new StepCompiler(settings.classPath(), settings.imports());
    }

    /**
     * Finds the names that may stand at a caret.
     *
     * @param question where
     * @param stopped asked now and then whether to give up
     * @return the names
     * @throws java.util.concurrent.CancellationException if it was given up
     */
    List<Proposal> complete(Question question, BooleanSupplier stopped) {
        return completer.complete(question.above(), question.text(), question.caret(), stopped);
    }

    /**
     * Lines of a step that a trace goes through.
     *
     * @param trace as the bench's process gave it
     * @param step which step, from 0; those above it are taken away
     * @return the lines, innermost call first
     */
    List<Integer> lines(List<StackTraceElement> trace, int step) {
        compiler.rewindTo(step + 1);
        return compiler.places(trace).stream()
                .filter(place -> place.step() == step)
                .map(StepCompiler.Place::line)
                .toList();
    }

    @Override
    public void close() {
        completer.close();
        if (compiler != null) {
            compiler.close();
        }
    }

    /** A snippet does not compile. */
    static final class RefusedAt extends Exception {
        private static final long serialVersionUID = 1;

        private final int index;
        private final transient List<Problem> problems;

        RefusedAt(int index, List<Problem> problems) {
            super(problems.get(0).words());
            this.index = index;
            this.problems = List.copyOf(problems);
        }

        /** Which snippet, from 0. */
        int index() {
            return index;
        }

        Outcome.Rejected outcome() {
            return new Outcome.Rejected(problems);
        }
    }
}
