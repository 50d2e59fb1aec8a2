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
 * Finds the names that may stand at a caret. Compiles the snippets above and the whole statements
 * before the caret, with a compiler of its own, so that no run has to compile anew because somebody
 * looked for a name; what stands already is kept for the next time. Runs nothing. Not for several
 * threads at once.
 */
public final class NameCompleter implements AutoCloseable {
    /** What every object has, or every choice of an enum, and no learner needs. */
    private static final Set<String> HIDDEN =
            Set.of(
                    ("getClass hashCode equals notify notifyAll wait clone finalize"
                                    + " class getDeclaringClass describeConstable compareTo ordinal"
                                    + " valueOf EnumDesc this super")
                            .split(" "));

    private static final Pattern TYPED = Pattern.compile("[\\p{L}_$][\\p{L}\\p{N}_$]*$");
    private static final Pattern PLAIN_NAME = Pattern.compile("\\p{Ll}[\\p{L}\\p{N}]*");

    /**
     * The head of a condition that is still being written; without it Java sees the names better.
     */
    private static final Pattern CONDITION =
            Pattern.compile("^(?:else\\s+)?(?:if|while|switch)\\s*\\(");

    private final Supplier<StepCompiler> compilers;
    private StepCompiler compiler;
    private final List<CompiledLayer> layers = new ArrayList<>();

    /**
     * A text that was compiled on top of those before it; one that does not compile has no step.
     */
    private record CompiledLayer(String text, boolean compiled) {}

    /**
     * Prepares to complete.
     *
     * @param compilers makes a compiler for this alone; asked for another when one is worn
     */
    public NameCompleter(Supplier<StepCompiler> compilers) {
        this.compilers = compilers;
    }

    /**
     * Finds the names.
     *
     * @param above the snippets above, in order
     * @param text the snippet
     * @param caret where the caret stands in it, 0 to its length; what follows it is not looked at
     * @param stopped asked now and then whether to give up
     * @return the names; empty if a snippet above does not compile, and in remarks and texts
     * @throws CancellationException if it was given up
     * @throws IllegalArgumentException if the compiler's imports are wrong
     */
    public List<CompletionProposal> complete(
            List<String> above, String text, int caret, BooleanSupplier stopped) {
        String head = text.substring(0, caret);
        JavaToken typed = JavaSource.of(head + "x").at(caret).orElseThrow();
        if (typed.isComment() || typed.isQuoted() || text.length() > StepCompiler.MOST_CHARACTERS) {
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

    /** Takes the whole statements from a text's beginning, and leaves what comes after them. */
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

    /** Whether no more letters can belong to it. */
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

    /** Adds what Java has to say, where nothing was said of the same name before. */
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

    /** What every object has; what a type makes of others, as {@code Arrays} does, is of use. */
    private static boolean isHidden(String name, String written) {
        return HIDDEN.contains(name) || written.equals("toString()");
    }

    /** Whether the statement itself declares the name: a parameter, or a variable of a method. */
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
