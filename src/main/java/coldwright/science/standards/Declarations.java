package coldwright.science.standards;

import coldwright.science.Rounded;
import coldwright.science.mix.AlcoholByVolume;
import coldwright.science.mix.Allergen;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;
import coldwright.words.Phrase;
import coldwright.words.Words;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Declarations for a mix: allergens and alcohol.
 *
 * <p>It covers only what the shelf's ingredients usually contain: the cook must check brands,
 * traces, shared tools and own ingredients. An empty list never means that there are none. United
 * States: the nine major allergens (FALCPA 2004 and the FASTER Act 2021). European Union: the
 * fourteen of Regulation (EU) 1169/2011, Annex II.
 */
public final class Declarations {
    private static final Set<Allergen> UNITED_STATES =
            EnumSet.of(
                    Allergen.MILK,
                    Allergen.EGG,
                    Allergen.FISH,
                    Allergen.CRUSTACEANS,
                    Allergen.TREE_NUTS,
                    Allergen.PEANUTS,
                    Allergen.WHEAT,
                    Allergen.SOY,
                    Allergen.SESAME);

    private Declarations() {}

    /**
     * {@return allergens known from its ingredients, in the words of the list of the United States;
     * others may be in it}
     */
    public static List<String> unitedStatesAllergens(Mix mix) {
        return words(mix, "us.", UNITED_STATES);
    }

    /**
     * {@return allergens known from its ingredients, in the words of the list of the European
     * Union; others may be in it}
     */
    public static List<String> europeanUnionAllergens(Mix mix) {
        return words(mix, "eu.", EnumSet.allOf(Allergen.class));
    }

    /**
     * {@return the allergens in words that never claim there are none: those that its ingredients
     * usually contain, by the longer list; the ingredients that are not on the shelf; the reminder
     * to read labels}
     */
    public static Phrase allergens(Mix mix) {
        List<Phrase> known = mix.allergens().stream().map(Allergen::phrase).toList();
        List<String> own =
                mix.amounts().stream()
                        .filter(amount -> amount.massG() > 0)
                        .map(Amount::ingredient)
                        .filter(one -> !Shelf.all().contains(one))
                        .map(Ingredient::name)
                        .toList();
        String key = (known.isEmpty() ? "none-listed" : "known") + (own.isEmpty() ? "" : "-own");
        return Phrase.of(LocalRules.AREA, key, LocalRules.REMINDER, known, own);
    }

    /** {@return the {@link #allergens} in an English sentence} */
    public static String allergenSentence(Mix mix) {
        return allergens(mix).english();
    }

    /**
     * {@return the alcohol in any language: its share by mass and by volume of the unfrozen mix,
     * with a caution; or that there is none}
     */
    public static Phrase alcohol(Mix mix) {
        double massPercent = mix.alcoholPercent();
        double byVolumePercent =
                massPercent * mix.densityKgPerL() / AlcoholByVolume.densityKgPerL(100);
        return massPercent == 0
                ? Phrase.of(LocalRules.AREA, "no-alcohol")
                : Phrase.of(
                        LocalRules.AREA,
                        "alcohol",
                        Rounded.hundredth(massPercent),
                        Rounded.hundredth(byVolumePercent),
                        LocalRules.REMINDER);
    }

    /** {@return the {@link #alcohol} in an English sentence} */
    public static String alcoholSentence(Mix mix) {
        return alcohol(mix).english();
    }

    /** The list's own word where the bundle has one, else the allergen's. */
    private static List<String> words(Mix mix, String list, Set<Allergen> listed) {
        return mix.allergens().stream()
                .filter(listed::contains)
                .map(
                        one ->
                                Words.of(LocalRules.AREA).has(list + one.name())
                                        ? Phrase.of(LocalRules.AREA, list + one.name())
                                        : one.phrase())
                .map(Phrase::english)
                .distinct()
                .toList();
    }
}
