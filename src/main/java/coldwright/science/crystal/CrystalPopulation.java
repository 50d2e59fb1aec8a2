package coldwright.science.crystal;

import java.util.Arrays;

/**
 * Number of crystals of each size: the mutable state of the population balance.
 *
 * <p>Classes are bounded by edges in u = R³ (µm³). Within a class the crystals are spread evenly in
 * u. Growth moves the edges and keeps the numbers (method of characteristics), so that nothing
 * smears; {@link #refine} sets new edges when few classes are left. The sum of R³ over all crystals
 * is ice volume × 3/(4π).
 *
 * <p>Growth law: du/dt = 3A(S R − 1)(1 + βR). A combines diffusion and surface energy (µm³/s), S is
 * the undercooling of the liquid (1/µm; at equilibrium it is one over the radius that neither grows
 * nor melts), β is the screening by neighbours (1/µm, zero for crystals far apart). S is solved in
 * every step so that the ice volume follows the freezing curve: conserved to rounding.
 */
final class CrystalPopulation {
    /** Classes after refining. */
    static final int CLASSES = 160;

    /** Fewest classes before new edges are set. */
    private static final int FEWEST = 70;

    /** Share of the log-normal seeds after which the rest is left out. */
    private static final double SEEDS_SPENT = 1 - 1e-6;

    private double[] edges;

    /** Cube roots of the edges. */
    private double[] radii;

    private double[] numbers;

    /** Sum of R³, or not a number until it is asked for again. */
    private double sumCubes = Double.NaN;

    /** Crystals in classes, by the edges, their cube roots, one more than there are classes. */
    CrystalPopulation(double[] edges, double[] radii, double[] numbers) {
        this.edges = edges;
        this.radii = radii;
        this.numbers = numbers;
    }

    /** Log-normal sizes about a median radius, scaled to a sum of R³. */
    static CrystalPopulation logNormal(double medianUm, double logSpread, double sumCubes) {
        double most = medianUm * Math.exp(5 * logSpread);
        double[] radii = PopulationRegrid.evenUpTo(CLASSES, most);
        CrystalPopulation seeds =
                new CrystalPopulation(PopulationRegrid.cubes(radii), radii, new double[CLASSES]);
        seeds.seed(medianUm, logSpread, sumCubes);
        return seeds;
    }

    CrystalPopulation copy() {
        return new CrystalPopulation(edges.clone(), radii.clone(), numbers.clone());
    }

    int classes() {
        return numbers.length;
    }

    double edge(int j) {
        return edges[j];
    }

    double edgeRadiusUm(int j) {
        return radii[j];
    }

    double number(int j) {
        return numbers[j];
    }

    /** Share of a class above a cube of the radius. */
    double partAbove(int j, double limitCube) {
        double low = edges[j];
        double high = edges[j + 1];
        if (limitCube <= low) {
            return 1;
        }
        return limitCube >= high ? 0 : (high - limitCube) / (high - low);
    }

    double count() {
        double sum = 0;
        for (double number : numbers) {
            sum += number;
        }
        return sum;
    }

    double sumCubes() {
        if (Double.isNaN(sumCubes)) {
            sumCubes = IceBalance.twice(numbers, edges) / 2;
        }
        return sumCubes;
    }

    /** Sum of Rᵖ over all crystals, each class integrated exactly. */
    double sumPowers(double power) {
        double sum = 0;
        double e = power / 3 + 1;
        for (int j = 0; j < numbers.length; j++) {
            double span = edges[j + 1] - edges[j];
            sum +=
                    numbers[j]
                            * (span > 1e-9 * edges[j + 1]
                                    ? (Math.pow(edges[j + 1], e) - Math.pow(edges[j], e)) / e / span
                                    : Math.pow(edges[j + 1], power / 3));
        }
        return sum;
    }

    /** Sum of R over all crystals, µm, edges averaged: quick. */
    double sumRadii() {
        return IceBalance.twice(numbers, radii) / 2;
    }

    double meanRadiusUm() {
        return sumPowers(1) / count();
    }

    /** Adds small crystals, log-normal in radius, whose volume is exactly a given sum of R³. */
    void seed(double medianUm, double logSpread, double sumCubes) {
        split(medianUm);
        this.sumCubes = Double.NaN;
        int size = numbers.length;
        double[] share = new double[size];
        double cubes = 0;
        double below = 0;
        int used = 0;
        while (used < size && below < SEEDS_SPENT) {
            double upTo =
                    NormalDistributionTable.below(
                            Math.log(edgeRadiusUm(used + 1) / medianUm) / logSpread);
            share[used] = upTo - below;
            cubes += share[used] * (edges[used] + edges[used + 1]) / 2;
            below = upTo;
            used++;
        }
        if (cubes <= 0) {
            share[size - 1] = 1;
            cubes = (edges[size - 1] + edges[size]) / 2;
            used = size;
        }
        for (int j = 0; j < used; j++) {
            numbers[j] += share[j] * sumCubes / cubes;
        }
    }

