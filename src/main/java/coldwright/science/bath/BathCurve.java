package coldwright.science.bath;

import coldwright.science.Sorted;
import coldwright.science.freezing.Brine;
import coldwright.science.thermal.PureWater;

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
    private static final int MOST = 400;

    private final double waterG;
    private final double saltG;
    private final double[] heatJ = new double[MOST];
    private final double[] temperatureC = new double[MOST];
    private final double[] iceG = new double[MOST];
    private final double[] looseSaltG = new double[MOST];
    private int size;

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

    private void add(double heat, double t, double ice, double loose) {
        heatJ[size] = heat;
        temperatureC[size] = t;
        iceG[size] = ice;
        looseSaltG[size] = loose;
        size++;
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
        int n = 0;
        while (iceG[n] > 0) {
            n++;
        }
        return heatJ[n];
    }

    /** Heat at which a bath without ice reaches a temperature, J; infinite beyond the curve. */
    double heatWhenJ(double wantedC) {
        int n = size - 1;
        if (wantedC >= temperatureC[n]) {
            return Double.POSITIVE_INFINITY;
        }
        while (n > 0 && temperatureC[n - 1] > wantedC) {
            n--;
        }
        double share = (wantedC - temperatureC[n - 1]) / (temperatureC[n] - temperatureC[n - 1]);
        return heatJ[n - 1] + share * (heatJ[n] - heatJ[n - 1]);
    }

    double temperatureC(double heat) {
        return between(temperatureC, heat);
    }

    double iceG(double heat) {
        return between(iceG, heat);
    }

    double looseSaltG(double heat) {
        return between(looseSaltG, heat);
    }

    private double between(double[] values, double heat) {
        int n = Sorted.place(heatJ, size, heat);
        double share = (heat - heatJ[n]) / (heatJ[n + 1] - heatJ[n]);
        return values[n] + Math.max(0, Math.min(1, share)) * (values[n + 1] - values[n]);
    }
}
