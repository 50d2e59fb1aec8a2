package coldwright.bench.compile;

import coldwright.bench.compile.StatementSplitter.StatementSource;
import coldwright.bench.confine.NameCheck;

import jdk.jshell.DeclarationSnippet;
import jdk.jshell.EvalException;
import jdk.jshell.JShell;
import jdk.jshell.MethodSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.TypeDeclSnippet;
import jdk.jshell.VarSnippet;
import jdk.jshell.spi.ExecutionControl.UserException;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Compiles snippets, each after those above it, without running them. Not thread-safe.
 *
 * <p>Steps form a stack: {@link #compile} pushes one, {@link #rewindTo} pops. Executing the orders
 * of all steps from the bottom, after a fresh start, equals a run from the top.
 */
public final class StepCompiler implements AutoCloseable {
    /** After this many evaluations a new compiler is quicker. */
    private static final int WORN_EVALUATIONS = 4_000;

    private final RecordingExecutionControl recorder = new RecordingExecutionControl();
    private final JShell shell;
    private final DiagnosticTranslator diagnosticTranslator;
    private final List<CompiledEntry> pile = new ArrayList<>();
    private boolean spoilt;
    private int evaluations;

    /** A step on the stack, with JShell's snippets for each statement. */
    private record CompiledEntry(CompiledStep step, List<List<Snippet>> parts) {}

    /**
     * Creates a compiler.
     *
     * @throws IllegalArgumentException if an import is invalid
     */
    public StepCompiler(List<Path> classPath, List<String> imports) {
        String joined =
                classPath.stream()
                        .map(Path::toString)
                        .collect(Collectors.joining(File.pathSeparator));
        shell =
                JShell.builder()
                        .executionEngine(recorder, Map.of())
                        .compilerOptions("-proc:none", "-classpath", joined)
                        .build();
        diagnosticTranslator = new DiagnosticTranslator(shell);
        for (String line : imports) {
            for (SnippetEvent event : shell.eval(line)) {
                if (event.status() != Snippet.Status.VALID) {
                    throw new IllegalArgumentException(
                            "\"%s\" can't be imported; is it on the class path?".formatted(line));
                }
            }
        }
    }

    /** The steps on the stack, lowest first. */
    public List<CompiledStep> steps() {
        return pile.stream().map(CompiledEntry::step).toList();
    }

    /**
     * Compiles a snippet after the steps on the stack and pushes it.
     *
     * @param stopped polled; true to give up
     * @throws CompilationFailedException if it doesn't compile; then the stack is unchanged
     * @throws CancellationException if cancelled
     */
    public CompiledStep compile(String text, BooleanSupplier stopped)
            throws CompilationFailedException {
        SnippetLimits.check(text);
        diagnosticTranslator.refuseOddText(text);
        List<CompiledStatement> statements = new ArrayList<>();
        List<List<Snippet>> parts = new ArrayList<>();
        List<CompileProblem> refused = new ArrayList<>();
        OrderCompleter book = new OrderCompleter(recorder, steps());
        try {
            StatementSplitter pieces = new StatementSplitter(shell.sourceCodeAnalysis(), text);
            for (Optional<StatementSource> next = pieces.next();
                    next.isPresent();
                    next = pieces.next()) {
                if (stopped.getAsBoolean()) {
                    throw new CancellationException("given up");
                }
                StatementSource piece = next.get();
                List<Snippet> own = evaluate(piece.source());
                parts.add(own);
                for (Snippet part : own) {
                    if (shell.status(part) == Snippet.Status.REJECTED) {
                        throw new CompilationFailedException(
                                diagnosticTranslator.complaints(text, piece, part));
                    }
                }
                CompiledStatement statement = book.statement(piece, own);
                statements.add(statement);
                refused.addAll(refused(text, statement));
            }
            refuseUnresolved(text, statements, parts);
        } catch (CompilationFailedException | CancellationException e) {
            remove(parts);
            throw e;
        }
        CompiledStep step = CompiledStep.of(text, statements, refused, steps());
        pile.add(new CompiledEntry(step, parts));
        return step;
    }

    private List<CompileProblem> refused(String text, CompiledStatement statement) {
        return statement.orders().stream()
                .flatMap(order -> order.definition().stream())
                .flatMap(code -> NameCheck.refused(code, recorder::known).stream())
                .distinct()
                .map(name -> DiagnosticTranslator.refused(text, statement.start(), name))
                .toList();
    }

    private List<Snippet> evaluate(String source) {
        evaluations++;
        return shell.eval(source).stream()
                .filter(event -> event.causeSnippet() == null)
                .map(SnippetEvent::snippet)
                .collect(Collectors.toCollection(ArrayList::new));
    }

    private void refuseUnresolved(
            String text, List<CompiledStatement> statements, List<List<Snippet>> parts)
            throws CompilationFailedException {
        for (int i = 0; i < parts.size(); i++) {
            for (Snippet part : parts.get(i)) {
                if (part instanceof DeclarationSnippet declaration
                        && shell.status(part).isActive()) {
                    List<String> missing = shell.unresolvedDependencies(declaration).toList();
                    if (!missing.isEmpty()) {
                        throw new CompilationFailedException(
                                diagnosticTranslator.unresolved(
                                        text, statements.get(i).start(), missing));
                    }
                }
            }
        }
    }

    /**
     * Removes steps from the top.
     *
     * @param count how many steps to keep
     */
    public void rewindTo(int count) {
        while (pile.size() > count) {
            remove(pile.remove(pile.size() - 1).parts());
        }
    }

    private void remove(List<List<Snippet>> parts) {
        List<Snippet> all = new ArrayList<>();
        parts.forEach(all::addAll);
        Collections.reverse(all);
        Set<String> below = currentParts().map(Snippet::id).collect(Collectors.toSet());
        // JShell 25 gets type names wrong once a declared class is gone
        spoilt |= all.stream().anyMatch(TypeDeclSnippet.class::isInstance);
        for (Snippet part : all) {
            if (!below.contains(part.id()) && shell.status(part).isActive()) {
                shell.drop(part);
            }
        }
        restoreOverwritten();
        recorder.takeOrders();
    }

    /** Declares again the names that a removed step had redeclared. */
    private void restoreOverwritten() {
        OrderCompleter book = new OrderCompleter(recorder, steps());
        Map<String, Snippet> latest = new HashMap<>();
        currentParts().forEach(part -> latest.put(part.id(), part));
        for (CompiledEntry compiledEntry : pile) {
            for (int i = 0; i < compiledEntry.parts().size(); i++) {
                List<Snippet> own = compiledEntry.parts().get(i);
                boolean lost =
                        own.stream()
                                .anyMatch(
                                        part ->
                                                latest.get(part.id()) == part
                                                        && !shell.status(part).isActive());
                if (lost) {
                    recorder.takeOrders();
                    own.clear();
                    own.addAll(evaluate(compiledEntry.step().statements().get(i).text()));
                    spoilt |= !book.agreesWith(recorder.takeOrders());
                }
            }
        }
        spoilt |= currentParts().anyMatch(part -> !sound(part));
    }

    private Stream<Snippet> currentParts() {
        return pile.stream()
                .flatMap(compiledEntry -> compiledEntry.parts().stream())
                .flatMap(List::stream);
    }

    private boolean sound(Snippet part) {
        Snippet.Status status = shell.status(part);
        return status == Snippet.Status.VALID || status == Snippet.Status.OVERWRITTEN;
    }

    /** Code analysis that knows the declarations of these steps. */
    public SourceCodeAnalysis analysis() {
        return shell.sourceCodeAnalysis();
    }

    /** The variables, methods and types that the steps declare. */
    public Set<String> declaredNames() {
        Stream<String> values =
                Stream.concat(
                        shell.variables().map(VarSnippet::name),
                        shell.methods().map(MethodSnippet::name));
        return Stream.concat(values, shell.types().map(TypeDeclSnippet::name))
                .filter(name -> !name.startsWith("$"))
                .collect(Collectors.toSet());
    }

    /**
     * Whether to replace this compiler.
     *
     * @return true if its steps are no longer reliable, or it has become slow
     */
    public boolean worn() {
        return spoilt || evaluations > WORN_EVALUATIONS;
    }

    /**
     * Finds the snippet positions in a stack trace, innermost first.
     *
     * @param trace as the bench's process sent it
     */
    public List<StackPosition> places(List<StackTraceElement> trace) {
        if (trace.stream().noneMatch(frame -> OrderCompleter.isSnippet(frame.getClassName()))) {
            return List.of();
        }
        recorder.throwNext(new UserException("", "", trace.toArray(StackTraceElement[]::new)));
        List<StackPosition> places = new ArrayList<>();
        for (SnippetEvent event : shell.eval(";")) {
            if (event.exception() instanceof EvalException translated) {
                for (StackTraceElement frame : translated.getStackTrace()) {
                    place(frame, places);
                }
            }
            shell.drop(event.snippet());
        }
        recorder.takeOrders();
        return places;
    }

    private void place(StackTraceElement frame, List<StackPosition> places) {
        String file = frame.getFileName();
        if (file == null || !file.startsWith("#")) {
            return;
        }
        for (int step = pile.size() - 1; step >= 0; step--) {
            List<List<Snippet>> parts = pile.get(step).parts();
            for (int i = parts.size() - 1; i >= 0; i--) {
                if (parts.get(i).stream().anyMatch(part -> part.id().equals(file.substring(1)))) {
                    CompiledStep compiled = pile.get(step).step();
                    int start = compiled.statements().get(i).start();
                    int before = LineIndex.lineAt(compiled.text(), start);
                    places.add(new StackPosition(step, before + frame.getLineNumber() - 1));
                    return;
                }
            }
        }
    }

    /**
     * A position in the stack.
     *
     * @param step index of the step, from 0
     * @param line line in its text, from 1
     */
    public record StackPosition(int step, int line) {}

    /** Releases the compiler. */
    @Override
    public void close() {
        shell.close();
    }
}
