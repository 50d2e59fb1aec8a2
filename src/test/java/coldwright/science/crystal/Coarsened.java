package coldwright.science.crystal;

/** Crowds that have coarsened far apart from each other, with unit growth constant. */
final class Coarsened {
    private static final double STEP_SHARE = 0.02;

    private Coarsened() {}

    static CrystalPopulation tenfold(double spread) {
        return grown(spread, 10);
    }

    static CrystalPopulation thirtyfold(double spread) {
        return grown(spread, 30);
    }

    private static CrystalPopulation grown(double spread, double times) {
        CrystalPopulation crowd = CrystalPopulation.logNormal(10, spread, 1e6);
        grow(crowd, times * crowd.meanRadiusUm());
        return crowd;
    }

    /** Grows to a mean radius. @return the time it took, s */
    static double grow(CrystalPopulation crowd, double meanUm) {
        double cubes = crowd.sumCubes();
        double seconds = 0;
        while (crowd.sumRadii() / crowd.count() < meanUm) {
            double step = STEP_SHARE * crowd.sumCubes() / crowd.count() / 3;
            crowd.grow(step, 0, cubes);
            crowd.refine();
            seconds += step;
        }
        return seconds;
    }
}
