package coldwright.science.freezer;

import coldwright.science.Require;

import java.util.Arrays;

/**
 * The shape of a batch, reduced to one direction of heat flow.
 *
 * <p>Equation: the dimension E is how many times longer a slab of the same least half thickness L
 * would take. It follows from steady heat made evenly in the body and leaving through the film: E =
 * u_slab/u_body with ∇²u = −1, −∂u/∂n = (h/k)·u, u in the middle. For slab, infinite cylinder and
 * sphere that is 1, 2, 3; for a tub, bar or box it depends on the Biot number h·L/k and goes to
 * L·surface/volume as that goes to zero.
 *
 * <p>Source: the idea of a geometric factor from the analytic solution is that of M. M. Hossain, D.
 * J. Cleland and A. C. Cleland, Int. J. Refrig. 15 (1992), named in ASHRAE Handbook, Refrigeration,
 * "Cooling and freezing times of foods" (from memory); the series here are derived from the
 * equation above and tested against finite differences. E at Bi → 0 agrees with Lin et al. 1996, 1
 * + 1/β₁ + 1/β₂ (same chapter, read).
 *
 * <p>Accuracy of the reduction, against a two-dimensional simulation of tubs from 160 × 50 to 60 ×
 * 150 mm: freezing times within 2 % in still air (Bi 0.15 to 0.26), 5 % in moving air, 10 % in
 * stirred brine (Bi 6 to 11). With E and L alone they would be 3 to 8, 24 and 49 % too long.
 */
public final class Shape {
    private static final int TERMS = 40;
    private static final Require.Range SIZE = new Require.Range(1, 2000, "mm");

    private final boolean round;

    /** Of a tub its radius and half height; else half the sides, rising, infinite for no end. */
    private final double[] halvesM;

    private Shape(boolean round, double... halvesM) {
        this.round = round;
        this.halvesM = halvesM;
    }

    /**
     * A flat body cooled on both faces, edges left out.
     *
     * @param thicknessMm whole thickness, mm, 1 to 2000
     */
    public static Shape slab(double thicknessMm) {
        double infinite = Double.POSITIVE_INFINITY;
        return new Shape(false, half("thicknessMm", thicknessMm), infinite, infinite);
    }

    /**
     * A round tub, cooled all round.
     *
     * @param diameterMm diameter, mm, 1 to 2000
     * @param heightMm height of the content, mm, 1 to 2000
     */
    public static Shape tub(double diameterMm, double heightMm) {
        return new Shape(true, half("diameterMm", diameterMm), half("heightMm", heightMm));
    }

    /**
     * A long bar, ends left out; {@link #ofLength} makes a box of it.
     *
     * @param widthMm width, mm, 1 to 2000
     * @param heightMm height, mm, 1 to 2000
     */
    public static Shape bar(double widthMm, double heightMm) {
        double one = half("widthMm", widthMm);
        double other = half("heightMm", heightMm);
        return new Shape(
                false, Math.min(one, other), Math.max(one, other), Double.POSITIVE_INFINITY);
    }

    /**
     * A box: a bar cut to a length.
     *
     * @param lengthMm length, mm, 1 to 2000
     * @throws IllegalStateException if this has an end on all sides
     */
    public Shape ofLength(double lengthMm) {
        if (round || Double.isFinite(halvesM[2])) {
            throw new IllegalStateException(
                    "%s has its length already; start from Shape.bar".formatted(this));
        }
        double[] sides = {halvesM[0], halvesM[1], half("lengthMm", lengthMm)};
        Arrays.sort(sides);
        return new Shape(false, sides);
    }

    private static double half(String name, double mm) {
        return Require.within(name, mm, SIZE) / 2000;
    }

    /** {@return shortest way from the middle to the surface, m} */
    public double halfThicknessM() {
        return round ? Math.min(halvesM[0], halvesM[1]) : halvesM[0];
    }

    /** {@return surface that is cooled, by volume, m² per m³} */
    public double surfacePerVolumePerM() {
        return round
                ? 2 / halvesM[0] + 1 / halvesM[1]
                : Arrays.stream(halvesM).map(half -> 1 / half).sum();
    }

