package coldwright.bench.compile;

import coldwright.text.NearestWord;

import jdk.jshell.JShell;
import jdk.jshell.MethodSnippet;
import jdk.jshell.SourceCodeAnalysis.Suggestion;
import jdk.jshell.TypeDeclSnippet;
import jdk.jshell.VarSnippet;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds the name that a learner probably meant. */
final class SimilarNames {
    private static final int LETTERS_OF_A_MISS = 3;

    /** Cost of a letter in the wrong case; a wrong letter costs 1. */
    private static final double CASE = 0.01;

    private final JShell shell;

    SimilarNames(JShell shell) {
        this.shell = shell;
    }

    /**
     * The known name nearest to a name.
     *
     * @param owner the expression before its dot, such as {@code Math}; empty if none
     * @return empty if none is near
     */
    Optional<String> nearestTo(String name, String owner) {
        Set<String> names = new LinkedHashSet<>();
        if (owner.isEmpty()) {
            shell.variables().map(VarSnippet::name).forEach(names::add);
            shell.methods().map(MethodSnippet::name).forEach(names::add);
            shell.types().map(TypeDeclSnippet::name).forEach(names::add);
            names.addAll(suggestions(name.substring(0, 1).toLowerCase(Locale.ROOT)));
            names.addAll(suggestions(name.substring(0, 1).toUpperCase(Locale.ROOT)));
        } else {
            names.addAll(suggestions(owner + "."));
        }
        names.removeIf(one -> one.equals(name) || one.startsWith("$"));
        return names.stream()
                .filter(one -> distance(name, one) <= allowed(name))
                .min(Comparator.comparingDouble(one -> distance(name, one)));
    }

    /** Whether a type of this name is known. */
    boolean isType(String name, String owner) {
        return owner.isEmpty()
                && Character.isUpperCase(name.charAt(0))
                && suggestions(name).contains(name);
    }

    /** The parentheses with which a method is called; empty if there is no such method. */
    Optional<String> parentheses(String name, String owner) {
        return continuations(owner + ".").stream()
                .filter(one -> one.startsWith(name + "("))
                .map(one -> one.endsWith(")") ? "()" : "(…)")
                .findFirst();
    }

    private Set<String> suggestions(String typed) {
        return continuations(typed).stream()
                .map(one -> one.contains("(") ? one.substring(0, one.indexOf('(')) : one)
                .map(String::strip)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private List<String> continuations(String typed) {
        return shell
                .sourceCodeAnalysis()
                .completionSuggestions(typed, typed.length(), new int[1])
                .stream()
                .map(Suggestion::continuation)
                .toList();
    }

    private static double allowed(String name) {
        return name.length() == 1
                ? 2 * CASE
                : Math.max(1, name.length() / (double) LETTERS_OF_A_MISS);
    }

    /** Edit distance between two names; wrong case counts little. */
    static double distance(String a, String b) {
        double plain = NearestWord.typos(a.toLowerCase(Locale.ROOT), b.toLowerCase(Locale.ROOT));
        return plain + Math.abs(NearestWord.typos(a, b) - plain) * CASE;
    }
}
