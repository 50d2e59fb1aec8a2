package coldwright.help;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** What may stand at the caret, in the order in which a learner wants it, each with its help. */
public final class Suggestions {
    private static final Pattern FAULT_TYPE = Pattern.compile("[A-Z]\\w*(?:Error|Exception)");

    /** Parts of the program that snippets see but no lesson needs. */
    private static final Pattern BEHIND_THE_SCENES =
            Pattern.compile("\\w*Codec|Wire|Page|readBy|Require|MethodHandles?");

    private static final Set<Entry.Kind> TYPES =
            Set.of(Entry.Kind.TYPE, Entry.Kind.RECORD, Entry.Kind.INTERFACE, Entry.Kind.ENUM);

    private Suggestions() {}

    /**
     * A name that is valid at the caret, as whoever knows the language proposes it.
     *
     * @param name the name
     * @param insert the name with the brackets of a call, if it is one
     * @param from where the text begins that it takes the place of
     * @param receiver the type of what stands before the point; empty if there is no point
     * @param fits whether its kind is the one needed there
     * @param own whether the learner declared it
     */
    public record Offer(
            String name, String insert, int from, String receiver, boolean fits, boolean own) {}

    /**
     * Puts offers in order: the learner's own names, then those of the trade, then what else Java
     * has; in each group those that fit come first.
     *
     * @param offers in any order; of those with the same name one is kept
     * @param index the help
     * @return the suggestions
     */
    public static List<Suggestion> of(List<Offer> offers, HelpIndex index) {
        Map<String, Offer> byName = new LinkedHashMap<>();
        for (Offer offer : offers) {
            byName.merge(offer.name(), offer, (one, other) -> one.fits() ? one : other);
        }
        return byName.values().stream()
                .filter(offer -> offer.own() || isForLearners(offer, index))
                .sorted(
                        Comparator.<Offer>comparingInt(offer -> rank(offer, index))
                                .thenComparing(offer -> !offer.fits())
                                .thenComparing(Offer::name, String.CASE_INSENSITIVE_ORDER)
                                .thenComparing(Offer::name))
                .map(offer -> suggestion(offer, entries(offer, index)))
                .toList();
    }

    private static boolean isForLearners(Offer offer, HelpIndex index) {
        return !BEHIND_THE_SCENES.matcher(offer.name()).matches()
                && (!FAULT_TYPE.matcher(offer.name()).matches()
                        || !entries(offer, index).isEmpty());
    }

    private static int rank(Offer offer, HelpIndex index) {
        if (offer.own()) {
            return 0;
        }
        List<Entry> entries = entries(offer, index);
        if (entries.isEmpty()) {
            return 3;
        }
        return entries.get(0).kind() == Entry.Kind.JAVA ? 2 : 1;
    }

    private static List<Entry> entries(Offer offer, HelpIndex index) {
        if (offer.own()) {
            return List.of();
        }
        return offer.receiver().isEmpty()
                ? index.alone(offer.name())
                : index.of(offer.receiver(), offer.name());
    }

    private static Suggestion suggestion(Offer offer, List<Entry> entries) {
        if (entries.isEmpty()) {
            String label = offer.insert().endsWith("(") ? offer.name() + "(…)" : offer.insert();
            String help = offer.own() ? "declared in a snippet" : "";
            return new Suggestion(label, offer.insert(), offer.from(), help, Optional.empty());
        }
        Entry first = entries.get(0);
        boolean several = entries.size() > 1;
        String help =
                several
                        ? "%s (%d ways to write it)".formatted(first.sentence(), entries.size())
                        : first.sentence();
        return new Suggestion(
                TYPES.contains(first.kind()) ? first.name() : first.signature(),
                offer.insert(),
                offer.from(),
                help.strip(),
                Optional.of(first));
    }
}
