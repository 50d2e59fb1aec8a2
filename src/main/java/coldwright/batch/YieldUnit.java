package coldwright.batch;

import coldwright.science.mix.Mix;
import coldwright.science.sensory.Overrun;

/** What a cook counts when asked how much to make. */
public enum YieldUnit {
    GRAMS,
    /** 80 g each: common practice, no source. */
    SERVINGS,
    LITRES_OF_MIX,
    /** With its overrun. */
    LITRES_FINISHED,
    /** 80 mL each, with its overrun: common practice, no source. */
    MOULDS;

    /** A serving, g. */
    public static final double SERVING_G = 80;

    /** A lolly mould, L. */
    public static final double MOULD_L = 0.08;

    /**
     * The mass of one, g.
     *
     * @throws IllegalArgumentException if a volume is asked of a recipe that isn't a mix yet
     */
    public double massG(Recipe recipe) {
        return switch (this) {
            case GRAMS -> 1;
            case SERVINGS -> SERVING_G;
            case LITRES_OF_MIX -> 1000 * recipe.mix().densityKgPerL();
            case LITRES_FINISHED -> finishedGPerL(recipe);
            case MOULDS -> MOULD_L * finishedGPerL(recipe);
        };
    }

    private static double finishedGPerL(Recipe recipe) {
        Mix mix = recipe.mix();
        return mix.massG() / new Overrun(recipe.airPercent()).litres(mix);
    }
}
