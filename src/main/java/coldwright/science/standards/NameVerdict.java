package coldwright.science.standards;

import coldwright.words.Phrase;

import java.util.List;

/**
 * A verdict on whether a mix may bear a name under one rule.
 *
 * @param place where the rule applies, such as {@code United States}
 * @param name the name to check, such as {@code ice cream}
 * @param missing the missing requirements, each with the figure and the limit; empty if allowed
 * @param rule the rule, by number or title
 */
public record NameVerdict(String place, String name, List<Phrase> missing, Phrase rule) {

    public NameVerdict {
        missing = List.copyOf(missing);
    }

    /** Whether the mix meets all checked requirements. */
    public boolean allowed() {
        return missing.isEmpty();
    }

    /** {@return what is missing in English, each with figure and limit; empty if allowed} */
    public List<String> shortfalls() {
        return Phrase.english(missing);
    }

    /** {@return the name, and where the rule applies, in any language} */
    public Phrase nameAndPlace() {
        return Phrase.of(
                LocalRules.AREA, "name-in", name, Phrase.named(LocalRules.AREA, "place", place));
    }

    /** {@return the verdict in any language, with the reasons and the reminder} */
    public Phrase phrase() {
        return Phrase.of(
                LocalRules.AREA,
                allowed() ? "may" : "may-not",
                Phrase.named(LocalRules.AREA, "place", place),
                name,
                rule,
                LocalRules.REMINDER,
                missing);
    }

    /** {@return the verdict as an English sentence, with the reasons and the reminder} */
    public String sentence() {
        return phrase().english();
    }
}
