package coldwright.science.crystal;

/** Radii of the edges of classes of crystals, and their cubes. */
final class RadiusClasses {
    /** Largest share by which a cube may have changed for its root to be found from the old one. */
    private static final double NEAR = 0.05;

    private RadiusClasses() {}

    /** Edges of a number of classes, even in radius, µm; one more than classes. */
    static double[] evenUpTo(int classes, double mostUm) {
        double[] radii = new double[classes + 1];
        for (int j = 0; j <= classes; j++) {
            radii[j] = mostUm * j / classes;
        }
        return radii;
    }

    /** Their cubes, µm³. */
    static double[] cubes(double[] radii) {
        double[] cubes = new double[radii.length];
        for (int j = 0; j < cubes.length; j++) {
            cubes[j] = radii[j] * radii[j] * radii[j];
        }
        return cubes;
    }

    /** Cube root by two Halley iterations from a nearby root, exact to rounding. */
    static double rootNear(double cube, double near) {
        double from = near * near * near;
        if (from <= 0 || Math.abs(cube - from) > NEAR * from) {
            return Math.cbrt(cube);
        }
        double nearer = near * (from + 2 * cube) / (2 * from + cube);
        double to = nearer * nearer * nearer;
        return nearer * (to + 2 * cube) / (2 * to + cube);
    }
}
