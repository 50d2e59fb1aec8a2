package coldwright.science.crystal;

import java.util.Arrays;

/**
 * Temperature against time.
 *
 * <p>A batch that cools against a fixed cold loses heat in proportion to the difference; with the
 * heat content from the freezing curve this gives the shape of the path (a long stay just below the
 * freezing point). The given total time gives its scale. Heat capacity 3.3 J/(g·K) liquid and 1.88
 * frozen (bulk values for ice cream, seen), latent heat 333.4 J/g.
 */
final class CoolingPath {
    private static final int POINTS = 120;
    private static final double RAMP_S = 3600;
    private static final double CP_LIQUID = 3.3;
    private static final double CP_FROZEN = 1.88;

    private final double[] seconds;
    private final double[] temperatureC;

    private CoolingPath(double[] seconds, double[] temperatureC) {
        this.seconds = seconds;
        this.temperatureC = temperatureC;
    }

    /** A path along given points, times rising. */
    static CoolingPath along(double[] seconds, double[] temperatureC) {
        return new CoolingPath(seconds.clone(), temperatureC.clone());
    }

    /** The same temperature all the time. */
    static CoolingPath hold(double temperatureC, double seconds) {
        return along(new double[] {0, seconds}, new double[] {temperatureC, temperatureC});
    }

    /** Cooling or warming, °C, in a time, s, against fixed surroundings beyond the last one. */
    static CoolingPath against(
            FrozenMixTable table, double fromC, double toC, double aroundC, double totalS) {
        CoolingPath path = atUnitConductance(table, fromC, toC, aroundC);
        double effort = path.totalS();
        return effort > 0 ? path.faster(totalS / effort) : path;
    }

    /** Relative time of cooling or warming, to compare one cold with another; all in °C. */
    static double effort(FrozenMixTable table, double fromC, double toC, double aroundC) {
        return atUnitConductance(table, fromC, toC, aroundC).totalS();
    }

    private static CoolingPath atUnitConductance(
            FrozenMixTable table, double fromC, double toC, double aroundC) {
        double[] t = new double[POINTS + 1];
        double[] c = new double[POINTS + 1];
        c[0] = fromC;
        for (int k = 1; k <= POINTS; k++) {
            c[k] = fromC + (toC - fromC) * k / POINTS;
            double heat = heat(table, c[k - 1]) - heat(table, c[k]);
            double drive = (c[k] + c[k - 1]) / 2 - aroundC;
            t[k] = t[k - 1] + Math.abs(heat / drive);
        }
        return new CoolingPath(t, c);
    }

    /** A temperature that varies about a mean, once in each period. */
    static CoolingPath swing(double meanC, double swingC, double totalS, double periodS) {
        int perPeriod = 16;
        int points = (int) Math.max(2, Math.ceil(totalS / periodS * perPeriod));
        double[] t = new double[points + 1];
        double[] c = new double[points + 1];
        for (int k = 0; k <= points; k++) {
            t[k] = totalS * k / points;
            c[k] = meanC + swingC * Math.sin(2 * Math.PI * t[k] / periodS);
        }
        c[points] = meanC;
        return new CoolingPath(t, c);
    }

    /** Linear warming or cooling in an hour; nothing if it is there already. */
    static CoolingPath ramp(double fromC, double toC) {
        return along(new double[] {0, RAMP_S}, new double[] {fromC, toC});
    }

    /** Half a minute at one temperature, in steps of a second: 16 of them in a period. */
    static CoolingPath blending(double temperatureC) {
        return swing(temperatureC, 0, 30, 16);
    }

    /** The same path in a fraction of the time. */
    CoolingPath faster(double timeShare) {
        double[] t = seconds.clone();
        for (int k = 0; k < t.length; k++) {
            t[k] *= timeShare;
        }
        return new CoolingPath(t, temperatureC);
    }

    double totalS() {
        return seconds[seconds.length - 1];
    }

    double endC() {
        return temperatureC[temperatureC.length - 1];
    }

    double at(double s) {
        int i = Arrays.binarySearch(seconds, s);
        if (i >= 0) {
            return temperatureC[i];
        }
        int k = -i - 1;
        if (k == 0) {
            return temperatureC[0];
        }
        if (k >= seconds.length) {
            return endC();
        }
        double part = (s - seconds[k - 1]) / (seconds[k] - seconds[k - 1]);
        return temperatureC[k - 1] + part * (temperatureC[k] - temperatureC[k - 1]);
    }

    /** The next point of the path after a time, so that no step jumps over a bend. */
    double nextBendS(double s) {
        int i = Arrays.binarySearch(seconds, s);
        int k = i >= 0 ? i + 1 : -i - 1;
        return k < seconds.length ? seconds[k] : totalS();
    }

    private static double heat(FrozenMixTable frozenMixTable, double temperatureC) {
        double iceG = frozenMixTable.iceMlPerG(temperatureC) * GibbsThomson.ICE_KG_PER_M3 / 1000;
        double frozen = frozenMixTable.icePercent(temperatureC) / 100;
        double cp = CP_LIQUID - (CP_LIQUID - CP_FROZEN) * frozen;
        return cp * temperatureC - GibbsThomson.MELTING_J_PER_G * iceG;
    }
}
