package coldwright.science.standards;

import coldwright.science.Require;
import coldwright.science.mix.AlcoholByVolume;
import coldwright.science.mix.Allergen;
import coldwright.science.mix.Mix;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a mix must be declared for: allergens and alcohol.
 *
 * <p>It knows only what stands in the ingredients: traces, shared tools and what a packet adds are
 * for the cook to find. United States: the nine major allergens (FALCPA 2004 and the FASTER Act
 * 2021). European Union: the fourteen of Regulation (EU) 1169/2011, Annex II.
 */
public final class Declarations {
    private static final Map<Allergen, String> UNITED_STATES = new EnumMap<>(Allergen.class);
    private static final Map<Allergen, String> EUROPEAN_UNION = new EnumMap<>(Allergen.class);

    static {
        for (Allergen allergen :
                EnumSet.of(
                        Allergen.MILK,
                        Allergen.EGG,
                        Allergen.FISH,
                        Allergen.TREE_NUTS,
                        Allergen.PEANUTS,
                        Allergen.WHEAT,
                        Allergen.SOY,
                        Allergen.SESAME)) {
            UNITED_STATES.put(allergen, allergen.words());
        }
        UNITED_STATES.put(Allergen.CRUSTACEANS, "crustacean shellfish");
        for (Allergen allergen : Allergen.values()) {
            EUROPEAN_UNION.put(allergen, allergen.words());
        }
        EUROPEAN_UNION.put(Allergen.WHEAT, "cereals containing gluten");
        EUROPEAN_UNION.put(Allergen.GLUTEN_CEREALS, "cereals containing gluten");
        EUROPEAN_UNION.put(Allergen.EGG, "eggs");
        EUROPEAN_UNION.put(Allergen.TREE_NUTS, "nuts");
        EUROPEAN_UNION.put(Allergen.SOY, "soybeans");
        EUROPEAN_UNION.put(Allergen.SESAME, "sesame seeds");
        EUROPEAN_UNION.put(Allergen.SULPHITES, "sulphur dioxide and sulphites");
    }

    private Declarations() {}

    /**
     * Allergens of the list of the United States.
     *
     * @param mix the mix
     * @return in the list's words
     */
    public static List<String> unitedStatesAllergens(Mix mix) {
        return words(mix.allergens(), UNITED_STATES);
    }

    /**
     * Allergens of the list of the European Union.
     *
     * @param mix the mix
     * @return in the list's words
     */
    public static List<String> europeanUnionAllergens(Mix mix) {
        return words(mix.allergens(), EUROPEAN_UNION);
    }

    /**
     * The allergens in a sentence.
     *
     * @param mix the mix
     * @return both lists, what is not known, and the reminder
     */
    public static String allergenSentence(Mix mix) {
        return "contains %s (European Union: %s); own ingredients and traces are for you to check; %s"
                .formatted(
                        spoken(unitedStatesAllergens(mix)),
                        spoken(europeanUnionAllergens(mix)),
                        LocalRules.REMINDER);
    }

    /**
     * The alcohol in a sentence.
     *
     * @param mix the mix
     * @return how much, by mass and by volume of the unfrozen mix, with a caution; or that there is
     *     none
     */
    public static String alcoholSentence(Mix mix) {
        double massPercent = mix.alcoholPercent();
        if (massPercent == 0) {
            return "no alcohol by its ingredients";
        }
        double byVolumePercent =
                massPercent * mix.densityKgPerL() / AlcoholByVolume.densityKgPerL(100);
        return "%s %% alcohol by mass, about %s %% by volume of the unfrozen mix: freezing takes none of it away, so it is not for children or for anyone who avoids alcohol, and must be named to guests; %s"
                .formatted(
                        twoDecimals(massPercent),
                        twoDecimals(byVolumePercent),
                        LocalRules.REMINDER);
    }

    private static List<String> words(Set<Allergen> present, Map<Allergen, String> list) {
        List<String> words = new ArrayList<>();
        list.forEach(
                (allergen, word) -> {
                    if (present.contains(allergen) && !words.contains(word)) {
                        words.add(word);
                    }
                });
        return List.copyOf(words);
    }

    private static String spoken(List<String> words) {
        return words.isEmpty() ? "none of the listed allergens" : String.join(", ", words);
    }

    private static String twoDecimals(double value) {
        return Require.spoken(Math.round(value * 100) / 100.0);
    }
}
