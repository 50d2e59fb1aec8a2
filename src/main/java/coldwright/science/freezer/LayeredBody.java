package coldwright.science.freezer;

import coldwright.science.Require;
import coldwright.science.thermal.EnthalpyTable;

import java.util.Arrays;

/**
 * A body cut into layers from its middle to its surface, through which heat leaves while water
 * turns to ice.
 *
 * <p>Equation: ρ·∂h/∂t = x^(1−E)·∂/∂x(x^(E−1)·∂θ/∂x), with h enthalpy (J/g), θ conductivity summed
 * over temperature (W/m), x distance from the middle, E the dimension: 1 slab, 2 cylinder, 3
 * sphere, or a fraction for a shape between ({@link Shape}). At the surface the flow is U·(T −
 * T_out).
 *
 * <p>Method: finite volumes with a point in the middle and one on the surface, each step implicit
 * in enthalpy and solved by Newton's method on a three-band matrix; the step then ends with the
 * flows summed, so that heat is conserved. Unconditionally stable; first order in time, second in
 * space. Density and thickness are constant (ice swells by up to 9 %: left out); still liquid is
 * assumed not to flow.
 *
 * <p>Tested against the exact Stefan–Neumann solution and the series for a slab.
 */
public final class LayeredBody {
    private static final int MOST_ITERATIONS = 25;
    private static final double CLOSE_JPERG = 1e-4;

    private final EnthalpyTable table;
    private final int last;
    private final double[] enthalpy;
    private final double[] before;
    private final double[] flux;
    private final double[] upper;
    private final double[] right;
    private final double[] conductance;
    private final double[] grams;
    private final double surface;
    private final double whole;

    /**
     * A body, all of it liquid at 0 °C to begin with.
     *
     * @param table enthalpy, temperature, ice and conduction of its material
     * @param densityKgPerM3 density with its air, kg/m³
     * @param span half thickness and dimension
     * @param count number of layers, 4 to 2000
     */
    public LayeredBody(EnthalpyTable table, double densityKgPerM3, Span span, int count) {
        Require.positive("densityKgPerM3", densityKgPerM3, "kg/m³");
        Require.within("count", count, new Require.Range(4, 2000, "layers"));
        this.table = table;
        last = count;
        enthalpy = new double[count + 1];
        before = new double[count + 1];
        flux = new double[count + 1];
        upper = new double[count + 1];
        right = new double[count + 1];
        conductance = new double[count];
        grams = new double[count + 1];
        double e = span.dimension();
        double dx = span.halfThicknessM() / count;
        double inner = 0;
        for (int i = 0; i <= count; i++) {
            double outer = i == count ? span.halfThicknessM() : (i + 0.5) * dx;
            double volume = (Math.pow(outer, e) - Math.pow(inner, e)) / e;
            grams[i] = 1000 * densityKgPerM3 * volume;
            if (i < count) {
                conductance[i] = Math.pow(outer, e - 1) / dx;
            }
            inner = outer;
        }
        surface = Math.pow(span.halfThicknessM(), e - 1);
        whole = Arrays.stream(grams).sum();
    }

    /**
     * Half thickness and dimension of a body reduced to one direction.
     *
     * @param halfThicknessM shortest way from the middle to the surface, m
     * @param dimension 1 slab, 2 cylinder, 3 sphere, and between
     */
    public record Span(double halfThicknessM, double dimension) {
        public Span {
            Require.positive("halfThicknessM", halfThicknessM, "m");
            Require.within("dimension", dimension, new Require.Range(1, 9, ""));
        }
    }

    /**
     * Sets one enthalpy throughout the body.
     *
     * @param enthalpyJPerG J/g
     */
    public void fill(double enthalpyJPerG) {
        Arrays.fill(enthalpy, enthalpyJPerG);
    }

    /** Stirs the body: each layer gets the mean enthalpy. */
    public void mix() {
        fill(meanEnthalpyJPerG());
    }

