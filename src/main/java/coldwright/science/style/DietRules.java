package coldwright.science.style;

import coldwright.science.mix.Allergen;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Component;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.IngredientKind;
import coldwright.science.mix.Mix;
import coldwright.words.Worded;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a batch must not contain, and what may be added although it doesn't contain it yet.
 *
 * <p>Without a word about it a batch is respected as it is: no allergen, animal product or alcohol
 * that it doesn't contain is offered. Allergens are those usually contained; labels and local rules
 * decide, so nothing here says that a batch is free of one.
 *
 * @param rules what it must not contain, or must not get more of
 * @param asked allergens that may be added if the batch has none of them yet
 */
public record DietRules(Set<Rule> rules, Set<Allergen> asked) {
    /** Respected as the recipe is. */
    public static final DietRules AS_IT_IS = new DietRules(Set.of(), Set.of());

    private static final Set<Allergen> ANIMAL_ALLERGENS =
            EnumSet.of(
                    Allergen.MILK,
                    Allergen.EGG,
                    Allergen.FISH,
                    Allergen.CRUSTACEANS,
                    Allergen.MOLLUSCS);

    /** A rule. */
    public enum Rule implements Worded {
        VEGAN,
        NO_MILK,
        NO_EGG,
        NO_GLUTEN,
        NO_NUTS,
        NO_ALCOHOL,
        /** No change adds sugar. */
        LESS_SUGAR;

        private Set<Allergen> excluded() {
            return switch (this) {
                case VEGAN -> ANIMAL_ALLERGENS;
                case NO_MILK -> EnumSet.of(Allergen.MILK);
                case NO_EGG -> EnumSet.of(Allergen.EGG);
                case NO_GLUTEN -> EnumSet.of(Allergen.WHEAT, Allergen.GLUTEN_CEREALS);
                case NO_NUTS -> EnumSet.of(Allergen.TREE_NUTS, Allergen.PEANUTS);
                case NO_ALCOHOL, LESS_SUGAR -> EnumSet.noneOf(Allergen.class);
            };
        }
    }

    /** Copies the sets. */
    public DietRules {
        rules = Set.copyOf(rules);
        asked = Set.copyOf(asked);
    }

    /**
     * Reads a diet.
     *
     * @param words rules and allergens that may be added, such as {@code vegan, no nuts} or {@code
     *     with egg}
     * @return the diet
     * @throws IllegalArgumentException if a word is none of these
     */
    public static DietRules named(String words) {
        Set<Rule> rules = EnumSet.noneOf(Rule.class);
        Set<Allergen> asked = EnumSet.noneOf(Allergen.class);
        for (String one : words.split(",")) {
            String plain = one.strip().toUpperCase(Locale.ROOT).replaceAll("[ _-]+", "_");
            boolean with = plain.startsWith("WITH_");
            String name = with ? plain.substring(5) : plain;
            try {
                if (with) {
                    asked.add(Allergen.valueOf(name));
                } else {
                    rules.add(Rule.valueOf(name));
                }
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException(
                        "\"%s\" is not a diet; there are %s, and \"with\" before an allergen that may be added"
                                .formatted(one.strip(), known()),
                        e);
            }
        }
        return new DietRules(rules, asked);
    }

    private static String known() {
        return Arrays.stream(Rule.values())
                .map(rule -> rule.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .collect(Collectors.joining(", "));
    }

    /**
     * Whether a rule leaves out an ingredient.
     *
     * @return true if it usually contains what a rule excludes
     */
    public boolean excludes(Ingredient ingredient) {
        boolean alcohol = ingredient.composition().percent(Component.ALCOHOL) > 0;
        return rules.contains(Rule.NO_ALCOHOL) && alcohol
                || rules.contains(Rule.VEGAN) && ofAnimals(ingredient)
                || rules.stream()
                        .anyMatch(
                                rule ->
                                        !Collections.disjoint(
                                                rule.excluded(), ingredient.allergens()));
    }

    /** Whether it is or may be of animal origin: makers of emulsifiers differ. */
    private static boolean ofAnimals(Ingredient ingredient) {
        return switch (ingredient.diet()) {
            case VEGAN -> false;
            case VEGETARIAN, ANIMAL -> true;
            case CHECK -> ingredient.kind() == IngredientKind.STABILISER;
        };
    }

    /**
     * Whether more of an ingredient may be offered.
     *
     * @return false if a rule excludes it, if it brings alcohol, or an allergen or animal product
     *     that the batch doesn't have and nobody asked for
     */
    public boolean mayAdd(Mix mix, Ingredient ingredient) {
        if (excludes(ingredient) || ingredient.composition().percent(Component.ALCOHOL) > 0) {
            return false;
        }
        Set<Allergen> known = EnumSet.noneOf(Allergen.class);
        known.addAll(mix.allergens());
        known.addAll(asked);
        return known.containsAll(ingredient.allergens())
                && (!ofAnimals(ingredient)
                        || !ingredient.allergens().isEmpty()
                        || mix.massG(ingredient) > 0);
    }

    /**
     * Ingredients of a batch that a rule excludes.
     *
     * @return in its order; empty if it agrees with the diet as far as is known
     */
    public List<Ingredient> excludedFrom(Mix mix) {
        return mix.amounts().stream()
                .filter(amount -> amount.massG() > 0)
                .map(Amount::ingredient)
                .filter(this::excludes)
                .toList();
    }

    /**
     * Whether a batch is free of animal products, as far as its ingredients are known.
     *
     * @return true if none is known
     */
    static boolean plantsOnly(Mix mix) {
        return new DietRules(Set.of(Rule.VEGAN), Set.of()).excludedFrom(mix).isEmpty();
    }
}
