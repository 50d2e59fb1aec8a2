package coldwright.science.sensory;

import coldwright.science.Require;
import coldwright.science.mix.Mix;

/**
 * Overrun: the air beaten into a mix.
 *
 * <p>Equation: overrun % = (mass of mix − mass of product of the same volume)/mass of product ·
 * 100, so product density = mix density/(1 + overrun/100). University ice cream notes (seen): 100 %
 * of a mix of 1.1 kg/L gives 550 g/L. Volume of the mix is taken at its density without ice;
 * freezing swells it by some 5 % more, which the trade leaves out too.
 *
 * @param percent overrun, %, 0 to 250
 */
public record Overrun(double percent) {
    public Overrun {
        Require.within("percent", percent, new Require.Range(0, 250, "%"));
    }

    /**
     * Overrun by weighing a cup of mix and the same cup of product.
     *
     * @param mixG the cup full of mix, g
     * @param productG the same cup full of product, g, not heavier
     * @throws IllegalArgumentException if the product is heavier than the mix
     */
    public static Overrun byWeighing(double mixG, double productG) {
        Require.positive("mixG", mixG, "g");
        Require.positive("productG", productG, "g");
        Require.that(
                productG <= mixG,
                "productG is %s and mixG is %s; the product can't weigh more than its mix. Were they swapped?",
                productG,
                mixG);
        return new Overrun(100 * (mixG - productG) / productG);
    }

    /** {@return air by volume, % of the product} */
    public double airPercent() {
        return 100 * percent / (100 + percent);
    }

    /** {@return weight of a litre of product, g/L} */
    public double gPerL(Mix mix) {
        return gPerL(mix.densityKgPerL());
    }

    /**
     * {@return weight of a litre of product, g/L}
     *
     * @param mixKgPerL density of the mix, kg/L, 0.7 to 1.6
     */
    public double gPerL(double mixKgPerL) {
        Require.within("mixKgPerL", mixKgPerL, new Require.Range(0.7, 1.6, "kg/L"));
        return 1000 * mixKgPerL / (1 + percent / 100);
    }

    /** {@return volume of the whole batch, L} */
    public double litres(Mix mix) {
        return mix.massG() / gPerL(mix);
    }

    /**
     * {@return a serving by volume: its weight and how many the batch gives}
     *
     * @param servingMl volume of a scoop, mL
     */
    public Serving serving(Mix mix, double servingMl) {
        Require.positive("servingMl", servingMl, "mL");
        return new Serving(
                servingMl, gPerL(mix) * servingMl / 1000, litres(mix) * 1000 / servingMl);
    }

    /**
     * A serving.
     *
     * @param volumeMl volume, mL
     * @param massG mass, g
     * @param servings how many the batch gives
     */
    public record Serving(double volumeMl, double massG, double servings) {}
}
