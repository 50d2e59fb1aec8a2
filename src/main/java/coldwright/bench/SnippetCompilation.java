package coldwright.bench;

import coldwright.bench.compile.CompilationFailedException;
import coldwright.bench.compile.CompileProblem;
import coldwright.bench.compile.CompiledStep;
import coldwright.bench.compile.LineIndex;
import coldwright.bench.compile.SnippetLimits;
import coldwright.bench.compile.SnippetSource;
import coldwright.bench.compile.StepRun;
import coldwright.bench.compiler.CompilerReply;
import coldwright.bench.compiler.CompilerRequest;
import coldwright.bench.complete.CompletionProposal;
import coldwright.words.Words;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/** The first half of a run: has new snippets compiled and reuses compiled ones. */
final class SnippetCompilation implements AutoCloseable {
    private final CompilerClient compiler;
    private final List<CompiledStep> steps = new ArrayList<>();

    SnippetCompilation(CompilerClient compiler) {
        this.compiler = compiler;
    }

    Duration processorTime() {
        return compiler.processorTime();
    }

    /** Starts the compiling process. */
    void warmUp() {
        compiler.open();
    }

    /**
     * Compiles snippets in order, each after those before it.
     *
     * @param rights what they may do
     * @param stopped polled; true to give up
     * @throws RejectedSnippet if one doesn't compile or goes beyond its rights
     * @throws CancellationException if cancelled
     * @throws IllegalArgumentException if the bench's imports are wrong
     */
    List<StepRun> compile(
            List<SnippetSource> snippets, SnippetRights rights, BooleanSupplier stopped)
            throws RejectedSnippet {
        List<StepRun> runs = standing(snippets);
        boolean lost = false;
        while (runs.size() < snippets.size()) {
            if (stopped.getAsBoolean()) {
                throw new CancellationException("given up");
            }
            int index = runs.size();
            SnippetSource snippet = snippets.get(index);
            steps.subList(index, steps.size()).clear();
            try {
                SnippetLimits.checkLength(snippet.text());
                CompilerReply reply =
                        compiler.ask(
                                new CompilerRequest.Compile(
                                        index, snippet, Words.shown().toLanguageTag()),
                                stopped);
                if (reply instanceof CompilerReply.Compiled compiled) {
                    steps.add(compiled.step());
                    runs.add(compiled.step().with(snippet).orElseThrow());
                } else if (reply instanceof CompilerReply.Rejected rejected) {
                    throw new RejectedSnippet(
                            index, problems(rejected.problems(), snippet.text()), false);
                } else {
                    steps.clear();
                    runs.clear();
                }
            } catch (CompilationFailedException e) {
                throw new RejectedSnippet(index, problems(e.complaints(), snippet.text()), false);
            } catch (CompilerClient.OverloadedException e) {
                steps.clear();
                if (lost || e.certain()) {
                    int end = snippet.text().length();
                    throw new RejectedSnippet(
                            index,
                            List.of(new SnippetProblem(0, end, 1, e.getMessage(), "")),
                            false);
                }
                lost = true;
                runs.clear();
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

    /** The steps that can be reused. */
    private List<StepRun> standing(List<SnippetSource> snippets) {
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

    /**
     * Finds the valid names at a caret.
     *
     * @param stopped polled; true to give up
     * @throws CancellationException if cancelled
     */
    List<CompletionProposal> complete(CompletionRequest question, BooleanSupplier stopped) {
        if (!SnippetLimits.allow(question.text())) {
            return List.of();
        }
        CompilerRequest request =
                new CompilerRequest.Complete(question.above(), question.text(), question.caret());
        try {
            return ((CompilerReply.Names) compiler.ask(request, stopped))
                    .names()
                    .orElseThrow(CancellationException::new);
        } catch (CompilerClient.OverloadedException e) {
            steps.clear();
            return List.of();
        }
    }

    /**
     * The lines of a step that appear in a stack trace, innermost call first.
     *
     * @param trace as the bench's process sent it
     * @param step index from 0; the steps above it are excluded
     */
    List<Integer> lines(List<StackTraceElement> trace, int step) {
        steps.subList(step + 1, steps.size()).clear();
        try {
            CompilerRequest request = new CompilerRequest.Trace(trace, step);
            return ((CompilerReply.Lines) compiler.ask(request, () -> false)).lines();
        } catch (CompilerClient.OverloadedException e) {
            steps.clear();
            return List.of();
        }
    }

    @Override
    public void close() {
        compiler.close();
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
