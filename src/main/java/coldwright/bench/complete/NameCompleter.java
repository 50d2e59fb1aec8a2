package coldwright.bench.complete;

import coldwright.bench.compile.CompilationFailedException;
import coldwright.bench.compile.StepCompiler;
import coldwright.source.JavaSource;
import coldwright.source.JavaToken;

import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Completeness;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import jdk.jshell.SourceCodeAnalysis.Suggestion;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import javax.lang.model.SourceVersion;

/**
 * Finds the valid names at a caret. Compiles the snippets above and the complete statements before
 * the caret, with its own compiler, so that runs needn't recompile because of it. Compiled snippets
 * are kept for the next request. Runs nothing. Not thread-safe.
 */
public final class NameCompleter implements AutoCloseable {
    /** Members of every object or enum that no learner needs. */
    private static final Set<String> HIDDEN =
            Set.of(
                    ("getClass hashCode equals notify notifyAll wait clone finalize"
                                    + " class getDeclaringClass describeConstable compareTo ordinal"
                                    + " valueOf EnumDesc this super")
                            .split(" "));

    private static final Pattern TYPED = Pattern.compile("[\\p{L}_$][\\p{L}\\p{N}_$]*$");
    private static final Pattern PLAIN_NAME = Pattern.compile("\\p{Ll}[\\p{L}\\p{N}]*");

    /** The head of an unfinished condition; without it Java finds the names better. */
    private static final Pattern CONDITION =
            Pattern.compile("^(?:else\\s+)?(?:if|while|switch)\\s*\\(");

    private final Supplier<StepCompiler> compilers;
    private StepCompiler compiler;
    private final List<CompiledLayer> layers = new ArrayList<>();

    /** A text compiled after those before it; its step is missing if it doesn't compile. */
    private record CompiledLayer(String text, boolean compiled) {}

    /**
     * Creates a completer.
     *
     * @param compilers creates a compiler for this completer; called again when one is worn
     */
    public NameCompleter(Supplier<StepCompiler> compilers) {
        this.compilers = compilers;
    }

    /**
     * Finds the valid names at a caret.
     *
     * @param above the snippets above, in order
     * @param text the snippet
     * @param caret position in it, 0 to its length; the text after it is ignored
     * @param stopped polled; true to give up
     * @return empty if a snippet above doesn't compile, and in comments and strings
     * @throws CancellationException if cancelled
     * @throws IllegalArgumentException if the compiler's imports are wrong
     */
    public List<CompletionProposal> complete(
            List<String> above, String text, int caret, BooleanSupplier stopped) {
        String head = text.substring(0, caret);
        JavaToken typed = JavaSource.of(head + "x").at(caret).orElseThrow();
        if (typed.isComment() || typed.isQuoted()) {
            return List.of();
        }
        freshen();
        List<String> below = new ArrayList<>(above);
        String rest = takeWhole(head, below);
        for (Optional<EnclosingBlock> block = EnclosingBlock.of(rest);
                block.isPresent();
                block = EnclosingBlock.of(rest)) {
            below.addAll(block.get().declarations());
            rest = takeWhole(block.get().body(), below);
        }
        if (!stack(below, above.size(), stopped)) {
            return List.of();
        }
        Matcher condition = CONDITION.matcher(rest);
        return at(condition.find() ? rest.substring(condition.end()).stripLeading() : rest, caret);
    }

    /** Takes the complete statements from a text's beginning and returns the rest. */
    private String takeWhole(String text, List<String> whole) {
        String rest = text.stripLeading();
        while (!JavaSource.of(rest).code().isEmpty()) {
            CompletionInfo info = compiler.analysis().analyzeCompletion(rest);
            if (info.completeness() != Completeness.COMPLETE || !isEnded(info.source())) {
                break;
            }
            whole.add(info.source());
            rest = info.remaining().stripLeading();
        }
        return rest;
    }

    /** Whether no more letters can belong to the statement. */
    private static boolean isEnded(String statement) {
        JavaSource source = JavaSource.of(statement);
        List<JavaToken> code = source.code();
        JavaToken last = code.get(code.size() - 1);
        return source.is(last, ";") || source.is(last, "}");
    }

    private void freshen() {
        if (compiler != null && compiler.worn()) {
            close();
        }
        if (compiler == null) {
            compiler = compilers.get();
        }
    }

