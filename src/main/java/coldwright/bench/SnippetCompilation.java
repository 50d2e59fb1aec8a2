package coldwright.bench;

import coldwright.bench.compile.CompilationFailedException;
import coldwright.bench.compile.CompileProblem;
import coldwright.bench.compile.CompiledStep;
import coldwright.bench.compile.LineIndex;
import coldwright.bench.compile.SnippetSource;
import coldwright.bench.compile.StepCompiler;
import coldwright.bench.compile.StepRun;
import coldwright.bench.complete.CompletionProposal;
import coldwright.bench.complete.NameCompleter;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** The first half of a run: compiles new snippets and reuses compiled ones. */
final class SnippetCompilation implements AutoCloseable {
    private final BenchSettings settings;
    private final NameCompleter nameCompleter = new NameCompleter(this::newCompiler);
    private StepCompiler compiler;

    SnippetCompilation(BenchSettings settings) {
        this.settings = settings;
    }

    /**
     * Compiles snippets in order, each after those before it.
     *
     * @param rights what they may do
     * @param stopped polled; true to give up
     * @throws RejectedSnippet if one doesn't compile or goes beyond its rights
     * @throws java.util.concurrent.CancellationException if cancelled
     * @throws IllegalArgumentException if the bench's imports are wrong
     */
    List<StepRun> compile(
            List<SnippetSource> snippets, SnippetRights rights, BooleanSupplier stopped)
            throws RejectedSnippet {
        List<StepRun> runs = standing(snippets);
        if (runs.size() < snippets.size()) {
            compiler.rewindTo(runs.size());
            if (compiler.worn()) {
                runs = standing(snippets);
            }
            for (int i = runs.size(); i < snippets.size(); i++) {
                runs.add(compile(i, snippets.get(i), stopped));
            }
        }
        for (int i = 0; rights == SnippetRights.CONFINED && i < runs.size(); i++) {
            List<CompileProblem> refused = runs.get(i).step().refused();
            if (!refused.isEmpty()) {
                throw new RejectedSnippet(
                        i, problems(refused.subList(0, 1), runs.get(i).text()), true);
            }
        }
        return runs;
    }

    /** Compiles something so that the compiler is warm for the first run. */
    void warmUp() {
        try {
            compiler()
                    .compile("double warm = 0.5; System.out.println(warm); warm * 2;", () -> false);
            compiler.rewindTo(0);
        } catch (CompilationFailedException | IllegalArgumentException e) {
            // the first run will report it
        }
    }

    /** The steps that can be reused. */
    private List<StepRun> standing(List<SnippetSource> snippets) {
        List<CompiledStep> steps = compiler().steps();
        List<StepRun> runs = new ArrayList<>();
        for (int i = 0; i < Math.min(snippets.size(), steps.size()); i++) {
            Optional<StepRun> run = steps.get(i).with(snippets.get(i));
            if (run.isEmpty()) {
                break;
            }
            runs.add(run.get());
        }
        return runs;
    }

    private StepRun compile(int index, SnippetSource snippet, BooleanSupplier stopped)
            throws RejectedSnippet {
        if (!snippet.text().equals(snippet.compiledText())) {
            try {
                Optional<StepRun> run =
                        compiler.compile(snippet.compiledText(), stopped).with(snippet);
                if (run.isPresent()) {
                    return run.get();
                }
                compiler.rewindTo(index);
            } catch (CompilationFailedException e) {
                // checked in the text as written, so that positions match what the learner sees
            }
        }
        String text = snippet.text();
        try {
            return new StepRun(compiler.compile(text, stopped), Map.of(), text);
        } catch (CompilationFailedException e) {
            throw new RejectedSnippet(index, problems(e.complaints(), text), false);
        }
    }

    private static List<SnippetProblem> problems(List<CompileProblem> problems, String text) {
        return problems.stream()
                .map(
                        one ->
                                new SnippetProblem(
                                        one.start(),
                                        one.end(),
                                        LineIndex.lineAt(text, one.start()),
                                        one.words(),
                                        one.compilerWords()))
                .toList();
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
     * Finds the valid names at a caret.
     *
     * @param stopped polled; true to give up
     * @throws java.util.concurrent.CancellationException if cancelled
     */
    List<CompletionProposal> complete(CompletionRequest question, BooleanSupplier stopped) {
        return nameCompleter.complete(question.above(), question.text(), question.caret(), stopped);
    }

    /**
     * The lines of a step that appear in a stack trace, innermost call first.
     *
     * @param trace as the bench's process sent it
     * @param step index from 0; the steps above it are excluded
     */
    List<Integer> lines(List<StackTraceElement> trace, int step) {
        compiler.rewindTo(step + 1);
        return compiler.places(trace).stream()
                .filter(place -> place.step() == step)
                .map(StepCompiler.StackPosition::line)
                .toList();
    }

    @Override
    public void close() {
        nameCompleter.close();
        if (compiler != null) {
            compiler.close();
        }
    }

    /** A snippet doesn't compile. */
    static final class RejectedSnippet extends Exception {
        private static final long serialVersionUID = 1;

        private final int index;
        private final transient RunOutcome.Rejected outcome;

        RejectedSnippet(int index, List<SnippetProblem> problems, boolean beyond) {
            super(problems.get(0).words());
            this.index = index;
            this.outcome = new RunOutcome.Rejected(problems, beyond);
        }

        /** The index of the snippet, from 0. */
        int index() {
            return index;
        }

        RunOutcome.Rejected outcome() {
            return outcome;
        }
    }
}
