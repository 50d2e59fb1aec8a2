package coldwright.science.emulsion;

import coldwright.science.Require;
import coldwright.science.mix.Mix;

import org.hipparchus.special.Erf;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * The fat globules in a field of view, placed at random from the sizes and the fat of a milk or
 * mix. The same seed gives the same field.
 *
 * <p>Sizes: the log-normal of {@link GlobuleSizes}, split into as many parts of equal number as
 * there are globules; each globule has the mean volume of its part. So the fat in focus is that of
 * the liquid to within half a globule of mean volume. From a hundred globules on the mean and the
 * Sauter diameter are within 4 % of the model's (the difference is the spread within the parts,
 * mostly the largest). None of this depends on the seed. Positions: at random, largest first, so
 * that none overlap; in a crowded field the least overlap of several tries.
 *
 * <p>Range: fat up to 60 % by volume, fields of up to {@value #MOST} globules. Left out: creaming,
 * flow, globules below the depth in focus that shine through.
 *
 * @param slide the field of view
 * @param globules the globules, the largest first
 */
public record GlobuleField(Slide slide, List<Globule> globules) {
    /** The most globules in a field. */
    public static final int MOST = 20_000;

    private static final int TRIES = 40;

    public GlobuleField {
        globules = List.copyOf(globules);
    }

    /**
     * Places the globules of milk, cream or a mix in a field of view.
     *
     * @param seed any number; another gives another place on the slide
     */
    public static GlobuleField of(Mix mix, GlobuleSizes sizes, Slide slide, long seed) {
        return of(sizes, fatVolumePercent(mix), slide, seed);
    }

    /**
     * Places globules in a field of view.
     *
     * @param fatVolumePercent fat by volume, %, 0 to 60
     * @param seed any number; another gives another place on the slide
     * @throws IllegalArgumentException if there would be more globules than can be drawn
     */
    public static GlobuleField of(
            GlobuleSizes sizes, double fatVolumePercent, Slide slide, long seed) {
        Require.within("fatVolumePercent", fatVolumePercent, new Require.Range(0, 60, "%"));
        double count = expected(sizes, fatVolumePercent, slide);
        Require.that(
                count <= MOST,
                "the field would have %d globules; at most %d are drawn. Take a smaller field.",
                Math.round(count),
                MOST);
        double[] diameters = diametersUm(sizes, (int) Math.round(count));
        return new GlobuleField(slide, place(diameters, slide, new Random(seed)));
    }

    /**
     * {@return average number of globules in a field of view}
     *
     * @param fatVolumePercent fat by volume, %
     */
    public static double expected(GlobuleSizes sizes, double fatVolumePercent, Slide slide) {
        return fatVolumePercent / 100 * slide.volumeUm3() / meanVolumeUm3(sizes);
    }

    /** {@return fat of milk, cream or a mix, % of its volume, all as dense as milk fat} */
    public static double fatVolumePercent(Mix mix) {
        return mix.fatPercent() / FatSurface.FAT_KG_PER_M3 * 1000 * mix.densityKgPerL();
    }

    /** {@return fat of all the globules in focus, % by volume} */
    public double fatVolumePercent() {
        return 100 * fatUm3() / slide.volumeUm3();
    }

    /** {@return fat that has clumped, % of the fat, 0 without fat} */
    public double clumpedPercent() {
        double clumped =
                globules.stream().filter(Globule::clumped).mapToDouble(Globule::volumeUm3).sum();
        return globules.isEmpty() ? 0 : 100 * clumped / fatUm3();
    }

    /** {@return mean diameter of the globules, µm, not a number without globules} */
    public double numberMeanUm() {
        return globules.stream().mapToDouble(g -> 2 * g.radiusUm()).average().orElse(Double.NaN);
    }

    /** {@return sauter diameter of the globules, µm, not a number without globules} */
    public double sauterDiameterUm() {
        double cubes = 0;
        double squares = 0;
        for (Globule globule : globules) {
            double d = 2 * globule.radiusUm();
            cubes += d * d * d;
            squares += d * d;
        }
        return cubes / squares;
    }

    private double fatUm3() {
        return globules.stream().mapToDouble(Globule::volumeUm3).sum();
    }

    private static double meanVolumeUm3(GlobuleSizes sizes) {
        double s = sizes.logSpread();
        return Math.PI / 6 * Math.pow(sizes.numberMedianUm(), 3) * Math.exp(4.5 * s * s);
    }

    /** Diameters with the mean volume of each part, the largest first. */
    private static double[] diametersUm(GlobuleSizes sizes, int count) {
        double[] diameters = new double[count];
        double s = sizes.logSpread();
        double meanCube = 6 / Math.PI * meanVolumeUm3(sizes);
        double above = 0;
        for (int i = 0; i < count; i++) {
            double lower = 1 - (i + 1.0) / count;
            // the volume of a log-normal is distributed as its number, three squared spreads
            // farther up
            double share = i == count - 1 ? 1 : 1 - below(quantile(lower) - 3 * s);
            diameters[i] = Math.cbrt(meanCube * count * (share - above));
            above = share;
        }
        return diameters;
    }

    private static List<Globule> place(double[] diameters, Slide slide, Random random) {
        List<Globule> placed = new ArrayList<>(diameters.length);
        NeighbourGrid neighbourGrid =
                new NeighbourGrid(slide, diameters.length == 0 ? 1 : diameters[0]);
        for (double diameter : diameters) {
            Globule best = null;
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < TRIES && least > 0; i++) {
                Globule here =
                        new Globule(
                                random.nextDouble() * slide.widthUm(),
                                random.nextDouble() * slide.heightUm(),
                                diameter / 2,
                                false);
                double overlap = neighbourGrid.overlapUm(here);
                if (overlap < least) {
                    least = overlap;
                    best = here;
                }
            }
            neighbourGrid.add(best);
            placed.add(best);
        }
        return placed;
    }

    private static double below(double z) {
        return 0.5 * Erf.erfc(-z / Math.sqrt(2));
    }

    private static double quantile(double share) {
        return Math.sqrt(2) * Erf.erfInv(2 * share - 1);
    }

    /** Globules by the square of the field that they are in, to find neighbours. */
    private static final class NeighbourGrid {
        private final double squareUm;
        private final int columns;
        private final int rows;
        private final List<List<Globule>> squares = new ArrayList<>();
        private double largestUm;

        /** Makes squares no smaller than a 60th of the field, so that few have to be searched. */
        NeighbourGrid(Slide slide, double largestDiameterUm) {
            squareUm =
                    Math.max(
                            slide.widthUm() / 60, Math.min(largestDiameterUm, slide.widthUm() / 8));
            columns = (int) Math.ceil(slide.widthUm() / squareUm);
            rows = (int) Math.ceil(slide.heightUm() / squareUm);
            for (int i = 0; i < columns * rows; i++) {
                squares.add(new ArrayList<>());
            }
        }

        void add(Globule globule) {
            squares.get(row(globule.yUm()) * columns + column(globule.xUm())).add(globule);
            largestUm = Math.max(largestUm, globule.radiusUm());
        }

        /** Largest overlap of a globule with one in the grid; zero or less if it is free. */
        double overlapUm(Globule globule) {
            double reach = globule.radiusUm() + largestUm;
            double worst = 0;
            for (int r = row(globule.yUm() - reach); r <= row(globule.yUm() + reach); r++) {
                for (int c = column(globule.xUm() - reach);
                        c <= column(globule.xUm() + reach);
                        c++) {
                    for (Globule other : squares.get(r * columns + c)) {
                        double apart =
                                Math.hypot(
                                        other.xUm() - globule.xUm(), other.yUm() - globule.yUm());
                        worst = Math.max(worst, other.radiusUm() + globule.radiusUm() - apart);
                    }
                }
            }
            return worst;
        }

        private int column(double xUm) {
            return Math.max(0, Math.min(columns - 1, (int) (xUm / squareUm)));
        }

        private int row(double yUm) {
            return Math.max(0, Math.min(rows - 1, (int) (yUm / squareUm)));
        }
    }
}
