package coldwright.science.standards;

import coldwright.science.Require;
import coldwright.science.mix.Allergen;
import coldwright.science.mix.Component;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Tally;
import coldwright.science.standards.NameShortfalls.Limit;
import coldwright.words.Phrase;

import java.util.List;

/**
 * Names in the United States.
 *
 * <p>21 CFR 135.110 (ice cream and frozen custard): at least 10 % milkfat and 10 % nonfat milk
 * solids, which may fall to 9, 8, 7 and 6 % as milkfat reaches 11, 12, 13 and 14 %; at least 1.6
 * pounds of total solids and 4.5 pounds of weight to the gallon; no other food fats except those of
 * flavourings; 1.4 % egg yolk solids or more make it frozen custard; whey at most a quarter of the
 * nonfat milk solids (so the USDA ice cream standard, section 58.2825). The allowances for bulky
 * flavours are left out. 21 CFR 135.160 (water ices): no milk and no egg except egg white. As
 * printed from 2003 to 2011; the mix must be pasteurised.
 */
final class UsProductNames {
    private static final String PLACE = "United States";
    private static final Require.Range OVERRUN = new Require.Range(0, 300, "%");

    /** The avoirdupois pound per US gallon, exact: 453.59237 g in 3.785411784 L. */
    private static final double G_PER_L_PER_LB_PER_GAL = 453.59237 / 3.785411784;

    private UsProductNames() {}

    static List<NameVerdict> verdicts(Mix mix, double overrunPercent) {
        double yolk = mix.composition().per100g(Tally.YOLK_SOLIDS);
        List<Phrase> iceCream =
                iceCream(mix, overrunPercent)
                        .below("egg-yolk-solids", yolk, Limit.percent(1.4))
                        .list();
        List<Phrase> custard =
                iceCream(mix, overrunPercent)
                        .atLeast("egg-yolk-solids", yolk, Limit.percent(1.4))
                        .list();
        boolean egg =
                mix.amounts().stream()
                        .anyMatch(a -> a.massG() > 0 && eggOtherThanWhite(a.ingredient()));
        List<Phrase> waterIce =
                new NameShortfalls()
                        .without(mix.allergens().contains(Allergen.MILK), "milk")
                        .without(egg, "egg-but-egg-white")
                        .list();
        return List.of(
                new NameVerdict(PLACE, "ice cream", iceCream, rule("110")),
                new NameVerdict(PLACE, "frozen custard", custard, rule("110")),
                new NameVerdict(PLACE, "water ice", waterIce, rule("160")));
    }

    private static Phrase rule(String section) {
        return Phrase.of(LocalRules.AREA, "plain", "21 CFR 135." + section);
    }

    private static NameShortfalls iceCream(Mix mix, double overrunPercent) {
        Require.within("overrunPercent", overrunPercent, OVERRUN);
        double gramsPerLitre = 1000 * mix.densityKgPerL() / (1 + overrunPercent / 100);
        double poundsPerGallon = gramsPerLitre / G_PER_L_PER_LB_PER_GAL;
        double whey = mix.composition().per100g(Tally.WHEY_SOLIDS);
        double solids = mix.milkSolidsNotFatPercent();
        NameShortfalls nameShortfalls =
                new NameShortfalls()
                        .atLeast("milkfat", mix.milkFatPercent(), Limit.percent(10))
                        .atLeast(
                                "nonfat-milk-solids",
                                solids,
                                Limit.percent(leastNonfatMilkSolids(mix.milkFatPercent())))
                        .atLeast(
                                "total-solids-to-the-gallon",
                                poundsPerGallon * mix.totalSolidsPercent() / 100,
                                new Limit(1.6, "lb"))
                        .atLeast("weight-to-the-gallon", poundsPerGallon, new Limit(4.5, "lb"))
                        .without(NameShortfalls.hasAddedFat(mix), "added-fat-but-milkfat");
        return nameShortfalls.without(
                solids > 0 && whey > 0.25 * solids, "more-whey-than-a-quarter-of-its-milk-solids");
    }

    /** The step table of 135.110(a)(2). */
    static int leastNonfatMilkSolids(double milkFatPercent) {
        int steps = (int) Math.floor(Math.min(milkFatPercent + 1e-9, 14) - 10);
        return 10 - Math.max(0, steps);
    }

    private static boolean eggOtherThanWhite(Ingredient ingredient) {
        return ingredient.allergens().contains(Allergen.EGG)
                && ingredient.composition().percent(Component.OTHER_FAT) > 1;
    }
}
