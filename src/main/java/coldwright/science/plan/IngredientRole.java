package coldwright.science.plan;

import coldwright.science.mix.Component;
import coldwright.science.mix.Composition;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Shelf;
import coldwright.science.mix.Tally;
import coldwright.words.Worded;

import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;

/**
 * What an ingredient is for in a mix, by its composition; with how far a plan may change it. All
 * limits are judgement: no change may make another dish of it. Where two fit, the first here
 * counts.
 */
public enum IngredientRole implements Worded {
    ALCOHOL(0, 50, 0.8, c -> c.percent(Component.ALCOHOL) >= 3),
    FRUIT(20, 35, 1.5, c -> c.per100g(Tally.FRUIT) >= 50),
    WATER(20, 100, 0.6, c -> water(c) >= 98 && c.sumPercent() - water(c) < 0.25, Shelf.WATER),
    STABILISER(0.4, 95, 2, c -> c.percent(Component.STABILISER) >= 50, Shelf.LOCUST_BEAN_GUM),
    SALT(0, 85, 0.5, c -> c.percent(Component.SALT) >= 50),
    YOLK(6, 50, 2, c -> c.per100g(Tally.YOLK_SOLIDS) >= 15, Shelf.EGG_YOLK),
    ACID(0, 70, 1, c -> c.percent(Component.Kind.ACID) >= 50),
    STARCH(1, 100, 2, c -> c.percent(Component.STARCH) >= 70),
    /** Sources of milk solids-not-fat. */
    MILK_POWDER(6, 100, 1, c -> milkSolids(c) >= 60, Shelf.SKIM_MILK_POWDER),
    CREAM(20, 70, 1, c -> c.percent(Component.MILK_FAT) >= 10 && plain(c, 5), Shelf.HEAVY_CREAM),
    MILK(20, 60, 0.8, c -> milkSolids(c) >= 6 && water(c) >= 70 && plain(c, 5), Shelf.WHOLE_MILK),
    PLANT_FAT(6, 80, 1.2, c -> c.percent(Component.OTHER_FAT) >= 90, Shelf.COCONUT_OIL),
    PLANT_CREAM(
            20,
            60,
            1.2,
            c -> c.percent(Component.OTHER_FAT) >= 12 && water(c) >= 45 && plain(c, 8),
            Shelf.COCONUT_CREAM),
    SUGAR(12, 60, 1, c -> c.percent(Component.SUCROSE) >= 60, Shelf.SUCROSE),
    /** Simple sugars, which keep more water liquid and are less sweet than sugar. */
    DEXTROSE(
            8,
            100,
            1,
            c -> c.percent(Component.GLUCOSE) + c.percent(Component.FRUCTOSE) >= 60,
            Shelf.DEXTROSE_MONOHYDRATE),
    /** Glucose syrup, which gives body without much sweetness. */
    SYRUP(8, 100, 1.4, c -> c.percent(Component.HIGHER_SACCHARIDES) >= 40, Shelf.GLUCOSE_SYRUP),
    /** Plant drinks, coffee, tea. */
    DRINK(20, 40, 1.2, c -> water(c) >= 85),
    /** Flavours and everything else. */
    FLAVOUR(0, 30, 3, c -> true);

    private final double mostMorePercent;
    private final double mostLessPercent;
    private final double cost;
    private final Predicate<Composition> fits;
    private final List<Ingredient> larder;

    IngredientRole(
            double mostMorePercent,
            double mostLessPercent,
            double cost,
            Predicate<Composition> fits,
            Ingredient... larder) {
        this.mostMorePercent = mostMorePercent;
        this.mostLessPercent = mostLessPercent;
        this.cost = cost;
        this.fits = fits;
        this.larder = List.of(larder);
    }

    /** The most that may be added, % of the batch. */
    double mostMorePercent() {
        return mostMorePercent;
    }

    /** The most that may be taken out, % of what is in. */
    double mostLessPercent() {
        return mostLessPercent;
    }

    /** How much a change of 1 % of the batch counts against other roles. */
    double cost() {
        return cost;
    }

    /** What may be bought for it. */
    List<Ingredient> larder() {
        return larder;
    }

    /** {@return what it is for} */
    public static IngredientRole of(Ingredient ingredient) {
        Composition c = ingredient.composition();
        return Arrays.stream(values()).filter(role -> role.fits.test(c)).findFirst().orElseThrow();
    }

    private static double water(Composition c) {
        return c.percent(Component.WATER);
    }

    private static double milkSolids(Composition c) {
        return c.per100g(Tally.MILK_SOLIDS_NOT_FAT) + c.per100g(Tally.WHEY_SOLIDS);
    }

    /** With little sugar or syrup added, %. */
    private static boolean plain(Composition c, double lessThan) {
        return c.percent(Component.SUCROSE) + c.percent(Component.HIGHER_SACCHARIDES) < lessThan;
    }
}
