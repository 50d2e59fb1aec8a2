package coldwright.batch;

import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Shelf;
import coldwright.words.Phrase;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Dextrose and glucose, as cooks say them. Both names mean the anhydrous sugar in a file. Shop
 * dextrose is mostly the monohydrate, and {@code glucose} may also mean the syrup.
 */
public final class Dextrose {
    private static final String GLUCOSE = "glucose";
    private static final String DEXTROSE = "dextrose";

    private Dextrose() {}

    /** The shelf's ingredient, called dextrose where that was typed. */
    static Ingredient find(String typed) {
        Ingredient found = Shelf.find(typed);
        return typed.toLowerCase(Locale.ROOT).contains(DEXTROSE) && found.equals(Shelf.GLUCOSE)
                ? found.called(DEXTROSE)
                : found;
    }

    /** Whether two ingredients are the same, by whichever name. */
    static boolean same(Ingredient one, Ingredient other) {
        return one.equals(other) || isAnhydrous(one) && isAnhydrous(other);
    }

    private static boolean isAnhydrous(Ingredient one) {
        return one.composition().equals(Shelf.GLUCOSE.composition());
    }

    /**
     * Which of the two a name means.
     *
     * @param typed as typed
     * @return a sentence; empty for any other name
     */
    public static Optional<Phrase> note(String typed) {
        String name = typed.strip().toLowerCase(Locale.ROOT);
        return List.of(GLUCOSE, DEXTROSE).contains(name)
                ? Optional.of(Phrase.of("batch", "dextrose." + name))
                : Optional.empty();
    }

    /** The names that a cook may have meant by an unclear one; empty if it is clear. */
    public static List<String> choices(String typed) {
        return switch (typed.strip().toLowerCase(Locale.ROOT)) {
            case GLUCOSE -> List.of(DEXTROSE, Shelf.GLUCOSE_SYRUP.phrase().shown());
            case DEXTROSE -> List.of(Shelf.DEXTROSE_MONOHYDRATE.phrase().shown());
            default -> List.of();
        };
    }
}
