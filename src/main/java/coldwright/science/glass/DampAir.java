package coldwright.science.glass;

import coldwright.science.Band;
import coldwright.science.Commented;
import coldwright.science.Require;
import coldwright.words.Phrase;

import org.hipparchus.analysis.solvers.BrentSolver;

import java.util.List;

/**
 * A wafer in damp air: how much water it takes up and when it goes soft.
 *
 * <p>Equation (GAB: Guggenheim, Anderson and de Boer): X = Xm C K a/((1 − Ka)(1 − Ka + C K a)), X
 * in g of water per g of dry matter, a the relative humidity as a fraction. Constants for wafers
 * and biscuits near 25 °C, from memory: Xm 0.045 (0.035 to 0.055), C 12, K 0.95; the equation is
 * standard for foods (seen in use for almonds and cookies). Range 10 to 90 % humidity.
 *
 * <p>It goes soft when the water in its sugar melt brings the melt's glass transition below the
 * room ({@link Wafer#sugarPhase}). Error: ±1 % of water, ±10 % of humidity.
 *
 * <p>Time: half of the uptake takes 0.197 (d/2)²/D by Fick's law for a slab open on both sides
 * (Crank, The Mathematics of Diffusion, from memory), D 2·10⁻¹¹ to 2·10⁻¹⁰ m²/s, by judgement.
 *
 * @param wafer the wafer
 * @param roomC temperature of the room, °C, 0 to 45
 */
public record DampAir(Wafer wafer, double roomC) implements Commented {
    private static final Band MONOLAYER_G_PER_G = new Band(0.035, 0.045, 0.055);
    private static final double C = 12;
    private static final double K = 0.95;
    private static final Band DIFFUSIVITY_M2_PER_S = new Band(2e-11, 6e-11, 2e-10);
    private static final double HALF_WAY = 0.197;
    private static final double DAMPEST_PERCENT = 95;
    private static final double ACCURACY_PERCENT = 1e-9;
    private static final int MOST_EVALUATIONS = 100;
    private static final Require.Range HUMIDITY =
            new Require.Range(0, DAMPEST_PERCENT, "% relative humidity");

    public DampAir {
        Require.within("roomC", roomC, new Require.Range(0, 45, "°C"));
    }

    /**
     * {@return water in the wafer at equilibrium with the air, % by mass of the whole, with the
     * spread of the constants}
     *
     * @param humidityPercent relative humidity, %, 0 to 95
     */
    public Band waterPercentAt(double humidityPercent) {
        Require.within("humidityPercent", humidityPercent, HUMIDITY);
        return MONOLAYER_G_PER_G.map(monolayer -> wet(monolayer, humidityPercent));
    }

    /**
     * {@return glass transition of the wafer's sugar melt at equilibrium with the air, °C; above
     * the room the wafer snaps, below it bends}
     *
     * @param humidityPercent relative humidity, %, 0 to 95
     */
    public Band glassTransitionCAt(double humidityPercent) {
        return waterPercentAt(humidityPercent).map(this::glass);
    }

    /** {@return the highest humidity at which it stays crisp, % relative humidity} */
    public Band crispUpToHumidityPercent() {
        return MONOLAYER_G_PER_G.map(this::limit);
    }

    /** {@return how long a dry wafer takes for half of its water uptake, h} */
    public Band hoursHalfWay() {
        double half = wafer.thicknessMm() / 2000;
        double factor = HALF_WAY * half * half / 3600;
        return DIFFUSIVITY_M2_PER_S.map(diffusivity -> factor / diffusivity);
    }

    @Override
    public List<Phrase> comments() {
        return List.of(Phrase.of("science.glass", "sorption"));
    }

    private double limit(double monolayer) {
        if (glass(wet(monolayer, DAMPEST_PERCENT)) > roomC) {
            return DAMPEST_PERCENT;
        }
        if (glass(wet(monolayer, 0)) <= roomC) {
            return 0;
        }
        return new BrentSolver(ACCURACY_PERCENT)
                .solve(
                        MOST_EVALUATIONS,
                        percent -> glass(wet(monolayer, percent)) - roomC,
                        0,
                        DAMPEST_PERCENT);
    }

    private double glass(double waterPercent) {
        return wafer.moist(waterPercent).sugarPhase().glassTransitionC();
    }

    private static double wet(double monolayer, double humidityPercent) {
        double ka = K * humidityPercent / 100;
        double dry = monolayer * C * ka / ((1 - ka) * (1 - ka + C * ka));
        return 100 * dry / (1 + dry);
    }
}
