package coldwright.print;

import coldwright.science.mix.Amount;

import java.util.Optional;
import java.util.OptionalDouble;

/** Grams as spoons and cups, where these are accurate enough. */
final class SpoonText {
    /** Largest error of a spoon measure, as a share of the mass (judgement). */
    private static final double MOST_OFF = 0.04;

    private static final double MOST_CUPS = 8;

    /** United States customary units, mL. */
    private static final double CUP_ML = 236.588;

    private static final double TABLESPOON_ML = 14.787;
    private static final double TEASPOON_ML = 4.929;
    private static final String[] QUARTERS = {"", "¼", "½", "¾"};

    private SpoonText() {}

    /**
     * An amount in spoons or cups, such as {@code 1¼ cups and 2 tbsp}; empty if the ingredient
     * packs differently each time, or no simple number of spoons is near.
     */
    static Optional<String> of(Amount amount) {
        OptionalDouble density = amount.ingredient().densityKgPerL();
        if (density.isEmpty() || amount.massG() == 0) {
            return Optional.empty();
        }
        double volumeMl = amount.massG() / density.getAsDouble();
        return cups(volumeMl)
                .or(() -> quarters(volumeMl, TABLESPOON_ML, 2, 8))
                .or(() -> quarters(volumeMl, TEASPOON_ML, 1, 8));
    }

    /** Cups in quarters and the rest in tablespoons; four tablespoons are a quarter. */
    private static Optional<String> cups(double volumeMl) {
        long spoons = Math.round(16 * volumeMl / CUP_ML);
        if (spoons < 4 || spoons > 16 * MOST_CUPS || isOff(spoons * CUP_ML / 16, volumeMl)) {
            return Optional.empty();
        }
        long quarters = spoons / 4;
        long rest = spoons % 4;
        String cups = MakeSheetText.word(quarters > 4 ? "cups" : "cup", number(quarters));
        return Optional.of(
                rest == 0
                        ? cups
                        : MakeSheetText.word("and", cups, MakeSheetText.word("tbsp", rest)));
    }

    private static Optional<String> quarters(
            double volumeMl, double spoonMl, int step, int mostWhole) {
        double quarterMl = spoonMl / 4;
        long quarters = step * Math.round(volumeMl / quarterMl / step);
        if (quarters < 1 || quarters > 4L * mostWhole || isOff(quarters * quarterMl, volumeMl)) {
            return Optional.empty();
        }
        return Optional.of(
                MakeSheetText.word(spoonMl == TABLESPOON_ML ? "tbsp" : "tsp", number(quarters)));
    }

    private static boolean isOff(double spoonedMl, double volumeMl) {
        return Math.abs(spoonedMl - volumeMl) > MOST_OFF * volumeMl;
    }

    private static String number(long quarters) {
        long whole = quarters / 4;
        return (whole == 0 ? "" : String.valueOf(whole)) + QUARTERS[(int) (quarters % 4)];
    }
}
