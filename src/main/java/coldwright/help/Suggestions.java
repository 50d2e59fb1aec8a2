package coldwright.help;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Completions at the caret with their help, those most useful to a learner first. */
public final class Suggestions {
    private static final Pattern FAULT_TYPE = Pattern.compile("[A-Z]\\w*(?:Error|Exception)");

    /** Parts of the program that snippets can see but no lesson needs. */
    private static final Pattern BEHIND_THE_SCENES =
            Pattern.compile("\\w*Codec|Wire|Page|readBy|Require|MethodHandles?");

    private static final Set<HelpEntry.Kind> TYPES =
            Set.of(
                    HelpEntry.Kind.TYPE,
                    HelpEntry.Kind.RECORD,
                    HelpEntry.Kind.INTERFACE,
                    HelpEntry.Kind.ENUM);

    private Suggestions() {}

    /**
     * A valid name at the caret, as the compiler proposes it.
     *
     * @param name the name
     * @param insert the name with the brackets of a call, if it is one
     * @param from start of the text that it replaces
     * @param receiver the type of the expression before the dot; empty if there is no dot
     * @param fits whether its type matches the expected one
     * @param own whether the learner declared it
     */
    public record Candidate(
            String name, String insert, int from, String receiver, boolean fits, boolean own) {}

    /**
     * Sorts proposals: the learner's own names, then the calculator's, then the rest of Java; in
     * each group those that fit come first.
     *
     * @param offers in any order; duplicates by name are dropped
     * @param index the help
     */
    public static List<Suggestion> of(List<Candidate> offers, HelpIndex index) {
        Map<String, Candidate> byName = new LinkedHashMap<>();
        for (Candidate candidate : offers) {
            byName.merge(candidate.name(), candidate, (one, other) -> one.fits() ? one : other);
        }
        return byName.values().stream()
                .filter(candidate -> candidate.own() || isForLearners(candidate, index))
                .sorted(
                        Comparator.<Candidate>comparingInt(candidate -> rank(candidate, index))
                                .thenComparing(candidate -> !candidate.fits())
                                .thenComparing(Candidate::name, String.CASE_INSENSITIVE_ORDER)
                                .thenComparing(Candidate::name))
                .map(candidate -> suggestion(candidate, entries(candidate, index)))
                .toList();
    }

    private static boolean isForLearners(Candidate candidate, HelpIndex index) {
        return !BEHIND_THE_SCENES.matcher(candidate.name()).matches()
                && (!FAULT_TYPE.matcher(candidate.name()).matches()
                        || !entries(candidate, index).isEmpty());
    }

    private static int rank(Candidate candidate, HelpIndex index) {
        if (candidate.own()) {
            return 0;
        }
        List<HelpEntry> entries = entries(candidate, index);
        if (entries.isEmpty()) {
            return 3;
        }
        return entries.get(0).kind() == HelpEntry.Kind.JAVA ? 2 : 1;
    }

    private static List<HelpEntry> entries(Candidate candidate, HelpIndex index) {
        if (candidate.own()) {
            return List.of();
        }
        return candidate.receiver().isEmpty()
                ? index.alone(candidate.name())
                : index.of(candidate.receiver(), candidate.name());
    }

    private static Suggestion suggestion(Candidate candidate, List<HelpEntry> entries) {
        if (entries.isEmpty()) {
            String label =
                    candidate.insert().endsWith("(")
                            ? candidate.name() + "(…)"
                            : candidate.insert();
            String help = candidate.own() ? "declared in a snippet" : "";
            return new Suggestion(
                    label, candidate.insert(), candidate.from(), help, Optional.empty());
        }
        HelpEntry first = entries.get(0);
        boolean several = entries.size() > 1;
        String help =
                several
                        ? "%s (%d ways to write it)".formatted(first.sentence(), entries.size())
                        : first.sentence();
        return new Suggestion(
                TYPES.contains(first.kind()) ? first.name() : first.signature(),
                candidate.insert(),
                candidate.from(),
                help.strip(),
                Optional.of(first));
    }
}
