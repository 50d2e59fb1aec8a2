package coldwright.science.crystal;

import java.util.Arrays;

/** Edges of classes of crystals, and moving numbers from one set of them to another. */
final class PopulationRegrid {
    /** Largest share by which a cube may have changed for its root to be found from the old one. */
    private static final double NEAR = 0.05;

    private PopulationRegrid() {}

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
            cubes[j] = cube(radii[j]);
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

    /**
     * Numbers of the old classes in new classes that span them, both with rising edges, from a
     * density that is linear within each old class, with its slope limited so that no class turns
     * negative.
     */
    static double[] onto(double[] fresh, double[] edges, double[] numbers) {
        int size = numbers.length;
        double[] filled = new double[fresh.length - 1];
        int to = 0;
        for (int j = 0; j < size; j++) {
            double low = edges[j];
            double high = edges[j + 1];
            if (high <= low || numbers[j] == 0) {
                continue;
            }
            double slope = slope(edges, numbers, j);
            double density = numbers[j] / (high - low);
            double middle = (low + high) / 2;
            while (to > 0 && fresh[to] > low) {
                to--;
            }
            while (to < filled.length - 1 && fresh[to + 1] <= low) {
                to++;
            }
            int k = to;
            double from = low;
            while (from < high) {
                boolean last = k == filled.length - 1;
                double upTo = last ? high : Math.min(high, fresh[k + 1]);
                double at = (from + upTo) / 2;
                filled[k] += (upTo - from) * (density + slope * (at - middle));
                from = upTo;
                if (!last) {
                    k++;
                }
            }
        }
        return filled;
    }

    /**
     * Splits classes of crystals smaller than a radius that are wider than wanted, µm, each piece
     * with its share of the numbers.
     */
    static CrystalPopulation split(CrystalPopulation old, double upToUm, double widestUm) {
        int size = old.classes();
        int most = size * 2 + 64;
        double[] edges = new double[most + 1];
        double[] radii = new double[most + 1];
        double[] numbers = new double[most];
        int made = 0;
        for (int j = 0; j < size; j++) {
            double low = old.edgeRadiusUm(j);
            double width = old.edgeRadiusUm(j + 1) - low;
            int parts = 1;
            if (low < upToUm && width > widestUm) {
                int room = most - made - (size - j);
                parts = Math.max(1, Math.min(room, (int) Math.ceil(width / widestUm)));
            }
            double top = old.edge(j + 1);
            double span = top - old.edge(j);
            for (int i = 0; i < parts; i++) {
                double fromUm = low + width * i / parts;
                double from = i == 0 ? old.edge(j) : cube(fromUm);
                double upTo = i == parts - 1 ? top : cube(low + width * (i + 1) / parts);
                edges[made] = from;
                radii[made] = fromUm;
                numbers[made] = parts == 1 ? old.number(j) : old.number(j) * (upTo - from) / span;
                made++;
            }
        }
        edges[made] = old.edge(size);
        radii[made] = old.edgeRadiusUm(size);
        return new CrystalPopulation(
                Arrays.copyOf(edges, made + 1),
                Arrays.copyOf(radii, made + 1),
                Arrays.copyOf(numbers, made));
    }

    private static double cube(double x) {
        return x * x * x;
    }

    private static double slope(double[] edges, double[] numbers, int j) {
        if (j == 0 || j == numbers.length - 1) {
            return 0;
        }
        double left = steepness(edges, numbers, j - 1);
        double right = steepness(edges, numbers, j);
        if (left * right <= 0) {
            return 0;
        }
        double width = edges[j + 1] - edges[j];
        double most = 2 * numbers[j] / width / width;
        double mild = Math.min(Math.abs(left), Math.abs(right));
        return Math.copySign(Math.min(mild, most), left);
    }

    private static double steepness(double[] edges, double[] numbers, int j) {
        double a = numbers[j] / (edges[j + 1] - edges[j]);
        double b = numbers[j + 1] / (edges[j + 2] - edges[j + 1]);
        return (b - a) / ((edges[j + 2] - edges[j]) / 2);
    }
}
