package coldwright.science.crystal;

import coldwright.science.Band;

import java.util.ArrayList;
import java.util.List;

/**
 * The crystal sizes at one moment. Sizes are diameters of spheres of the same volume.
 *
 * @param meanUm mean diameter by number, µm
 * @param volumeMeanUm mean diameter by volume, µm: weighted by ice
 * @param coarseIcePercent share of the ice in crystals above 50 µm, %
 * @param millionsPerMl crystals in a millilitre without air, millions
 * @param classes the size classes of the middle of the band
 */
public record CrystalSizes(
        Band meanUm,
        Band volumeMeanUm,
        Band coarseIcePercent,
        Band millionsPerMl,
        List<SizeClass> classes) {
    /** Width of a class, µm. */
    public static final double CLASS_UM = 5;

    /** Above this diameter a crystal counts as coarse, µm: the limit of {@link Texture#SMOOTH}. */
    public static final double COARSE_UM = Texture.SMOOTH.upToUm();

    private static final double SPENT = 1e-4;

    public CrystalSizes {
        classes = List.copyOf(classes);
    }

    /**
     * One class of sizes.
     *
     * @param fromUm smallest diameter, µm
     * @param toUm largest diameter, µm
     * @param numberPercent share of the crystals, %
     * @param volumePercent share of the ice, %
     */
    public record SizeClass(
            double fromUm, double toUm, double numberPercent, double volumePercent) {}

    static final CrystalSizes NONE =
            new CrystalSizes(
                    Band.exactly(0), Band.exactly(0), Band.exactly(0), Band.exactly(0), List.of());

    static CrystalSizes of(LowMidHigh<CrystalPopulation> crowds, double mlPerG) {
        return new CrystalSizes(
                crowds.band(c -> 2 * c.meanRadiusUm()),
                crowds.band(c -> 2 * c.sumPowers(4) / c.sumPowers(3)),
                crowds.band(c -> 100 * above(c, COARSE_UM / 2, true) / c.sumCubes()),
                crowds.band(c -> c.count() / mlPerG / 1e6),
                classes(crowds.middle()));
    }

    private static List<SizeClass> classes(CrystalPopulation crowd) {
        List<SizeClass> classes = new ArrayList<>();
        double cubes = crowd.sumCubes();
        double count = crowd.count();
        double from = 0;
        double cubesFrom = cubes;
        double countFrom = count;
        while (countFrom > SPENT * count || cubesFrom > SPENT * cubes) {
            double to = from + CLASS_UM;
            double cubesTo = above(crowd, to / 2, true);
            double countTo = above(crowd, to / 2, false);
            classes.add(
                    new SizeClass(
                            from,
                            to,
                            100 * (countFrom - countTo) / count,
                            100 * (cubesFrom - cubesTo) / cubes));
            from = to;
            cubesFrom = cubesTo;
            countFrom = countTo;
        }
        return classes;
    }

    /** Number or sum of R³ of the crystals above a radius. */
    private static double above(CrystalPopulation crowd, double radiusUm, boolean cubes) {
        double limit = Math.pow(radiusUm, 3);
        double sum = 0;
        for (int j = 0; j < crowd.classes(); j++) {
            double part = crowd.number(j) * crowd.partAbove(j, limit);
            double top = Math.pow(crowd.edgeRadiusUm(j + 1), 3);
            double low = Math.max(limit, Math.pow(crowd.edgeRadiusUm(j), 3));
            sum += cubes ? part * (low + top) / 2 : part;
        }
        return sum;
    }
}
