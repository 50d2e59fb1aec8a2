package coldwright.science.standards;

import java.util.List;

/**
 * Whether a mix may bear a name under one rule.
 *
 * @param place where the rule holds, such as {@code United States}
 * @param name the name asked for, such as {@code ice cream}
 * @param allowed whether all that is checked here is met
 * @param shortfalls what is missing, each with the figure and the limit; empty if allowed
 * @param rule the rule, by number or title
 * @param reminder {@code check your local rules}
 */
public record NameVerdict(
        String place,
        String name,
        boolean allowed,
        List<String> shortfalls,
        String rule,
        String reminder) {

    /** Copies the list. */
    public NameVerdict {
        shortfalls = List.copyOf(shortfalls);
    }

    static NameVerdict of(String place, String name, List<String> shortfalls, String rule) {
        return new NameVerdict(
                place, name, shortfalls.isEmpty(), shortfalls, rule, LocalRules.REMINDER);
    }

    /**
     * The verdict as a sentence.
     *
     * @return with the reasons and the reminder
     */
    public String sentence() {
        return "%s: %s be called %s (%s)%s; %s"
                .formatted(
                        place,
                        allowed ? "may" : "may not",
                        name,
                        rule,
                        allowed ? "" : ": " + String.join(", ", shortfalls),
                        reminder);
    }
}
