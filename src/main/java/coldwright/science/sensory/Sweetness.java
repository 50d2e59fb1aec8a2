package coldwright.science.sensory;

import coldwright.science.Band;
import coldwright.science.Rounded;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Sweetener;
import coldwright.words.Phrase;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The sweetness of a mix.
 *
 * <p>Equation: Σ grams of each sugar × its relative sweetness/100 (additive, common practice).
 *
 * <p>Cold: no figure is given, because the published findings give only the direction. Thin
 * solutions lose sweetness when cooled, at 0.5 mol/L of sucrose and more the loss is negligible (L.
 * M. Bartoshuk et al., Physiol. Behav. 28 (1982) 905, abstract); sucrose, glucose and fructose
 * between 36 and 20 °C lose more, the more dilute they are (B. G. Green and S. P. Frankmann 1987,
 * as quoted by the US National Research Council 1993); at 5 to 12 °C the loss is direct (B. G.
 * Green and D. Nachtigal, Chem. Senses 40 (2015) 391, abstract). See {@link #cold}.
 *
 * <p>Error: ±10 to 30 % by sugar, as the band shows in part. Left out: acid, salt, alcohol, fat,
 * flavour.
 *
 * @param mix the mix
 */
public record Sweetness(Mix mix) {
    /** Sucrose at which cold no longer dulls sweetness, 0.5 mol/L as % by mass (density 1.065). */
    public static final double COLD_PROOF_PERCENT = 16.1;

    /** Sweetness of a mix. */
    public static Sweetness of(Mix mix) {
        return new Sweetness(mix);
    }

    /** {@return sucrose that would be as sweet, in the whole mix, % of the mix by mass} */
    public Band sucroseEquivalentPercent() {
        Band sum = Band.exactly(0);
        for (Part part : parts()) {
            sum = sum.plus(part.sucroseEquivalentPercent());
        }
        return sum;
    }

    /**
     * {@return the strength of the sucrose solution that is as sweet: the same sweetness in the
     * water of the mix, % of that solution by mass}
     */
    public Band percentOfSucroseSolution() {
        double water = mix.waterPercent();
        return sucroseEquivalentPercent().map(sucrose -> strength(sucrose, water));
    }

    /** {@return the sugars of the mix with their sweetness, the sweetest first} */
    public List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        for (Sweetener sweetener : Sweetener.values()) {
            double percent = sweetener.percentOf(mix.composition());
            if (percent > 0) {
                parts.add(new Part(sweetener, sweetener.relativeSweetness().times(percent / 100)));
            }
        }
        parts.sort(Comparator.comparingDouble((Part p) -> -p.sucroseEquivalentPercent().middle()));
        return List.copyOf(parts);
    }

    /** {@return the effect of cold on its sweetness in any language: the direction, a trend} */
    public Phrase cold() {
        double strength = percentOfSucroseSolution().middle();
        return Phrase.of(
                "science.sensory",
                strength >= COLD_PROOF_PERCENT ? "cold.strong" : "cold.thin",
                Rounded.tenth(strength));
    }

    private static double strength(double sucrosePercent, double waterPercent) {
        return sucrosePercent == 0 ? 0 : 100 * sucrosePercent / (sucrosePercent + waterPercent);
    }

    /**
     * The sweetness from one sugar.
     *
     * @param sweetener the sugar
     * @param sucroseEquivalentPercent sucrose that would be as sweet, % of the mix by mass
     */
    public record Part(Sweetener sweetener, Band sucroseEquivalentPercent) {}
}
