package coldwright.science.plan;

import coldwright.science.mix.Component;
import coldwright.science.mix.Composition;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Shelf;
import coldwright.science.mix.Tally;
import coldwright.words.Worded;

import java.util.List;

/**
 * What an ingredient is for in a mix, by its composition; with how far a plan may change it. All
 * limits are judgement: no change may make another dish of it.
 */
public enum IngredientRole implements Worded {
    WATER(20, 100, 0.6, Shelf.WATER),
    SUGAR(12, 60, 1, Shelf.SUCROSE),
    /** Simple sugars, which keep more water liquid and are less sweet than sugar. */
    DEXTROSE(8, 100, 1, Shelf.DEXTROSE_MONOHYDRATE),
    /** Glucose syrup and maltodextrin, which give body without much sweetness. */
    SYRUP(8, 100, 1.4, Shelf.GLUCOSE_SYRUP_POWDER, Shelf.MALTODEXTRIN),
    MILK(20, 60, 0.8, Shelf.WHOLE_MILK),
    CREAM(20, 70, 1, Shelf.HEAVY_CREAM),
    /** Sources of milk solids-not-fat. */
    MILK_POWDER(6, 100, 1.0, Shelf.SKIM_MILK_POWDER),
    YOLK(6, 50, 2, Shelf.EGG_YOLK),
    PLANT_FAT(6, 80, 1.2, Shelf.COCONUT_OIL),
    PLANT_CREAM(20, 60, 1.2, Shelf.COCONUT_CREAM),
    STABILISER(0.4, 95, 2, Shelf.LOCUST_BEAN_GUM),
    STARCH(1, 100, 2),
    ALCOHOL(0, 50, 0.8),
    SALT(0, 85, 0.5),
    ACID(0, 70, 1),
    FRUIT(20, 35, 1.5),
    /** Plant drinks, coffee, tea. */
    DRINK(20, 40, 1.2),
    /** Flavours and everything else. */
    FLAVOUR(0, 30, 3);

    private final double mostMorePercent;
    private final double mostLessPercent;
    private final double cost;
    private final List<Ingredient> larder;

    IngredientRole(
            double mostMorePercent, double mostLessPercent, double cost, Ingredient... larder) {
        this.mostMorePercent = mostMorePercent;
        this.mostLessPercent = mostLessPercent;
        this.cost = cost;
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
        double water = c.percent(Component.WATER);
        if (c.percent(Component.ALCOHOL) >= 3) {
            return ALCOHOL;
        }
        if (c.per100g(Tally.FRUIT) >= 50) {
            return FRUIT;
        }
        if (water >= 98 && c.sumPercent() - water < 0.25) {
            return WATER;
        }
        if (c.percent(Component.STABILISER) >= 50) {
            return STABILISER;
        }
        if (c.percent(Component.SALT) >= 50) {
            return SALT;
        }
        if (c.per100g(Tally.YOLK_SOLIDS) >= 15) {
            return YOLK;
        }
        if (c.percent(Component.Kind.ACID) >= 50) {
            return ACID;
        }
        if (c.percent(Component.STARCH) >= 70) {
            return STARCH;
        }
        return fatOrMilk(c, water);
    }

    private static IngredientRole fatOrMilk(Composition c, double water) {
        double msnf = c.per100g(Tally.MILK_SOLIDS_NOT_FAT) + c.per100g(Tally.WHEY_SOLIDS);
        double added = c.percent(Component.SUCROSE) + c.percent(Component.HIGHER_SACCHARIDES);
        if (msnf >= 60) {
            return MILK_POWDER;
        }
        if (c.percent(Component.MILK_FAT) >= 10 && added < 5) {
            return CREAM;
        }
        if (msnf >= 6 && water >= 70 && added < 5) {
            return MILK;
        }
        if (c.percent(Component.OTHER_FAT) >= 90) {
            return PLANT_FAT;
        }
        if (c.percent(Component.OTHER_FAT) >= 12 && water >= 45 && added < 8) {
            return PLANT_CREAM;
        }
        return sugarOrOther(c, water);
    }

    private static IngredientRole sugarOrOther(Composition c, double water) {
        double simple = c.percent(Component.GLUCOSE) + c.percent(Component.FRUCTOSE);
        if (c.percent(Component.SUCROSE) >= 60) {
            return SUGAR;
        }
        if (simple >= 60) {
            return DEXTROSE;
        }
        if (c.percent(Component.HIGHER_SACCHARIDES) >= 40) {
            return SYRUP;
        }
        return water >= 85 ? DRINK : FLAVOUR;
    }
}