    /** {@return volume, L; infinite if the shape has no end} */
    public double volumeL() {
        return round
                ? 2000 * Math.PI * halvesM[0] * halvesM[0] * halvesM[1]
                : 8000 * halvesM[0] * halvesM[1] * halvesM[2];
    }

    /**
     * {@return the dimension E, 1 for a slab to 3 for a cube}
     *
     * @param biot outside against inside conduction, h·L/k, more than zero
     */
    public double dimension(double biot) {
        Require.positive("biot", biot, "");
        if (Double.isInfinite(halvesM[1])) {
            return 1;
        }
        double l = halfThicknessM();
        double middle = round ? tubMiddle(biot / l) : boxMiddle(biot / l);
        return Math.min(3, Math.max(1, l * l * (0.5 + 1 / biot) / middle));
    }

    /**
     * {@return the equivalent body with one direction of heat flow}
     *
     * @param filmOverConductivityPerM h/k, 1/m, more than zero
     */
    public LayeredBody.Span span(double filmOverConductivityPerM) {
        double l = halfThicknessM();
        double biot = l * Require.positive("h/k", filmOverConductivityPerM, "1/m");
        double middle = l * l * (0.5 + 1 / biot) / dimension(biot);
        double perM = surfacePerVolumePerM();
        double depth = 2 * perM * (middle - 1 / (perM * filmOverConductivityPerM));
        return new LayeredBody.Span(depth, Math.max(1, depth * perM));
    }

    /** u in the middle of a tub, m²; c is h/k in 1/m. */
    private double tubMiddle(double c) {
        double radius = halvesM[0];
        double z = halvesM[1];
        double u = z * z / 2 + z / c;
        for (int n = 0; n < TERMS; n++) {
            double beta = SlabSeries.root(c * z, n);
            double lambda = beta / z;
            double[] bessel = bessel(lambda * radius);
            u -= weight(beta) / (lambda * lambda) / (bessel[0] + lambda / c * bessel[1]);
        }
        return u;
    }

    /** u in the middle of a bar or box, m²; c is h/k in 1/m. */
    private double boxMiddle(double c) {
        double a = halvesM[0];
        double b = halvesM[1];
        double u = a * a / 2 + a / c;
        for (int n = 0; n < TERMS; n++) {
            double beta = SlabSeries.root(c * a, n);
            double lambda = beta / a;
            u -= weight(beta) / (lambda * lambda) / fin(lambda, b, c);
            for (int m = 0; Double.isFinite(halvesM[2]) && m < TERMS; m++) {
                double other = SlabSeries.root(c * b, m);
                double kappa = Math.hypot(lambda, other / b);
                double share = weight(beta) * weight(other) / (kappa * kappa);
                u -= share / fin(kappa, halvesM[2], c);
                if (kappa * halvesM[2] > 40) {
                    break;
                }
            }
            if (lambda * b > 40) {
                break;
            }
        }
        return u;
    }

    private static double weight(double beta) {
        return 2 * Math.sin(beta) / (beta + Math.sin(beta) * Math.cos(beta));
    }

    private static double fin(double lambda, double half, double c) {
        return Math.cosh(lambda * half) + lambda / c * Math.sinh(lambda * half);
    }

    /** I₀ and I₁ by their series. */
    private static double[] bessel(double x) {
        double quarter = x * x / 4;
        double zero = 1;
        double one = 1;
        double termZero = 1;
        double termOne = 1;
        for (int k = 1; k < 2000 && termZero > 1e-17 * zero && zero < 1e300; k++) {
            termZero *= quarter / ((double) k * k);
            termOne *= quarter / (k * (k + 1.0));
            zero += termZero;
            one += termOne;
        }
        return new double[] {zero, one * x / 2};
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(round ? "tub" : "box");
        for (double half : halvesM) {
            text.append(' ').append(Require.format(2000 * half)).append(" mm");
        }
        return text.toString();
    }
}
