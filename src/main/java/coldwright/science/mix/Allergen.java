package coldwright.science.mix;

/** Allergens, fine enough for the lists of the United States and of the European Union. */
public enum Allergen {
    MILK("milk"),
    EGG("egg"),
    FISH("fish"),
    CRUSTACEANS("crustaceans"),
    MOLLUSCS("molluscs"),
    TREE_NUTS("tree nuts"),
    PEANUTS("peanuts"),
    WHEAT("wheat"),
    /** Barley, rye, oats and their malts. */
    GLUTEN_CEREALS("gluten (barley, rye or oats)"),
    SOY("soy"),
    SESAME("sesame"),
    CELERY("celery"),
    MUSTARD("mustard"),
    SULPHITES("sulphites"),
    LUPIN("lupin");

    private final String words;

    Allergen(String words) {
        this.words = words;
    }

    /**
     * The name in plain words.
     *
     * @return such as {@code tree nuts}
     */
    public String words() {
        return words;
    }
}
