package coldwright.science.standards;

import coldwright.science.mix.Component;
import coldwright.science.mix.Mix;
import coldwright.science.standards.NameShortfalls.Limit;
import coldwright.words.Phrase;

import java.util.List;

/**
 * Names in the United Kingdom.
 *
 * <p>Ice cream: at least 5 % fat and 2.5 % milk protein; dairy ice cream: the same, with milk fat
 * alone except for that of other ingredients such as egg. Once law (Food Labelling Regulations
 * 1996, Schedule 8); now guidance by the Ice Cream Alliance, as the University of Reading's food
 * law pages quote it.
 */
final class UkProductNames {
    private static final String PLACE = "United Kingdom";
    private static final Phrase RULE = Phrase.of(LocalRules.AREA, "rule.United-Kingdom");

    private UkProductNames() {}

    static List<NameVerdict> verdicts(Mix mix) {
        double milkProtein = mix.composition().percent(Component.MILK_PROTEIN);
        List<Phrase> iceCream =
                new NameShortfalls()
                        .atLeast("fat", mix.fatPercent(), Limit.percent(5))
                        .atLeast("milk-protein", milkProtein, Limit.percent(2.5))
                        .list();
        List<Phrase> dairy =
                new NameShortfalls()
                        .atLeast("milk-fat", mix.milkFatPercent(), Limit.percent(5))
                        .atLeast("milk-protein", milkProtein, Limit.percent(2.5))
                        .without(NameShortfalls.hasAddedFat(mix), "added-fat-but-milk-fat")
                        .list();
        return List.of(
                new NameVerdict(PLACE, "ice cream", iceCream, RULE),
                new NameVerdict(PLACE, "dairy ice cream", dairy, RULE));
    }
}
