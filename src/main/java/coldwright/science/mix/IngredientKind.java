package coldwright.science.mix;

import coldwright.words.Worded;

import java.util.Locale;

/** Where a cook would look for an ingredient. Each has a file of the shelf, except {@link #OWN}. */
public enum IngredientKind implements Worded {
    /** Water, salts, acids. */
    BASIC,
    SUGAR,
    /** Polyols, fibres that sweeten, intense sweeteners. */
    SWEETENER,
    DAIRY,
    EGG,
    /** Juice, zest, dried fruit and vegetables too. */
    FRUIT,
    /** Jams, sauces, spreads. */
    SAUCE,
    CHOCOLATE,
    /** Seeds and their pastes too. */
    NUT,
    /** Plant drinks, creams, oils. */
    PLANT,
    /** Flours and starches too. */
    GRAIN,
    /** Biscuits, sweets and whatever else is stirred in. */
    PIECES,
    /** Vanilla, spices, herbs, coffee, tea, waters, vinegars. */
    FLAVOUR,
    ALCOHOL,
    /** Gums, gelatine, emulsifiers. */
    STABILISER,
    /** A cook's own. */
    OWN;

    String resource() {
        return "shelf/" + name().toLowerCase(Locale.ROOT) + ".csv";
    }
}
