package coldwright.science.standards;

import coldwright.science.mix.Allergen;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Tally;
import coldwright.science.standards.NameShortfalls.Limit;
import coldwright.words.Phrase;

import java.util.List;

/**
 * Names in Germany: the guidelines for ices of the German food code (Leitsätze für Speiseeis).
 *
 * <p>Eiscreme: at least 10 % milk fat. Rahmeis or Sahneeis: at least 18 %. Fruchteiscreme: at least
 * 8 % and a clear taste of fruit. Fruchteis: at least 20 % fruit, 10 % of citrus and other sour
 * fruit. Sorbet: at least 25 % fruit, 15 % of citrus and other sour fruit, no milk. Wassereis:
 * below 3 % fat and at least 12 % solids. Names with milk or cream require milk fat alone. Read in
 * three summaries of the guidelines, not in the guidelines themselves. Milcheis and Cremeeis, which
 * count the share of milk, are left out; of sour fruit only citrus is counted as such.
 */
final class GermanProductNames {
    private static final String PLACE = "Germany";
    private static final Phrase RULE = Phrase.of(LocalRules.AREA, "rule.Germany");

    private GermanProductNames() {}

    static List<NameVerdict> verdicts(Mix mix) {
        boolean otherFat = NameShortfalls.hasAddedFat(mix);
        double milkFat = mix.milkFatPercent();
        double fruit = mix.composition().per100g(Tally.FRUIT);
        return List.of(
                verdict(
                        "Eiscreme",
                        new NameShortfalls()
                                .atLeast("milk-fat", milkFat, Limit.percent(10))
                                .without(otherFat, "added-fat-but-milk-fat")),
                verdict(
                        "Rahmeis",
                        new NameShortfalls()
                                .atLeast("milk-fat", milkFat, Limit.percent(18))
                                .without(otherFat, "added-fat-but-milk-fat")),
                verdict(
                        "Fruchteiscreme",
                        new NameShortfalls()
                                .atLeast("milk-fat", milkFat, Limit.percent(8))
                                .with(fruit > 0, "fruit")
                                .without(otherFat, "added-fat-but-milk-fat")),
                verdict("Fruchteis", fruit(mix, 20, 10)),
                verdict(
                        "Sorbet",
                        fruit(mix, 25, 15)
                                .without(mix.allergens().contains(Allergen.MILK), "milk")),
                verdict(
                        "Wassereis",
                        new NameShortfalls()
                                .below("fat", mix.fatPercent(), Limit.percent(3))
                                .atLeast(
                                        "total-solids",
                                        mix.totalSolidsPercent(),
                                        Limit.percent(12))));
    }

    /** Fruit and citrus each have their own minimum, so a blend needs its share of both. */
    private static NameShortfalls fruit(Mix mix, double otherMinimum, double citrusMinimum) {
        double citrus = mix.composition().per100g(Tally.CITRUS_FRUIT);
        double other = mix.composition().per100g(Tally.FRUIT) - citrus;
        double reached = other / otherMinimum + citrus / citrusMinimum;
        double needed = reached == 0 ? otherMinimum : (other + citrus) / reached;
        return new NameShortfalls().atLeast("fruit", other + citrus, Limit.percent(needed));
    }

    private static NameVerdict verdict(String name, NameShortfalls nameShortfalls) {
        return new NameVerdict(PLACE, name, nameShortfalls.list(), RULE);
    }
}
