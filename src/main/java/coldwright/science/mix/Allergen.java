package coldwright.science.mix;

import coldwright.words.Worded;

/** An allergen, fine enough for the lists of the United States and the European Union. */
public enum Allergen implements Worded {
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
    LUPIN
}
