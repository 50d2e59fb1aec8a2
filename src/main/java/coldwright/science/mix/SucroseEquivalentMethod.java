package coldwright.science.mix;

import coldwright.science.LinearTable;
import coldwright.science.Rounded;
import coldwright.science.freezing.Solute;
import coldwright.words.Phrase;

/**
 * The trade's sucrose-equivalent method for the initial freezing point.
 *
 * <p>SE = 0.545·MSNF + 0.765·WS + S + Σ f·(other sweeteners), in % of the mix; SE per water is
 * looked up in a table for sucrose solutions, and the salts of milk add 2.37·(MSNF + WS)/W. Factors
 * f follow the molar mass relative to sucrose: 1.9 for sugars of one unit.
 *
 * <p>Source: Leighton 1927, J. Dairy Sci. 10:300, as taught by university courses. The table
 * (Pickering's measurements, in g of sucrose per 100 g of water) is from memory; it is read
 * linearly between its points. Against newer measurements it is up to 6 % high when dilute and 2 to
 * 3 % low from 45 g on.
 *
 * <p>The trade's formula has no alcohol, salt or acid. To compare the two methods, they are counted
 * here by molar mass and particle number, and shown separately.
 *
 * @param sugarsEquivalentPercent sucrose equivalents of all sugars, % of the mix
 * @param othersEquivalentPercent sucrose equivalents of alcohol, polyols, salt, acids and ions, %
 * @param equivalentPer100gWater all sucrose equivalents, g per 100 g of water
 * @param sucroseTableDepressionC depression read from the table, °C
 * @param milkSaltsDepressionC depression by the salts of milk and whey, °C
 * @param thermodynamicFreezingPointC the freezing point of the same mix from water activity, °C
 */
public record SucroseEquivalentMethod(
        double sugarsEquivalentPercent,
        double othersEquivalentPercent,
        double equivalentPer100gWater,
        double sucroseTableDepressionC,
        double milkSaltsDepressionC,
        double thermodynamicFreezingPointC) {

    private static final double SALTS_C = 2.37;
    private static final double SINGLE_UNIT_SUGARS = 1.9;
    private static final double SUCROSE_G_PER_MOL = Solute.SUCROSE.molarMassGPerMol();

    /** Sucrose, g per 100 g of water, and depression, °C; from memory. */
    private static final LinearTable TABLE =
            new LinearTable(
                    new double[][] {
                        {0, 0},
                        {3, .18},
                        {6, .35},
                        {9, .53},
                        {12, .72},
                        {18, 1.10},
                        {24, 1.47},
                        {30, 1.86},
                        {36, 2.21},
                        {42, 2.60},
                        {48, 2.99},
                        {54, 3.42},
                        {60, 3.85},
                        {66, 4.33},
                        {72, 4.77},
                        {84, 5.77},
                        {96, 6.80},
                        {108, 7.80},
                        {120, 8.92},
                        {135, 10.22},
                        {150, 11.41},
                        {165, 12.67},
                        {180, 13.68}
                    });

    /**
     * Applies the method to a mix.
     *
     * @param mix a mix with water
     * @throws IllegalArgumentException if the mix has no water
     */
    public static SucroseEquivalentMethod of(Mix mix) {
        double thermodynamicC = mix.initialFreezingPointC();
        double sugars = 0;
        double others = 0;
        for (Amount amount : mix.amounts()) {
            double share = amount.massG() / mix.massG();
            sugars += share * sugarsEquivalent(amount.ingredient().composition());
            others += share * othersEquivalent(amount.ingredient().composition());
        }
        double water = mix.waterPercent();
        double per100gWater = 100 * (sugars + others) / water;
        return new SucroseEquivalentMethod(
                sugars,
                others,
                per100gWater,
                TABLE.at(per100gWater),
                SALTS_C * mix.milkSolidsNotFatPercent() / water,
                thermodynamicC);
    }

    /** {@return the trade's initial freezing point, °C, 0 or below} */
    public double initialFreezingPointC() {
        return 0 - sucroseTableDepressionC - milkSaltsDepressionC;
    }

    /**
     * {@return whether the sucrose equivalents are beyond the table, so that its last depression,
     * 13.68 °C, is used and the true one is greater: true beyond 180 g per 100 g of water}
     */
    public boolean beyondTable() {
        return equivalentPer100gWater > TABLE.last();
    }

    /** {@return why the two freezing points differ, in English} */
    public String why() {
        return difference().english();
    }

    /** Why the two differ, in any language. */
    public Phrase difference() {
        double differenceC = initialFreezingPointC() - thermodynamicFreezingPointC;
        boolean others =
                othersEquivalentPercent > 0.2 * (sugarsEquivalentPercent + othersEquivalentPercent);
        return phrase(
                "trade",
                phrase(
                        differenceC < 0 ? "trade.colder" : "trade.warmer",
                        Rounded.hundredth(initialFreezingPointC()),
                        Rounded.hundredth(thermodynamicFreezingPointC),
                        Math.abs(differenceC)),
                others ? phrase("trade.others") : "",
                beyondTable() ? phrase("trade.beyond") : "");
    }

    private static Phrase phrase(String key, Object... values) {
        return Phrase.of("science.mix", key, values);
    }

    /** Milk sugars follow the rule for milk solids, without their products in cultured milk. */
    private static double sugarsEquivalent(Composition c) {
        double milk = c.per100g(Tally.MILK_SOLIDS_NOT_FAT);
        double whey = c.per100g(Tally.WHEY_SOLIDS);
        boolean dairy = milk + whey > 0;
        double lactose =
                dairy
                        ? MilkSolids.LACTOSE * milk + MilkSolids.WHEY_LACTOSE * whey
                        : c.percent(Component.LACTOSE);
        double galactose = dairy ? 0 : c.percent(Component.GALACTOSE);
        return lactose
                + c.percent(Component.SUCROSE)
                + c.percent(Component.MALTOSE)
                + c.percent(Component.TREHALOSE)
                + SINGLE_UNIT_SUGARS
                        * (c.percent(Component.GLUCOSE) + c.percent(Component.FRUCTOSE) + galactose)
                + SUCROSE_G_PER_MOL / 1000 * c.per100g(Tally.HIGHER_SACCHARIDES_MMOL);
    }

    private static double othersEquivalent(Composition c) {
        boolean dairy = c.per100g(Tally.MILK_SOLIDS_NOT_FAT) + c.per100g(Tally.WHEY_SOLIDS) > 0;
        double sucrose =
                SUCROSE_G_PER_MOL
                        / 1000
                        * (c.per100g(Tally.IONS_MMOL) + DissolvedSolutes.aceticAcidMmol(c));
        for (Component component : Component.values()) {
            boolean counted = component != Component.LACTIC_ACID || !dairy;
            if (counted && component.kind() != Component.Kind.SUGAR) {
                sucrose +=
                        c.percent(component)
                                * component
                                        .solute()
                                        .map(AntiFreezingPower::perGramOfIons)
                                        .orElse(0.0);
            }
        }
        return sucrose;
    }
}
