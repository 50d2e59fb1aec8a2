package coldwright.science.bath;

import coldwright.science.freezing.Brine;
import coldwright.science.thermal.PureWater;

import java.util.ArrayList;
import java.util.List;

/**
 * A closed bath of water and salt on its phase diagram: temperature, ice, brine and undissolved
 * salt by the heat in it.
 *
 * <p>Everything is in equilibrium at each moment. From cold to warm: ice and dry salt; the eutectic
 * at −21.1 °C, where brine of 23.3 % forms until ice or salt is used up; then the ice line while
 * ice is left, or the salt line while salt is left; then brine alone.
 *
 * <p>Sources: ice line {@link Brine}; enthalpies {@link BrineHeat} and {@link PureWater}; salt line
 * straight from 23.3 % at −21.1 °C to 26.3 % at 0.1 °C and 26.4 % at 20 °C (from memory). Below 0.1
 * °C the salt in equilibrium with brine is the dihydrate; here it is taken as dry salt, which
 * leaves out the heat of its two waters (up to 20 J per g of undissolved salt).
 */
final class BathCurve {
    private static final double COLDEST_C = -45;
    private static final double WARMEST_C = 40;
    private static final int LINE_STEPS = 233;
    private static final double[] ICE_LINE = iceLine();

    private final double waterG;
    private final double saltG;
    private final List<State> states = new ArrayList<>();

    BathCurve(double waterG, double saltG) {
        this.waterG = waterG;
        this.saltG = saltG;
        double share = 100 * saltG / (waterG + saltG);
        double top = saltG == 0 ? 0 : Brine.EUTECTIC_C;
        for (double t = COLDEST_C; t < top; t += 3) {
            addSolid(t);
        }
        addSolid(top);
        if (saltG == 0) {
            addBrine(0, 0);
            addBrine(0, WARMEST_C);
            return;
        }
        if (share <= Brine.EUTECTIC_SALT_PERCENT) {
            alongIceLine(share);
        } else {
            alongSaltLine(share);
        }
    }

    private void addSolid(double t) {
        double ice = waterG * PureWater.iceEnthalpyJPerG(t);
        add(ice + saltG * BrineHeat.SOLID_SALT_JPERGK * t, t, waterG, saltG);
    }

    private void alongIceLine(double share) {
        double step = Brine.EUTECTIC_SALT_PERCENT / LINE_STEPS;
        for (int n = LINE_STEPS; n >= 0 && n * step > share; n--) {
            addIceAndBrine(n * step, ICE_LINE[n]);
        }
        double t = Brine.freezingPointC(share);
        addBrine(share, t);
        warmBrine(share, t);
    }

    private void addIceAndBrine(double strength, double t) {
        double brine = 100 * saltG / strength;
        double ice = Math.max(0, waterG + saltG - brine);
        add(
                brine * BrineHeat.enthalpyJPerG(strength, t) + ice * PureWater.iceEnthalpyJPerG(t),
                t,
                ice,
                0);
    }

    private void alongSaltLine(double share) {
        for (double t = Brine.EUTECTIC_C; t < WARMEST_C; t += 0.5) {
            double strength = saltLinePercent(t);
            if (strength >= share) {
                warmBrine(share, t);
                return;
            }
            double brine = waterG / (1 - strength / 100);
            double loose = waterG + saltG - brine;
            add(
                    brine * BrineHeat.enthalpyJPerG(strength, t)
                            + loose * BrineHeat.SOLID_SALT_JPERGK * t,
                    t,
                    0,
                    loose);
        }
    }

    private static double saltLinePercent(double t) {
        double bend = 0.1;
        if (t < bend) {
            double along = (t - Brine.EUTECTIC_C) / (bend - Brine.EUTECTIC_C);
            return Brine.EUTECTIC_SALT_PERCENT + along * (26.3 - Brine.EUTECTIC_SALT_PERCENT);
        }
        return 26.3 + (t - bend) * 0.005;
    }

    private void warmBrine(double share, double from) {
        for (double t = from + 1; t < WARMEST_C; t += 5) {
            addBrine(share, t);
        }
        addBrine(share, WARMEST_C);
    }

    private void addBrine(double share, double t) {
        add((waterG + saltG) * BrineHeat.enthalpyJPerG(share, t), t, 0, 0);
    }

    private void add(double heatJ, double temperatureC, double iceG, double looseSaltG) {
        states.add(new State(heatJ, temperatureC, iceG, looseSaltG));
    }

    private static double[] iceLine() {
        double[] line = new double[LINE_STEPS + 1];
        for (int n = 0; n <= LINE_STEPS; n++) {
            line[n] = Brine.freezingPointC(Brine.EUTECTIC_SALT_PERCENT * n / LINE_STEPS);
        }
        return line;
    }

    /** Heat at which the last ice melts, J. */
    double heatWhenMeltedJ() {
        return states.stream().filter(one -> one.iceG <= 0).findFirst().orElseThrow().heatJ;
    }

    /** Heat at which a bath without ice reaches a temperature, J; infinite beyond the curve. */
    double heatWhenJ(double wantedC) {
        int n = states.size() - 1;
        if (wantedC >= states.get(n).temperatureC) {
            return Double.POSITIVE_INFINITY;
        }
        while (n > 1 && states.get(n - 1).temperatureC > wantedC) {
            n--;
        }
        State low = states.get(n - 1);
        State high = states.get(n);
        double share = (wantedC - low.temperatureC) / (high.temperatureC - low.temperatureC);
        return low.heatJ + share * (high.heatJ - low.heatJ);
    }

    /** The bath with some heat in it, J; the ends of the curve beyond them. */
    State at(double heatJ) {
        int n = 1;
        int end = states.size() - 1;
        while (n < end) {
            int middle = (n + end) >>> 1;
            if (states.get(middle).heatJ <= heatJ) {
                n = middle + 1;
            } else {
                end = middle;
            }
        }
        State low = states.get(n - 1);
        State high = states.get(n);
        double share = Math.max(0, Math.min(1, (heatJ - low.heatJ) / (high.heatJ - low.heatJ)));
        return new State(
                heatJ,
                low.temperatureC + share * (high.temperatureC - low.temperatureC),
                low.iceG + share * (high.iceG - low.iceG),
                low.looseSaltG + share * (high.looseSaltG - low.looseSaltG));
    }

    /** Heat, temperature, ice and undissolved salt. */
    record State(double heatJ, double temperatureC, double iceG, double looseSaltG) {}
}
