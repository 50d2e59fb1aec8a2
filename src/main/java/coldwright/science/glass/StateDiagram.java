package coldwright.science.glass;

import coldwright.science.Commented;
import coldwright.science.Require;
import coldwright.science.freezing.Solute;
import coldwright.science.freezing.Solution;
import coldwright.words.Phrase;

import java.util.List;
import java.util.Locale;

/**
 * The state diagram of one sugar and water: the ice line, the glass line, and how far freezing can
 * concentrate the syrup.
 *
 * <p>The ice line comes from the freezing model, the glass line from {@link GordonTaylor}. The end
 * of freezing is published for sucrose: Tg′ −46 °C, Tm′ −34 °C at 80 % (from memory; the −32 °C of
 * older work is another definition of the same step). For the other sugars it is left out.
 *
 * @param sugar the sugar
 */
public record StateDiagram(SugarGlass sugar) implements Commented {
    /** Glass transition of the liquid that is left when no more ice can form, °C; from memory. */
    public static final double SUCROSE_END_OF_FREEZING_GLASS_C = -46;

    /** Temperature at which ice begins to melt into that liquid, °C; from memory. */
    public static final double SUCROSE_ONSET_OF_MELTING_C = -34;

    /** Sucrose in that liquid, % by mass; from memory. */
    public static final double SUCROSE_MOST_CONCENTRATED_PERCENT = 80;

    private static final Require.Range SYRUP = new Require.Range(0, 80, "% by mass");

    /** Rejects a substance that is not a sugar. */
    public StateDiagram {
        Require.that(
                sugar != SugarGlass.STARCH && sugar != SugarGlass.GLUTEN,
                "%s isn't a sugar; use SUCROSE, GLUCOSE, FRUCTOSE, LACTOSE or MALTOSE",
                sugar.name().toLowerCase(Locale.ROOT));
    }

    /**
     * {@return the glass line: glass transition, °C}
     *
     * @param sugarPercent sugar, % by mass, 0 to 100
     */
    public double glassTransitionC(double sugarPercent) {
        return GordonTaylor.of(sugarPercent, sugar).glassTransitionC();
    }

    /**
     * {@return the ice line (liquidus): temperature at which the first ice is stable, °C}
     *
     * @param sugarPercent sugar, % by mass, 0 to 80
     */
    public double iceMeltsC(double sugarPercent) {
        Require.within("sugarPercent", sugarPercent, SYRUP);
        return Solution.inWater(100 - sugarPercent)
                .with(sugarPercent, Solute.valueOf(sugar.name()))
                .freezingPointC();
    }

    /**
     * {@return viscosity between the lines, by the distance to the glass line, log₁₀ of the
     * viscosity in Pa·s; 12 and more is glass}
     *
     * @param sugarPercent sugar, % by mass
     * @param temperatureC temperature, °C, at most 100 °C above the glass line
     */
    public double logPaS(double sugarPercent, double temperatureC) {
        double above = temperatureC - glassTransitionC(sugarPercent);
        return above <= 0 ? Wlf.LOG_PAS_AT_GLASS : Wlf.logPaS(above);
    }

    /** {@return the sources of the diagram, as a caption} */
    @Override
    public List<Phrase> comments() {
        return List.of(
                Phrase.of("science.glass", "glass-line"),
                sugar == SugarGlass.SUCROSE
                        ? Phrase.of(
                                "science.glass",
                                "end-of-freezing",
                                SUCROSE_END_OF_FREEZING_GLASS_C,
                                SUCROSE_ONSET_OF_MELTING_C,
                                SUCROSE_MOST_CONCENTRATED_PERCENT)
                        : Phrase.of("science.glass", "end-unknown"));
    }
}
