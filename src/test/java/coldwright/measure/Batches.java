package coldwright.measure;

import static coldwright.science.mix.Amount.grams;

import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

/** Batches to measure with. */
final class Batches {
    private Batches() {}

    /** Twelve ingredients with sugars, alcohol, salt, acid and milk salts among them. */
    static Mix twelveIngredients() {
        return Mix.of(
                grams(500, Shelf.WHOLE_MILK),
                grams(220, Shelf.HEAVY_CREAM),
                grams(40, Shelf.SKIM_MILK_POWDER),
                grams(60, Shelf.EGG_YOLK),
                grams(90, Shelf.SUCROSE),
                grams(25, Shelf.GLUCOSE),
                grams(20, Shelf.GLUCOSE_SYRUP_POWDER),
                grams(15, Shelf.HONEY),
                grams(12, Shelf.RUM_40),
                grams(60, Shelf.BLOOD_ORANGE_JUICE),
                grams(1, Shelf.SODIUM_CHLORIDE),
                grams(2, Shelf.LOCUST_BEAN_GUM));
    }

    /** Milk, cream, powder and sugar. */
    static Mix plain() {
        return Mix.of(
                grams(520, Shelf.WHOLE_MILK),
                grams(260, Shelf.HEAVY_CREAM),
                grams(40, Shelf.SKIM_MILK_POWDER),
                grams(140, Shelf.SUCROSE));
    }
}
