package coldwright.science.standards;

import coldwright.science.Require;
import coldwright.science.mix.Allergen;
import coldwright.science.mix.Component;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Tally;
import coldwright.words.Phrase;

import java.util.List;
import java.util.stream.Stream;

/** Product names that a mix may bear, by the rules of three places. */
public final class ProductNames {
    private static final Require.Range OVERRUN = new Require.Range(0, 300, "%");

    /** The avoirdupois pound per US gallon, exact: 453.59237 g in 3.785411784 L. */
    private static final double G_PER_L_PER_LB_PER_GAL = 453.59237 / 3.785411784;

    private ProductNames() {}

    /** {@return the verdicts on a mix without air, one for each name that is checked} */
    public static List<NameVerdict> of(Mix mix) {
        return of(mix, 0);
    }

    /**
     * {@return the verdicts on a mix with air, which counts for the weight by volume in the United
     * States, one for each name that is checked}
     *
     * @param overrunPercent volume of air per volume of mix, %, 0 to 300
     */
    public static List<NameVerdict> of(Mix mix, double overrunPercent) {
        return Stream.of(unitedStates(mix, overrunPercent), unitedKingdom(mix), germany(mix))
                .flatMap(List::stream)
                .toList();
    }

    /** {@return the names that the mix may bear: the allowed verdicts only} */
    public static List<NameVerdict> allowed(Mix mix) {
        return of(mix).stream().filter(NameVerdict::allowed).toList();
    }

    /**
     * Names in the United States.
     *
     * <p>21 CFR 135.110 (ice cream and frozen custard): at least 10 % milkfat and 10 % nonfat milk
     * solids, which may fall to 9, 8, 7 and 6 % as milkfat reaches 11, 12, 13 and 14 %; at least
     * 1.6 pounds of total solids and 4.5 pounds of weight to the gallon; no other food fats except
     * those of flavourings; 1.4 % egg yolk solids or more make it frozen custard; whey at most a
     * quarter of the nonfat milk solids (so the USDA ice cream standard, section 58.2825). The
     * allowances for bulky flavours are left out. 21 CFR 135.160 (water ices): no milk and no egg
     * except egg white. As printed from 2003 to 2011; the mix must be pasteurised.
     */
    private static List<NameVerdict> unitedStates(Mix mix, double overrunPercent) {
        String place = "United States";
        double yolk = mix.composition().per100g(Tally.YOLK_SOLIDS);
        boolean egg =
                mix.amounts().stream()
                        .anyMatch(a -> a.massG() > 0 && eggOtherThanWhite(a.ingredient()));
        return List.of(
                iceCream(mix, overrunPercent)
                        .below("egg-yolk-solids", yolk, 1.4)
                        .verdict(place, "ice cream", rule("110")),
                iceCream(mix, overrunPercent)
                        .atLeast("egg-yolk-solids", yolk, 1.4)
                        .verdict(place, "frozen custard", rule("110")),
                new NameShortfalls()
                        .without(mix.allergens().contains(Allergen.MILK), "milk")
                        .without(egg, "egg-but-egg-white")
                        .verdict(place, "water ice", rule("160")));
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
        double milkFat = mix.milkFatPercent();
        return new NameShortfalls()
                .atLeast("milkfat", milkFat, 10)
                .atLeast("nonfat-milk-solids", solids, leastNonfatMilkSolids(milkFat))
                .atLeastPounds(
                        "total-solids-to-the-gallon",
                        poundsPerGallon * mix.totalSolidsPercent() / 100,
                        1.6)
                .atLeastPounds("weight-to-the-gallon", poundsPerGallon, 4.5)
                .without(NameShortfalls.hasAddedFat(mix), "added-fat-but-milkfat")
                .without(
                        solids > 0 && whey > 0.25 * solids,
                        "more-whey-than-a-quarter-of-its-milk-solids");
    }

    /** The step table of 135.110(a)(2). */
    private static int leastNonfatMilkSolids(double milkFatPercent) {
        int steps = (int) Math.floor(Math.min(milkFatPercent + 1e-9, 14) - 10);
        return 10 - Math.max(0, steps);
    }

