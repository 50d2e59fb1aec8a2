package coldwright.science.mix;

import coldwright.science.Require;

/**
 * The trade's rules for milk solids not fat, and the effect of their salts on the freezing point.
 *
 * <p>Source of the shares: university mix-calculation problems, which take milk solids not fat as 9
 * % of the skim part, lactose as 54.5 % of them and as 76.5 % of whey solids (after Van Slyke and
 * Bosworth 1915); course notes print 38 % protein, 54 % lactose and 8 % ash.
 */
public final class MilkSolids {
    /** Milk solids not fat in the skim part, as a share. */
    public static final double IN_SKIM_PART = 0.09;

    /** Lactose in milk solids not fat, as a share. */
    public static final double LACTOSE = 0.545;

    /** Ash in milk solids not fat, as a share. */
    public static final double SALTS = 0.08;

    /** Protein in milk solids not fat: the rest. */
    public static final double PROTEIN = 1 - LACTOSE - SALTS;

    /** Lactose in whey solids, as a share. */
    public static final double WHEY_LACTOSE = 0.765;

    /** Protein in whey solids, as a share: 12.93 of 95.74 in USDA SR24 01115. */
    public static final double WHEY_PROTEIN = 0.135;

    /** Ash in whey solids: the rest. */
    public static final double WHEY_SALTS = 1 - WHEY_LACTOSE - WHEY_PROTEIN;

    /**
     * Dissolved particles other than lactose in a gram of milk solids not fat, or of whey solids,
     * mmol.
     *
     * <p>From Leighton 1927 (J. Dairy Sci. 10:300): in average milk with 8.99 % solids not fat and
     * 87.11 % water the salts lower the freezing point by 0.244 °C. Divided by 1.86 °C·kg/mol this
     * is 131 mmol per kg of water, or 1.27 mmol per gram. They are counted as ideal. Leighton's
     * base is milk; the trade uses it for whey too.
     */
    public static final double IONS_MMOL_PER_G = 0.244 / 1.86 * 87.11 / 8.99;

    private static final Require.Range FAT = new Require.Range(0, 100, "%");

    private MilkSolids() {}

    /**
     * {@return dissolved particles of milk salts or ash named as such, as if inside milk solids not
     * fat, mmol}
     */
    static double ionsMmol(double saltsG) {
        return IONS_MMOL_PER_G / SALTS * saltsG;
    }

    /**
     * Milk solids not fat of milk, cream or butter by the serum rule.
     *
     * @param fatPercent fat, % by mass, 0 to 100
     * @return milk solids not fat, % by mass
     */
    public static double bySerumRulePercent(double fatPercent) {
        return IN_SKIM_PART * (100 - Require.within("fatPercent", fatPercent, FAT));
    }

    /** Adds milk solids not fat, split by the rule. */
    static Composition addMilk(Composition to, double percent) {
        return add(
                add(
                                add(to, LACTOSE * percent, Component.LACTOSE),
                                PROTEIN * percent,
                                Component.MILK_PROTEIN)
                        .with(
                                to.per100g(Tally.MILK_SOLIDS_NOT_FAT) + percent,
                                Tally.MILK_SOLIDS_NOT_FAT),
                SALTS * percent,
                Component.MILK_SALTS);
    }

    /** Adds whey solids, split by the rule. */
    static Composition addWhey(Composition to, double percent) {
        return add(
                add(
                                add(to, WHEY_LACTOSE * percent, Component.LACTOSE),
                                WHEY_PROTEIN * percent,
                                Component.MILK_PROTEIN)
                        .with(to.per100g(Tally.WHEY_SOLIDS) + percent, Tally.WHEY_SOLIDS),
                WHEY_SALTS * percent,
                Component.MILK_SALTS);
    }

    static Composition add(Composition to, double percent, Component component) {
        return to.with(to.percent(component) + percent, component);
    }
}
