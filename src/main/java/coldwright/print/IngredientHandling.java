package coldwright.print;

import coldwright.science.mix.Allergen;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Component;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** The ingredients of a mix above zero, and what matters when a cook handles them. */
record IngredientHandling(Mix mix, List<Amount> amounts) {
    private static final Pattern BROWNED =
            Pattern.compile("caramel|toffee|butterscotch|praline|brittle|dulce|honeycomb");
    private static final Pattern WHOLE_FRUIT_ENDS =
            Pattern.compile(
                    ".*(berries|cherries|currants|mango|banana|peach|apricot|pear|apple|plum|melon|kiwi|fig|lychee|fruit|guava|rhubarb|avocado)");
    private static final Pattern RAW_MEAL = Pattern.compile(".*(flour|oats|starch|arrowroot)");

    /** Share of an ingredient, % by mass, above which it counts as one of its kind (judgement). */
    private static final double STRONG_PERCENT = 5;

    private static final double SOUR_PERCENT = 0.3;
    private static final double GUM_PERCENT = 20;
    private static final double DRY_PERCENT = 97;
    private static final double WET_PERCENT = 50;

    static IngredientHandling of(Mix mix) {
        return new IngredientHandling(
                mix, mix.amounts().stream().filter(amount -> amount.massG() > 0).toList());
    }

    static boolean isEgg(Ingredient one) {
        return one.allergens().contains(Allergen.EGG);
    }

    static boolean isMilk(Ingredient one) {
        return one.allergens().contains(Allergen.MILK);
    }

    static boolean isStrong(Ingredient one) {
        return one.composition().percent(Component.ALCOHOL) > STRONG_PERCENT;
    }

    /** Sour enough to curdle hot milk; milk products don't count, as they are sour anyway. */
    static boolean isSour(Ingredient one) {
        return !isMilk(one) && one.composition().percent(Component.Kind.ACID) > SOUR_PERCENT;
    }

    static boolean isGum(Ingredient one) {
        return one.composition().percent(Component.STABILISER) > GUM_PERCENT;
    }

    static boolean isDrySugar(Ingredient one) {
        return one.composition().percent(Component.Kind.SUGAR) > DRY_PERCENT;
    }

    static boolean isWet(Ingredient one) {
        return one.composition().percent(Component.WATER) > WET_PERCENT;
    }

    static boolean isWholeFruit(Ingredient one) {
        return WHOLE_FRUIT_ENDS.matcher(one.name().toLowerCase(Locale.ROOT)).matches();
    }

    static boolean isRawMeal(Ingredient one) {
        return RAW_MEAL.matcher(one.name().toLowerCase(Locale.ROOT)).matches();
    }

    static boolean namesBrownedSugar(String words) {
        return BROWNED.matcher(words.toLowerCase(Locale.ROOT)).find();
    }

    /** Whether the mix is heated: because of egg, milk, starch or gums. */
    boolean isHeated() {
        return any(IngredientHandling::isEgg)
                || any(IngredientHandling::isMilk)
                || any(IngredientHandling::isGum)
                || any(IngredientHandling::isRawMeal)
                || mix.composition().percent(Component.STARCH) > 1;
    }

    /** Whether it is added to the cold mix: it boils away, curdles hot milk or loses its scent. */
    boolean goesInLate(Ingredient one) {
        return isHeated() && (isStrong(one) || isSour(one) && any(IngredientHandling::isMilk));
    }

    boolean any(Predicate<Ingredient> is) {
        return amounts.stream().anyMatch(amount -> is.test(amount.ingredient()));
    }

    /** The names of all matching ingredients as a list in a sentence; empty if there are none. */
    String names(Predicate<Ingredient> are) {
        List<String> names =
                amounts.stream()
                        .map(Amount::ingredient)
                        .filter(are)
                        .map(one -> one.phrase().shown())
                        .distinct()
                        .toList();
        int last = names.size() - 1;
        return names.size() < 2
                ? String.join("", names)
                : MakeSheetText.word(
                        "and", String.join(", ", names.subList(0, last)), names.get(last));
    }
}