    /**
     * Lets one step of time pass.
     *
     * @param seconds length of the step, s, more than zero
     * @return heat that left, J per g of the body
     */
    public double step(double seconds, Outside outside) {
        System.arraycopy(enthalpy, 0, before, 0, last + 1);
        for (int n = 0; n < MOST_ITERATIONS; n++) {
            if (iterate(seconds, outside) < CLOSE_JPERG) {
                break;
            }
        }
        flows(outside);
        double left = 0;
        for (int i = 0; i <= last; i++) {
            double change = seconds * flux[i] / grams[i];
            enthalpy[i] = before[i] + change;
            left -= change * grams[i];
        }
        return left / whole;
    }

    /** Calculates the heat flow into each layer at the present enthalpies, W per unit. */
    private void flows(Outside outside) {
        double theta = table.conductionWPerM(enthalpy[0]);
        double fromInside = 0;
        for (int i = 0; i < last; i++) {
            double next = table.conductionWPerM(enthalpy[i + 1]);
            double outward = conductance[i] * (theta - next);
            flux[i] = fromInside - outward;
            fromInside = outward;
            theta = next;
        }
        double t = table.temperatureC(enthalpy[last]);
        flux[last] =
                fromInside - surface * outside.coefficientWPerM2K() * (t - outside.temperatureC());
    }

    /** Makes one Newton step; returns the largest change, J/g. */
    private double iterate(double seconds, Outside outside) {
        flows(outside);
        double largest = 0;
        double lowerOf = 0;
        for (int i = 0; i <= last; i++) {
            double held = grams[i] / seconds;
            double slope = table.conductionPerJPerG(enthalpy[i]);
            double out = i < last ? conductance[i] : 0;
            double in = i > 0 ? conductance[i - 1] : 0;
            double diagonal = held + (in + out) * slope;
            if (i == last) {
                diagonal +=
                        surface * outside.coefficientWPerM2K() * table.kelvinPerJPerG(enthalpy[i]);
            }
            double residual = flux[i] - held * (enthalpy[i] - before[i]);
            if (i > 0) {
                diagonal -= lowerOf * upper[i - 1];
                residual -= lowerOf * right[i - 1];
            }
            upper[i] = i < last ? -out * table.conductionPerJPerG(enthalpy[i + 1]) / diagonal : 0;
            right[i] = residual / diagonal;
            lowerOf = -out * slope;
        }
        double change = 0;
        for (int i = last; i >= 0; i--) {
            change = right[i] - upper[i] * change;
            enthalpy[i] += change;
            largest = Math.max(largest, Math.abs(change));
        }
        return largest;
    }

    /** {@return mean enthalpy, J/g} */
    public double meanEnthalpyJPerG() {
        double sum = 0;
        for (int i = 0; i <= last; i++) {
            sum += grams[i] * enthalpy[i];
        }
        return sum / whole;
    }

    /** {@return mean ice, % of the water} */
    public double meanIcePercent() {
        double sum = 0;
        for (int i = 0; i <= last; i++) {
            sum += grams[i] * table.icePercent(enthalpy[i]);
        }
        return Math.min(100, sum / whole);
    }

    /** {@return temperature in the middle, °C} */
    public double middleC() {
        return table.temperatureC(enthalpy[0]);
    }

    /** {@return temperatures from the middle to the surface, °C, one more than there are layers} */
    double[] profileC() {
        return Arrays.stream(enthalpy).map(table::temperatureC).toArray();
    }

    /**
     * {@return ice at a depth, % of the water}
     *
     * @param layer from 0 in the middle to the count of layers on the surface
     */
    public double icePercent(int layer) {
        return table.icePercent(enthalpy[layer]);
    }

    /**
     * The conditions outside a surface.
     *
     * @param coefficientWPerM2K wall and film together, W/(m²·K), zero for none
     * @param temperatureC temperature outside, °C
     */
    public record Outside(double coefficientWPerM2K, double temperatureC) {
        public Outside {
            Require.notNegative("coefficientWPerM2K", coefficientWPerM2K, "W/(m²·K)");
        }
    }
}
