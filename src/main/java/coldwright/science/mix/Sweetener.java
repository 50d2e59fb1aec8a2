package coldwright.science.mix;

import coldwright.science.Band;
import coldwright.words.Phrase;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A sweet substance: sweetness by mass, sucrose 100, and what else a cook must know of it.
 *
 * <p>Sweetness. Fructose 170–173, glucose 74–80, maltose 30–33, lactose 15–20, sorbitol 50–60:
 * three published lists, read but their titles not written down, spread as shown (other tests find
 * up to 30 % more or less, fructose down to 110). Erythritol to sucralose: the spread of a review
 * of 2022 (pmc.ncbi.nlm.nih.gov PMC10346066, table 2), of BMC Medicine 9 (2011) 123, table 1, and
 * of a list of the International Food Information Council of 2008. Galactose, trehalose, glycerol,
 * higher saccharides, inulin: from memory; allulose: trade pages. Range: near 10 % in water at room
 * temperature; the ratio changes with strength, cold, acid and other sugars, most of all for
 * intense sweeteners (Y. S. Wee, M. Tan and C. G. Forde, Nutrients 10 (2018) 1632: sixteen curves,
 * all bent).
 *
 * <p>Solubility alone in water at 20 °C: erythritol from a supplier's page, inulin from Handbook of
 * Hydrocolloids, chapter 17 (chains of 10; long ones 1.5 %), the others from memory. Energy:
 * Regulation (EU) 1169/2011, Annex XIV; allulose by the United States' 0.4 kcal/g, from memory.
 * Laxation: T. Oku and M. Nakamura for erythritol, xylitol and lactitol (men and women, abstract),
 * T. Oku and S. Okazaki for trehalose (abstract), a review of 2016 for sorbitol and mannitol (10–20
 * g a day, divided here by 60 kg; PMC5093271), the others from memory.
 */
public enum Sweetener {
    SUCROSE(Component.SUCROSE, 100, 100, 100, 66.7),
    FRUCTOSE(Component.FRUCTOSE, 170, 171.5, 173, 79),
    GLUCOSE(Component.GLUCOSE, 74, 77, 80, 48),
    MALTOSE(Component.MALTOSE, 30, 31.5, 33, 44),
    LACTOSE(Component.LACTOSE, 15, 17.5, 20, 16),
    SORBITOL(Component.SORBITOL, 50, 55, 60, 70, 0.17, 0.33),
    GALACTOSE(Component.GALACTOSE, 50, 60, 65, 40),
    TREHALOSE(Component.TREHALOSE, 38, 43, 48, 41, 0.65, 0.65),
    /** Mixes with water in any proportion. */
    GLYCEROL(Component.GLYCEROL, 50, 60, 75, 100),
    /** The longer the chain, the less sweet. */
    HIGHER_SACCHARIDES(Component.HIGHER_SACCHARIDES, 0, 8, 20, 70),
    ALLULOSE(Component.ALLULOSE, 60, 65, 70, 74, 0.4, 0.4),
    ISOMALTULOSE(Component.ISOMALTULOSE, 40, 45, 50, 29),
    ERYTHRITOL(Component.ERYTHRITOL, 60, 70, 80, 37, 0.46, 0.68),
    XYLITOL(Component.XYLITOL, 95, 100, 105, 63, 0.37, 0.42),
    MALTITOL(Component.MALTITOL, 75, 88, 90, 62, 0.3, 0.3),
    ISOMALT(Component.ISOMALT, 45, 50, 65, 25, 0.3, 0.3),
    LACTITOL(Component.LACTITOL, 30, 35, 40, 57, 0.25, 0.34),
    MANNITOL(Component.MANNITOL, 50, 60, 70, 18, 0.17, 0.33),
    /** Free sugars of a powder are counted beside it. */
    INULIN(Component.INULIN, 0, 3, 10, 15, 0.2, 0.3),
    POLYDEXTROSE(Component.POLYDEXTROSE, 0, 5, 10, 80, 0.8, 0.8),
    /** Bitter from about 0.1 % on, from memory. */
    STEVIOL_GLYCOSIDES(Component.STEVIOL_GLYCOSIDES, 25_000, 30_000, 35_000, 0.5),
    SUCRALOSE(Component.SUCRALOSE, 55_000, 60_000, 75_000, 22),
    /** Sweetness that was stated for an ingredient as a whole. */
    STATED(null, 100, 100, 100, 100);