    private boolean stack(List<String> texts, int needed, BooleanSupplier stopped) {
        int same = 0;
        while (same < Math.min(texts.size(), layers.size())
                && layers.get(same).text().equals(texts.get(same))) {
            same++;
        }
        if (!neededStand(Math.min(same, needed))) {
            return false;
        }
        layers.subList(same, layers.size()).clear();
        compiler.rewindTo((int) layers.stream().filter(CompiledLayer::compiled).count());
        freshen();
        for (String text : texts.subList(layers.size(), texts.size())) {
            layers.add(new CompiledLayer(text, compiles(text, stopped)));
            if (layers.size() == needed && !neededStand(needed)) {
                return false;
            }
        }
        return neededStand(needed);
    }

    private boolean neededStand(int needed) {
        return layers.stream().limit(needed).allMatch(CompiledLayer::compiled);
    }

    private boolean compiles(String text, BooleanSupplier stopped) {
        try {
            compiler.compile(text, stopped);
            return true;
        } catch (CompilationFailedException e) {
            return false;
        }
    }

    private List<CompletionProposal> at(String rest, int caret) {
        Map<String, CompletionProposal> proposals = new LinkedHashMap<>();
        propose(rest, caret, false, proposals);
        UnfinishedLambda.withoutOpenCalls(rest)
                .ifPresent(one -> propose(one, caret, false, proposals));
        String typed = rest.substring(rest.length() - typedLetters(rest));
        String before = rest.substring(0, rest.length() - typed.length());
        if (ReceiverType.expression(before).isEmpty()) {
            UnfinishedLambda.parameters(before).stream()
                    .filter(name -> name.startsWith(typed))
                    .map(
                            name ->
                                    new CompletionProposal(
                                            name, name, caret - typed.length(), "", false, true))
                    .forEach(one -> proposals.putIfAbsent(one.insert(), one));
        }
        ReceiverType.referredType(before)
                .ifPresent(
                        type ->
                                propose(
                                        "((%s) null).%s".formatted(type, typed),
                                        caret,
                                        true,
                                        proposals));
        return List.copyOf(proposals.values());
    }

    private static int typedLetters(String text) {
        Matcher typed = TYPED.matcher(text);
        return typed.find() ? typed.group().length() : 0;
    }

    /** Adds Java's proposals, unless the name is already there. */
    private void propose(
            String rest, int caret, boolean reference, Map<String, CompletionProposal> proposals) {
        SourceCodeAnalysis analysis = compiler.analysis();
        int[] anchor = {rest.length()};
        List<Suggestion> all = analysis.completionSuggestions(rest, rest.length(), anchor);
        int from = caret - (rest.length() - anchor[0]);
        String before = rest.substring(0, anchor[0]);
        boolean alone = ReceiverType.expression(before).isEmpty();
        Set<String> declared = compiler.declaredNames();
        String receiver = null;
        for (Suggestion one : all) {
            String written = one.continuation().strip();
            int bracket = written.indexOf('(');
            String name = bracket < 0 ? written : written.substring(0, bracket);
            String insert = reference ? name : written;
            if (isHidden(name, written) || name.endsWith(".") || name.contains("$")) {
                continue;
            }
            if (receiver == null) {
                receiver = new ReceiverType(analysis).type(before, written);
            }
            boolean own = alone && (declared.contains(name) || isLocal(name, written, before));
            CompletionProposal completionProposal =
                    new CompletionProposal(name, insert, from, receiver, one.matchesType(), own);
            proposals.merge(
                    insert, completionProposal, (first, second) -> first.fits() ? first : second);
        }
    }

    /**
     * Members of every object, except static methods that a class defines itself, as {@code Arrays}
     * does.
     */
    private static boolean isHidden(String name, String written) {
        return HIDDEN.contains(name) || written.equals("toString()");
    }

    /** Whether the statement itself declares the name, as a parameter or local variable. */
    private static boolean isLocal(String name, String insert, String before) {
        return name.equals(insert)
                && PLAIN_NAME.matcher(name).matches()
                && !SourceVersion.isKeyword(name)
                && JavaSource.of(before).namesValue(name);
    }

    @Override
    public void close() {
        if (compiler != null) {
            compiler.close();
            compiler = null;
            layers.clear();
        }
    }
}
