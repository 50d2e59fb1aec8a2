package coldwright.help;

import coldwright.bench.complete.CompletionProposal;
import coldwright.words.Words;

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
     * Sorts proposals: the learner's own names, then the calculator's, then the rest of Java; in
     * each group those that fit come first.
     *
     * @param offers in any order; duplicates by name are dropped
     * @param index the help
     */
    public static List<Suggestion> of(List<CompletionProposal> offers, HelpIndex index) {
        Map<String, CompletionProposal> byName = new LinkedHashMap<>();
        for (CompletionProposal proposal : offers) {
            byName.merge(proposal.name(), proposal, (one, other) -> one.fits() ? one : other);
        }
        return byName.values().stream()
                .filter(proposal -> proposal.own() || isForLearners(proposal, index))
                .sorted(
                        Comparator.<CompletionProposal>comparingInt(
                                        proposal -> rank(proposal, index))
                                .thenComparing(proposal -> !proposal.fits())
                                .thenComparing(
                                        CompletionProposal::name, String.CASE_INSENSITIVE_ORDER)
                                .thenComparing(CompletionProposal::name))
                .map(proposal -> suggestion(proposal, entries(proposal, index)))
                .toList();
    }

    private static boolean isForLearners(CompletionProposal proposal, HelpIndex index) {
        return !BEHIND_THE_SCENES.matcher(proposal.name()).matches()
                && (!FAULT_TYPE.matcher(proposal.name()).matches()
                        || !entries(proposal, index).isEmpty());
    }

    private static int rank(CompletionProposal proposal, HelpIndex index) {
        if (proposal.own()) {
            return 0;
        }
        List<HelpEntry> entries = entries(proposal, index);
        if (entries.isEmpty()) {
            return 3;
        }
        return entries.get(0).kind() == HelpEntry.Kind.JAVA ? 2 : 1;
    }

    private static List<HelpEntry> entries(CompletionProposal proposal, HelpIndex index) {
        if (proposal.own()) {
            return List.of();
        }
        return proposal.receiver().isEmpty()
                ? index.alone(proposal.name())
                : index.of(proposal.receiver(), proposal.name());
    }

    private static Suggestion suggestion(CompletionProposal proposal, List<HelpEntry> entries) {
        if (entries.isEmpty()) {
            String label =
                    proposal.insert().endsWith("(") ? proposal.name() + "(…)" : proposal.insert();
            String help = proposal.own() ? Words.of("help").shown("own") : "";
            return new Suggestion(
                    label, proposal.insert(), proposal.from(), help, Optional.empty());
        }
        HelpEntry first = entries.get(0);
        boolean several = entries.size() > 1;
        String help =
                several
                        ? Words.of("help").shown("ways", first.sentence(), entries.size())
                        : first.sentence();
        return new Suggestion(
                TYPES.contains(first.kind()) ? first.name() : first.signature(),
                proposal.insert(),
                proposal.from(),
                help.strip(),
                Optional.of(first));
    }
}
