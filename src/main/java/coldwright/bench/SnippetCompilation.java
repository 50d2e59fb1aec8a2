package coldwright.bench;

import coldwright.bench.compile.CompilationFailedException;
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

/** The first half of a run: compiles what is not compiled yet, keeps what is. */
final class SnippetCompilation implements AutoCloseable {
    private final BenchSettings settings;
    private final NameCompleter nameCompleter = new NameCompleter(this::newCompiler);
    private StepCompiler compiler;

    SnippetCompilation(BenchSettings settings) {
        this.settings = settings;
    }

    /**
     * Compiles snippets, each after those before it.
     *
     * @param snippets the snippets from the top
     * @param stopped asked now and then whether to give up
     * @return each compiled
     * @throws RejectedSnippet if one does not compile
     * @throws java.util.concurrent.CancellationException if it was given up
     * @throws IllegalArgumentException if the bench's imports are wrong
     */
    List<StepRun> compile(List<SnippetSource> snippets, BooleanSupplier stopped)
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
        return runs;
    }

    /** Compiles something, so that the first run finds the compiler warm. */
    void warmUp() {
        try {
            compiler()
                    .compile("double warm = 0.5; System.out.println(warm); warm * 2;", () -> false);
            compiler.rewindTo(0);
        } catch (CompilationFailedException | IllegalArgumentException e) {
            // the first run will say it
        }
    }

    /** The steps that stand already. */
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
                // said of the text as it is written, where each place is as the learner sees it
            }
        }
        String text = snippet.text();
        try {
            return new StepRun(compiler.compile(text, stopped), Map.of(), text);
        } catch (CompilationFailedException e) {
            List<SnippetProblem> problems =
                    e.complaints().stream()
                            .map(
                                    one ->
                                            new SnippetProblem(
                                                    one.start(),
                                                    one.end(),
                                                    LineIndex.lineAt(text, one.start()),
                                                    one.words(),
                                                    one.compilerWords()))
                            .toList();
            throw new RejectedSnippet(index, problems);
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
    List<CompletionProposal> complete(CompletionRequest question, BooleanSupplier stopped) {
        return nameCompleter.complete(question.above(), question.text(), question.caret(), stopped);
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

    /** A snippet does not compile. */
    static final class RejectedSnippet extends Exception {
        private static final long serialVersionUID = 1;

        private final int index;
        private final transient List<SnippetProblem> problems;

        RejectedSnippet(int index, List<SnippetProblem> problems) {
            super(problems.get(0).words());
            this.index = index;
            this.problems = List.copyOf(problems);
        }

        /** Which snippet, from 0. */
        int index() {
            return index;
        }

        RunOutcome.Rejected outcome() {
            return new RunOutcome.Rejected(problems);
        }
    }
}