    private static boolean eggOtherThanWhite(Ingredient ingredient) {
        return ingredient.allergens().contains(Allergen.EGG)
                && ingredient.composition().percent(Component.OTHER_FAT) > 1;
    }

    /**
     * Names in the United Kingdom.
     *
     * <p>Ice cream: at least 5 % fat and 2.5 % milk protein; dairy ice cream: the same, with milk
     * fat alone except for that of other ingredients such as egg. Once law (Food Labelling
     * Regulations 1996, Schedule 8); now guidance by the Ice Cream Alliance, as the University of
     * Reading's food law pages quote it.
     */
    private static List<NameVerdict> unitedKingdom(Mix mix) {
        String place = "United Kingdom";
        Phrase rule = Phrase.of(LocalRules.AREA, "rule.United-Kingdom");
        double milkProtein = mix.composition().percent(Component.MILK_PROTEIN);
        return List.of(
                new NameShortfalls()
                        .atLeast("fat", mix.fatPercent(), 5)
                        .atLeast("milk-protein", milkProtein, 2.5)
                        .verdict(place, "ice cream", rule),
                new NameShortfalls()
                        .atLeast("milk-fat", mix.milkFatPercent(), 5)
                        .atLeast("milk-protein", milkProtein, 2.5)
                        .without(NameShortfalls.hasAddedFat(mix), "added-fat-but-milk-fat")
                        .verdict(place, "dairy ice cream", rule));
    }

    /**
     * Names in Germany: the guidelines for ices of the German food code (Leitsätze für Speiseeis).
     *
     * <p>Eiscreme: at least 10 % milk fat. Rahmeis or Sahneeis: at least 18 %. Fruchteiscreme: at
     * least 8 % and a clear taste of fruit. Fruchteis: at least 20 % fruit, 10 % of citrus and
     * other sour fruit. Sorbet: at least 25 % fruit, 15 % of citrus and other sour fruit, no milk.
     * Wassereis: below 3 % fat and at least 12 % solids. Names with milk or cream require milk fat
     * alone. Read in three summaries of the guidelines, not in the guidelines themselves. Milcheis
     * and Cremeeis, which count the share of milk, are left out; of sour fruit only citrus is
     * counted as such.
     */
    private static List<NameVerdict> germany(Mix mix) {
        String place = "Germany";
        Phrase rule = Phrase.of(LocalRules.AREA, "rule.Germany");
        boolean fruit = mix.composition().per100g(Tally.FRUIT) > 0;
        return List.of(
                milkFat(mix, 10, true).verdict(place, "Eiscreme", rule),
                milkFat(mix, 18, true).verdict(place, "Rahmeis", rule),
                milkFat(mix, 8, fruit).verdict(place, "Fruchteiscreme", rule),
                fruit(mix, 20, 10).verdict(place, "Fruchteis", rule),
                fruit(mix, 25, 15)
                        .without(mix.allergens().contains(Allergen.MILK), "milk")
                        .verdict(place, "Sorbet", rule),
                new NameShortfalls()
                        .below("fat", mix.fatPercent(), 3)
                        .atLeast("total-solids", mix.totalSolidsPercent(), 12)
                        .verdict(place, "Wassereis", rule));
    }

    private static NameShortfalls milkFat(Mix mix, double least, boolean fruit) {
        return new NameShortfalls()
                .atLeast("milk-fat", mix.milkFatPercent(), least)
                .with(fruit, "fruit")
                .without(NameShortfalls.hasAddedFat(mix), "added-fat-but-milk-fat");
    }

    /** Fruit and citrus each have their own minimum, so a blend needs its share of both. */
    private static NameShortfalls fruit(Mix mix, double otherMinimum, double citrusMinimum) {
        double citrus = mix.composition().per100g(Tally.CITRUS_FRUIT);
        double other = mix.composition().per100g(Tally.FRUIT) - citrus;
        double reached = other / otherMinimum + citrus / citrusMinimum;
        double needed = reached == 0 ? otherMinimum : (other + citrus) / reached;
        return new NameShortfalls().atLeast("fruit", other + citrus, needed);
    }
}
