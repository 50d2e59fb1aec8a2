package coldwright.science.style;

import coldwright.science.mix.Component;
import coldwright.science.mix.LactoseSaturation;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Tally;
import coldwright.science.sensory.Sweetness;
import coldwright.words.Worded;

import java.util.function.ToDoubleFunction;

/**
 * A quantity by which a batch is judged. Each has a step: how far beyond the usual range counts as
 * one whole fault (judgement).
 */
public enum StyleQuantity implements Worded {
    /** Fat of every origin, % by mass. */
    FAT(4, Mix::fatPercent),
    /** Milk solids-not-fat, % by mass. */
    MSNF(2, Mix::milkSolidsNotFatPercent),
    /** Total solids, % by mass. */
    SOLIDS(4, Mix::totalSolidsPercent),
    /** Sugars of one and two units, lactose included, % by mass. */
    SUGARS(4, Mix::sugarsPercent),
    /** Sucrose that would be as sweet, % by mass. */
    SWEETNESS(2.5, mix -> Sweetness.of(mix).sucroseEquivalentPercent().middle()),
    /**
     * What stabilises, as far as it acts, in % of gum: gums and gelatine fully; starch and fibre
     * (pectin of fruit) a tenth; cooked yolk solids 6 %; milk protein 4 % (rules of thumb).
     */
    STABILITY(0.1, StyleQuantity::stability),
    /** Gums and gelatine, % by mass. */
    GUM(0.2, mix -> mix.composition().percent(Component.STABILISER)),
    STARCH(1, mix -> mix.composition().percent(Component.STARCH)),
    /** Added salt with potassium and calcium chloride, % by mass. */
    SALT(0.2, StyleQuantity::salts),
    /** Acids, % by mass. */
    ACID(0.4, mix -> mix.composition().percent(Component.Kind.ACID)),
    /** Ethanol, % by mass. */
    ALCOHOL(2, Mix::alcoholPercent),
    /**
     * Milk solids-not-fat above what stays dissolved in storage, by the wider of the two limits
     * that are printed (0.15 of the rest instead of a seventh; see {@link LactoseSaturation}), % by
     * mass; below zero for a safe mix.
     */
    LACTOSE(2, StyleQuantity::lactoseExcess),
    /** Ice at the serving temperature as a spoon meets it, % of the water. */
    ICE(4, null),
    /** Ice in the cold that freezes it, % of the water: half of it when churning stops. */
    ICE_IN_THE_COLD(15, null),
    /** Overrun, %. */
    OVERRUN(25, null),
    /** Mean size of the crystals as they are eaten, µm; 0 if there are none. */
    CRYSTALS(15, null),
    /** Serving temperature, °C. */
    SERVING(3, null);

    private final double step;
    private final ToDoubleFunction<Mix> byMass;

    StyleQuantity(double step, ToDoubleFunction<Mix> byMass) {
        this.step = step;
        this.byMass = byMass;
    }

    /** {@return in the quantity's unit} */
    public double step() {
        return step;
    }

    /**
     * Whether it is a share of the mass, which mixes in proportion.
     *
     * @return true if so
     */
    public boolean isByMass() {
        return byMass != null;
    }

    /**
     * Its value for a mix.
     *
     * @return in its unit
     * @throws IllegalStateException if it isn't {@link #isByMass() by mass}
     */
    public double of(Mix mix) {
        if (byMass == null) {
            throw new IllegalStateException(this + " depends on temperature or method");
        }
        return byMass.applyAsDouble(mix);
    }

    private static double stability(Mix mix) {
        return mix.composition().percent(Component.STABILISER)
                + 0.1 * mix.composition().percent(Component.STARCH)
                + 0.1 * mix.composition().percent(Component.FIBRE)
                + 0.06 * mix.composition().per100g(Tally.YOLK_SOLIDS)
                + 0.04 * mix.composition().percent(Component.MILK_PROTEIN);
    }

    private static double salts(Mix mix) {
        return mix.saltPercent()
                + mix.composition().percent(Component.POTASSIUM_CHLORIDE)
                + mix.composition().percent(Component.CALCIUM_CHLORIDE);
    }

    private static double lactoseExcess(Mix mix) {
        LactoseSaturation limit = mix.lactoseLimit();
        return limit.asMilkSolidsPercent() - 0.15 * 7 * limit.milkSolidsNotFatLimitPercent();
    }
}
