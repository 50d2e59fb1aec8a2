package coldwright.recipe;

import coldwright.science.mix.Ingredient;
import coldwright.words.Phrase;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a line of a recipe was understood as.
 *
 * @param text the line as written
 * @param amount its quantity as written; empty if there is none
 * @param name its ingredient as written
 * @param state whether it was understood
 * @param parts what it adds to the mix if it was understood: one part, or two for the juice and the
 *     zest of a fruit
 * @param why what is to be decided, or why it can't be read; empty if it was understood
 * @param choices readings to choose from; empty unless there is something to decide
 * @param suggestions ingredients of a similar name, where its name is unknown
 */
public record LineReading(
        String text,
        String amount,
        String name,
        State state,
        List<Part> parts,
        Optional<Phrase> why,
        List<Choice> choices,
        List<Ingredient> suggestions) {
    /** Whether a line was understood. */
    public enum State {
        UNDERSTOOD,
        /** It may mean two things: a person must choose. */
        ASK,
        /** Its ingredient is unknown, or nobody knows what its amount weighs. */
        UNKNOWN,
        /** No ingredient: a heading or nothing. */
        OTHER
    }

    /**
     * An amount of one ingredient.
     *
     * @param ingredient the ingredient
     * @param massG mass, g, zero or more
     * @param how how the mass follows from what was written, such as {@code 2 × 18 g}
     * @param source source of the household measure or the density; empty for a weight
     */
    public record Part(Ingredient ingredient, double massG, Phrase how, String source) {
        /** The source in the language shown, as far as it is a common one. */
        public String sourceShown() {
            return Stream.of(source.split("; "))
                    .map(one -> Phrase.named("recipe", "source", one).shown())
                    .collect(Collectors.joining("; "));
        }
    }

    /**
     * One of the readings to choose from.
     *
     * @param label what a person would read on its button
     * @param parts what it adds to the mix; empty to leave the line out
     */
    public record Choice(Phrase label, List<Part> parts) {
        public Choice {
            parts = List.copyOf(parts);
        }
    }

    public LineReading {
        parts = List.copyOf(parts);
        choices = List.copyOf(choices);
        suggestions = List.copyOf(suggestions);
    }

    static LineReading other(String text) {
        return new LineReading(
                text, "", "", State.OTHER, List.of(), Optional.empty(), List.of(), List.of());
    }

    static LineReading understood(String text, String amount, String name, List<Part> parts) {
        return new LineReading(
                text,
                amount,
                name,
                State.UNDERSTOOD,
                parts,
                Optional.empty(),
                List.of(),
                List.of());
    }

    static LineReading ask(
            String text, String amount, String name, Phrase why, List<Choice> choices) {
        return new LineReading(
                text, amount, name, State.ASK, List.of(), Optional.of(why), choices, List.of());
    }

    static LineReading unknown(
            String text, String amount, String name, Phrase why, List<Ingredient> suggestions) {
        return new LineReading(
                text,
                amount,
                name,
                State.UNKNOWN,
                List.of(),
                Optional.of(why),
                List.of(),
                suggestions);
    }

    /** The mass of all parts, g. */
    public double massG() {
        return parts.stream().mapToDouble(Part::massG).sum();
    }
}