    /**
     * Lets every crystal grow or melt for one short step, with A·dt in µm³ and β in 1/µm, so that
     * the sum of R³ becomes the wanted one, µm³; returns S, 1/µm.
     */
    double grow(double reachUm3, double screeningPerUm, double wantedSumCubes) {
        double[] rest = new double[edges.length];
        double[] rise = new double[edges.length];
        for (int j = 0; j < edges.length; j++) {
            double pull = 3 * reachUm3 * (1 + screeningPerUm * radii[j]);
            rest[j] = edges[j] - pull;
            rise[j] = pull * radii[j];
        }
        double s = IceBalance.undercooling(numbers, new double[][] {rest, rise}, wantedSumCubes);
        move(s, rest, rise);
        scaleTo(wantedSumCubes);
        return s;
    }

    /**
     * Breaks a share of the crystals of a reference radius, µm, in two, anywhere with the same
     * chance; the share of others grows with their volume. Ice volume is kept.
     */
    void breakUp(double shareAtReference, double referenceUm) {
        double before = sumCubes();
        sumCubes = Double.NaN;
        double reference = Math.pow(referenceUm, 3);
        double piecesPerSpan = 0;
        for (int j = numbers.length - 1; j >= 0; j--) {
            double mean = (edges[j] + edges[j + 1]) / 2;
            double share = -Math.expm1(-shareAtReference * mean / reference);
            double broken = numbers[j] * share;
            double span = edges[j + 1] - edges[j];
            numbers[j] += piecesPerSpan * span + broken / mean * span - broken;
            piecesPerSpan += 2 * broken / mean;
        }
        scaleTo(before);
    }

    /** Sets new edges, even in radius, when few classes are left; keeps number and volume. */
    void refine() {
        if (numbers.length < FEWEST || numbers.length > 2 * CLASSES) {
            relay();
        }
    }

    private void move(double s, double[] rest, double[] rise) {
        int size = numbers.length;
        sumCubes = Double.NaN;
        for (int j = 0; j <= size; j++) {
            edges[j] = rest[j] + s * rise[j];
            radii[j] = PopulationRegrid.rootNear(edges[j], radii[j]);
        }
        int from = 0;
        while (from < size - 1 && edges[from + 1] <= 0) {
            from++;
        }
        if (edges[from] < 0) {
            numbers[from] *= Math.max(edges[from + 1], 0) / (edges[from + 1] - edges[from]);
            edges[from] = 0;
            radii[from] = 0;
        }
        if (from > 0) {
            edges = Arrays.copyOfRange(edges, from, size + 1);
            radii = Arrays.copyOfRange(radii, from, size + 1);
            numbers = Arrays.copyOfRange(numbers, from, size);
        }
    }

    /** Splits wide classes of small crystals to make room for seeds; changes nothing else. */
    private void split(double medianUm) {
        if (!fineBelow(3 * medianUm, 0.4 * medianUm)) {
            CrystalPopulation finer = PopulationRegrid.split(this, 3 * medianUm, medianUm / 4);
            edges = finer.edges;
            radii = finer.radii;
            numbers = finer.numbers;
        }
    }

    private boolean fineBelow(double radiusUm, double widest) {
        for (int j = 0; j < numbers.length && radii[j] < radiusUm; j++) {
            if (radii[j + 1] - radii[j] > widest) {
                return false;
            }
        }
        return true;
    }

    /** Sets new edges, even in radius. */
    void relay() {
        double cubes = sumCubes();
        double[] even = PopulationRegrid.evenUpTo(CLASSES, radii[numbers.length]);
        double[] fresh = PopulationRegrid.cubes(even);
        numbers = PopulationRegrid.onto(fresh, edges, numbers);
        sumCubes = Double.NaN;
        edges = fresh;
        radii = even;
        scaleTo(cubes);
    }

    private void scaleTo(double wantedSumCubes) {
        double factor = wantedSumCubes / sumCubes();
        double root = Math.cbrt(factor);
        for (int j = 0; j < edges.length; j++) {
            edges[j] *= factor;
            radii[j] *= root;
        }
        sumCubes = wantedSumCubes;
    }
}