    private final Component component;
    private final Band relativeSweetness;
    private final double solubilityPercent;
    private final Band laxationGPerKg;

    Sweetener(Component component, double low, double middle, double high, double solubility) {
        this.component = component;
        this.relativeSweetness = new Band(low, middle, high);
        this.solubilityPercent = solubility;
        this.laxationGPerKg = null;
    }

    Sweetener(
            Component component,
            double low,
            double middle,
            double high,
            double solubility,
            double leastLaxation,
            double mostLaxation) {
        this.component = component;
        this.relativeSweetness = new Band(low, middle, high);
        this.solubilityPercent = solubility;
        this.laxationGPerKg =
                new Band(leastLaxation, (leastLaxation + mostLaxation) / 2, mostLaxation);
    }

    /**
     * Its share of a composition.
     *
     * @param composition the composition
     * @return % by mass; for {@link #STATED} grams of sucrose as sweet in 100 g
     */
    public double percentOf(Composition composition) {
        return component == null
                ? composition.per100g(Tally.STATED_SWEETNESS)
                : composition.percent(component);
    }

    /** {@return sweetness by mass, sucrose 100, with the spread of the sources} */
    public Band relativeSweetness() {
        return relativeSweetness;
    }

    /**
     * The most of it that dissolves in water at 20 °C, alone.
     *
     * @return % by mass of the solution, to about a tenth of itself
     */
    public double solubilityPercent() {
        return solubilityPercent;
    }

    /**
     * Energy for a label.
     *
     * @return kcal/g; empty for {@link #STATED}
     */
    public OptionalDouble energyKcalPerG() {
        return switch (this) {
            case STATED -> OptionalDouble.empty();
            case ERYTHRITOL, STEVIOL_GLYCOSIDES, SUCRALOSE -> OptionalDouble.of(0);
            case ALLULOSE -> OptionalDouble.of(0.4);
            case INULIN, POLYDEXTROSE -> OptionalDouble.of(2);
            default -> OptionalDouble.of(component.kind() == Component.Kind.POLYOL ? 2.4 : 4);
        };
    }

    /**
     * The dose at once from which it may act as a laxative.
     *
     * @return g per kg of body mass, adults; empty if none is known
     */
    public Optional<Band> laxationGPerKg() {
        return Optional.ofNullable(laxationGPerKg);
    }

    /** {@return the note on each sweetener that makes up a hundredth of a mix} */
    public static List<Phrase> laxationNotes(Mix mix) {
        return Arrays.stream(values())
                .filter(one -> one.percentOf(mix.composition()) >= 1)
                .flatMap(one -> one.laxationNote().stream())
                .toList();
    }

    /**
     * A note for whoever serves it.
     *
     * @return the phrase; empty if no such dose is known
     */
    public Optional<Phrase> laxationNote() {
        return laxationGPerKg()
                .map(
                        dose ->
                                Phrase.of(
                                        "science.mix",
                                        "laxation",
                                        Phrase.named(
                                                "science.freezing", "solute", component.words()),
                                        60 * dose.low(),
                                        dose.low()));
    }

    /** Grams of sucrose as sweet as 100 g, by the middle of the published spread. */
    static double podOf100g(Composition composition) {
        double sucroseG = 0;
        for (Sweetener sweetener : values()) {
            sucroseG +=
                    sweetener.percentOf(composition) * sweetener.relativeSweetness.middle() / 100;
        }
        return sucroseG;
    }
}
