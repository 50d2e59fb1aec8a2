package coldwright.science.mix;

import coldwright.words.Phrase;

/** Allergens, fine enough for the lists of the United States and of the European Union. */
public enum Allergen {
    MILK,
    EGG,
    FISH,
    CRUSTACEANS,
    MOLLUSCS,
    TREE_NUTS,
    PEANUTS,
    WHEAT,
    /** Barley, rye, oats and their malts. */
    GLUTEN_CEREALS,
    SOY,
    SESAME,
    CELERY,
    MUSTARD,
    SULPHITES,
    LUPIN;

    /**
     * The name in plain words.
     *
     * @return such as {@code tree nuts}
     */
    public String words() {
        return phrase().english();
    }

    /**
     * The name in any language.
     *
     * @return the phrase
     */
    public Phrase phrase() {
        return Phrase.of("science.mix", "allergen." + name());
    }
}
