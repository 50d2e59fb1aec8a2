package coldwright.science.thermal;

import coldwright.science.Require;

import java.util.ArrayList;
import java.util.List;

/**
 * Temperature, ice and conduction as functions of enthalpy, tabulated in equal steps so that each
 * is one look-up.
 *
 * <p>A heat balance conserves enthalpy, not temperature; and at a melting point temperature is
 * constant while enthalpy changes. Conduction is tabulated as its integral over temperature (the
 * Kirchhoff transform θ, W/m), so that the heat flow between two points is the difference of θ over
 * their distance, whatever the conductivity between them.
 *
 * <p>Error: the curve is linear between {@value #STEPS} steps; sharp corners are cut by at most one
 * step (about 0.3 J/g for a mix).
 */
public final class EnthalpyTable {
    static final int STEPS = 2048;

    private final double lowest;
    private final double perStep;
    private final double[] temperatureC = new double[STEPS + 1];
    private final double[] conduction = new double[STEPS + 1];
    private final double[] icePercent = new double[STEPS + 1];

    private EnthalpyTable(double lowest, double perStep) {
        this.lowest = lowest;
        this.perStep = perStep;
    }

    /** Tabulates two points or more joined by lines; enthalpy rises, temperature never falls. */
    static EnthalpyTable through(List<Point> points) {
        int last = points.size() - 1;
        double lowest = points.get(0).enthalpyJPerG;
        EnthalpyTable table =
                new EnthalpyTable(lowest, (points.get(last).enthalpyJPerG - lowest) / STEPS);
        int at = 1;
        double theta = 0;
        for (int n = 0; n <= STEPS; n++) {
            double enthalpy = lowest + n * table.perStep;
            while (at < last && points.get(at).enthalpyJPerG < enthalpy) {
                theta += points.get(at - 1).conductionWPerMTo(points.get(at));
                at++;
            }
            Point low = points.get(at - 1);
            Point high = points.get(at);
            double span = high.enthalpyJPerG - low.enthalpyJPerG;
            double share = Math.min(1, (enthalpy - low.enthalpyJPerG) / span);
            table.temperatureC[n] = between(low.temperatureC, high.temperatureC, share);
            table.conduction[n] = between(theta, theta + low.conductionWPerMTo(high), share);
            table.icePercent[n] = between(low.icePercent, high.icePercent, share);
        }
        return table;
    }

    private static double between(double low, double high, double share) {
        return low + share * (high - low);
    }

    /** A point of a curve: temperature, enthalpy, conductivity, and ice, % of the water. */
    record Point(
            double temperatureC,
            double enthalpyJPerG,
            double conductivityWPerMK,
            double icePercent) {
        private double conductionWPerMTo(Point next) {
            return 0.5
                    * (next.conductivityWPerMK + conductivityWPerMK)
                    * (next.temperatureC - temperatureC);
        }
    }

    /**
     * A pure substance that melts at one temperature, with constant properties.
     *
     * @param meltingC melting point, °C
     * @param latentJPerG heat of melting, J/g
     * @return its table from 60 °C below the melting point to 60 °C above; zero enthalpy is the
     *     liquid at the melting point
     */
    public static EnthalpyTable pure(
            Phase solid, Phase liquid, double meltingC, double latentJPerG) {
        Require.notNegative("latentJPerG", latentJPerG, "J/g");
        double span = 60;
        double belowJPerG = -latentJPerG - span * solid.heatCapacityJPerGK();
        double aboveJPerG = span * liquid.heatCapacityJPerGK();
        List<Point> points = new ArrayList<>();
        points.add(new Point(meltingC - span, belowJPerG, solid.conductivityWPerMK(), 100));
        points.add(new Point(meltingC, -latentJPerG, solid.conductivityWPerMK(), 100));
        if (latentJPerG > 0) {
            points.add(new Point(meltingC, 0, liquid.conductivityWPerMK(), 0));
        }
        points.add(new Point(meltingC + span, aboveJPerG, liquid.conductivityWPerMK(), 0));
        return through(points);
    }

    /**
     * {@return temperature at an enthalpy, °C}
     *
     * @param enthalpyJPerG enthalpy, J/g
     */
    public double temperatureC(double enthalpyJPerG) {
        return at(temperatureC, enthalpyJPerG);
    }

    /**
     * {@return slope of temperature against enthalpy: the inverse of the apparent heat capacity,
     * K·g/J, zero at a melting point}
     *
     * @param enthalpyJPerG enthalpy, J/g
     */
    public double kelvinPerJPerG(double enthalpyJPerG) {
        return slope(temperatureC, enthalpyJPerG);
    }

    /**
     * {@return conductivity integrated over temperature up to the temperature at an enthalpy, W/m,
     * from an arbitrary zero}
     *
     * @param enthalpyJPerG enthalpy, J/g
     */
    public double conductionWPerM(double enthalpyJPerG) {
        return at(conduction, enthalpyJPerG);
    }

    /**
     * {@return slope of {@link #conductionWPerM} against enthalpy, W/m per J/g}
     *
     * @param enthalpyJPerG enthalpy, J/g
     */
    public double conductionPerJPerG(double enthalpyJPerG) {
        return slope(conduction, enthalpyJPerG);
    }

    /**
     * {@return ice at an enthalpy, % of the water}
     *
     * @param enthalpyJPerG enthalpy, J/g
     */
    public double icePercent(double enthalpyJPerG) {
        return Math.max(0, Math.min(100, at(icePercent, enthalpyJPerG)));
    }

    /**
     * {@return enthalpy at a temperature; at a melting point the liquid's, J/g}
     *
     * @param wantedC temperature, °C, within the table
     * @throws IllegalArgumentException if the table does not reach that far
     */
    public double enthalpyJPerG(double wantedC) {
        Require.within("temperatureC", wantedC, new Require.Range(coldestC(), warmestC(), "°C"));
        return enthalpyWhere(temperatureC, wantedC, 1);
    }

    /**
     * {@return enthalpy at a share of ice, on cooling, J/g, or not a number if the table ends
     * before that much is ice}
     *
     * @param wantedPercent ice, % of the water, more than zero
     */
    public double enthalpyAtIceJPerG(double wantedPercent) {
        if (icePercent[0] < wantedPercent) {
            return Double.NaN;
        }
        return enthalpyWhere(icePercent, wantedPercent, -1);
    }

    private double enthalpyWhere(double[] values, double wanted, int sign) {
        int low = 0;
        int high = STEPS;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (sign * values[middle] <= sign * wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double span = values[high] - values[low];
        double share = span == 0 ? 1 : Math.max(0, Math.min(1, (wanted - values[low]) / span));
        return lowest + (low + share) * perStep;
    }

    /** {@return lowest temperature of the table, °C} */
    public double coldestC() {
        return temperatureC[0];
    }

    /** {@return highest temperature of the table, °C} */
    public double warmestC() {
        return temperatureC[STEPS];
    }

    private int step(double enthalpyJPerG) {
        int n = (int) ((enthalpyJPerG - lowest) / perStep);
        return n < 0 ? 0 : Math.min(n, STEPS - 1);
    }

    private double at(double[] values, double enthalpyJPerG) {
        int n = step(enthalpyJPerG);
        double share = (enthalpyJPerG - lowest) / perStep - n;
        return values[n] + share * (values[n + 1] - values[n]);
    }

    private double slope(double[] values, double enthalpyJPerG) {
        int n = step(enthalpyJPerG);
        return (values[n + 1] - values[n]) / perStep;
    }
}
