package coldwright.bench.compile;

import coldwright.text.Nearest;

import jdk.jshell.JShell;
import jdk.jshell.MethodSnippet;
import jdk.jshell.SourceCodeAnalysis.Suggestion;
import jdk.jshell.TypeDeclSnippet;
import jdk.jshell.VarSnippet;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Finds the name that a learner probably meant. */
final class NearNames {
    private static final int LETTERS_OF_A_MISS = 3;

    /** What a letter in the wrong case counts, beside a wrong letter. */
    private static final double CASE = 0.01;

    private final JShell shell;

    NearNames(JShell shell) {
        this.shell = shell;
    }

    /**
     * The nearest name that is known.
     *
     * @param name what was written
     * @param owner what stands before its point, such as {@code Math}; empty if nothing
     * @return the nearest, if any is near
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

    private Set<String> suggestions(String typed) {
        Set<String> names = new LinkedHashSet<>();
        int[] anchor = new int[1];
        for (Suggestion one :
                shell.sourceCodeAnalysis().completionSuggestions(typed, typed.length(), anchor)) {
            String text = one.continuation();
            int end = text.indexOf('(');
            names.add(end < 0 ? text.strip() : text.substring(0, end).strip());
        }
        return names;
    }

    private static double allowed(String name) {
        return Math.max(1, name.length() / (double) LETTERS_OF_A_MISS);
    }

    /** Slips between two names; case alone counts little. */
    static double distance(String a, String b) {
        double plain = Nearest.slips(a.toLowerCase(Locale.ROOT), b.toLowerCase(Locale.ROOT));
        return plain + Math.abs(Nearest.slips(a, b) - plain) * CASE;
    }
}
