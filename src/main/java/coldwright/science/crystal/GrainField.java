package coldwright.science.crystal;

import coldwright.science.Require;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The ice crystals of a batch in a field of view, packed at random from the sizes and the ice of a
 * {@link CrystalStory}. The same seed gives the same field.
 *
 * <p>Sizes: the story's classes by number, split into as many equal parts as there are crystals,
 * each crystal being the mean of its part; scaled so that the mean diameter drawn is the story's
 * middle one. Each is shown cut through its middle, as in a thin preparation where whole crystals
 * are side by side. Number: the share of area covered by ice equals the share of volume, air left
 * out (the area of a section is the volume's share: A. Delesse 1847, from memory), to within half a
 * crystal of mean area; with more than 95 % ice some crystals are drawn too small (at 99 % the
 * field shows 97). While ice is added the number in view may rise because larger crystals reach a
 * plane more often; once the ice is constant, it falls as the mean grows. Shapes: the cells of a
 * power diagram about the packed crystals, cut back to the area of each and blunted (judgement: the
 * model has no shapes).
 *
 * <p>In a course the largest crystals stay where they are and the smallest vanish, as in
 * coarsening. The field is one tile of a repeating pattern: a crystal cut at the right edge
 * continues at the left.
 *
 * @param widthUm width of the field, µm
 * @param heightUm height of the field, µm
 * @param grains the crystals, the largest first
 */
public record GrainField(double widthUm, double heightUm, List<Grain> grains) {
    /** Height of a field by its width. */
    public static final double HEIGHT_OF_WIDTH = 0.7;

    private static final int MOST = 2_000;
    private static final int FINE_PARTS = 400;

    public GrainField {
        grains = List.copyOf(grains);
    }

    /**
     * The crystals of a batch now.
     *
     * @param story a batch with or without ice
     * @param widthUm width of the field, µm, 20 to 20 000; its height is 0.7 of that
     * @param seed any number; another gives another place in the batch
     * @throws IllegalArgumentException if there would be more crystals than can be drawn
     */
    public static GrainField of(CrystalStory story, double widthUm, long seed) {
        return course(List.of(story), widthUm, seed).get(0);
    }

    /**
     * The same place in a batch at different times.
     *
     * @param stories the batch from time to time
     * @param widthUm width of the field, µm, 20 to 20 000; its height is 0.7 of that
     * @param seed any number; another gives another place in the batch
     * @throws IllegalArgumentException if there would be more crystals than can be drawn
     */
    public static List<GrainField> course(List<CrystalStory> stories, double widthUm, long seed) {
        Require.within("widthUm", widthUm, new Require.Range(20, 20_000, "µm"));
        double heightUm = widthUm * HEIGHT_OF_WIDTH;
        GrainPacking packing = new GrainPacking(widthUm, heightUm, seed);
        List<GrainField> fields = new ArrayList<>();
        for (CrystalStory story : stories) {
            double share = iceVolumePercent(story) / 100;
            packing.pack(diametersUm(story, share * widthUm * heightUm));
            fields.add(new GrainField(widthUm, heightUm, packing.grains()));
        }
        return List.copyOf(fields);
    }

    /** {@return ice of a batch by volume, air left out, % of its volume, 0 without ice} */
    public static double iceVolumePercent(CrystalStory story) {
        if (!story.state().frozen()) {
            return 0;
        }
        FrozenMixTable frozenMixTable = story.state().mixTable();
        double iceMl = frozenMixTable.iceMlPerG(story.temperatureC());
        double swollenMl = iceMl * (1 - GibbsThomson.ICE_KG_PER_M3 / 1000);
        return 100 * iceMl / (frozenMixTable.volumeMlPerG() + swollenMl);
    }

    /**
     * {@return the width of a field that shows about so many crystals, µm, a round number such as
     * 250, 400 or 1000}
     *
     * @param story a batch with ice
     * @param count how many, 10 to 1000
     * @throws IllegalArgumentException if there is no ice
     */
    public static double widthUmFor(CrystalStory story, int count) {
        Require.within("count", count, new Require.Range(10, 1000, "crystals"));
        double share = iceVolumePercent(story) / 100;
        Require.that(
                share > 0,
                "there is no ice to be seen; freeze it first with frozenBy(Method.BAG) or another");
        double area = count * meanAreaUm2(story) / share;
        double wanted = Math.sqrt(area / HEIGHT_OF_WIDTH);
        double power = Math.pow(10, Math.floor(Math.log10(wanted)));
        for (double leading : new double[] {1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8}) {
            if (wanted <= leading * power * 1.08) {
                return leading * power;
            }
        }
        return 10 * power;
    }

    /** {@return area of the crystals, % of the field} */
    public double iceAreaPercent() {
        double area = grains.stream().mapToDouble(Grain::areaUm2).sum();
        return 100 * area / (widthUm * heightUm);
    }

    /** {@return mean diameter of the crystals, µm, not a number without any} */
    public double meanUm() {
        return grains.stream().mapToDouble(Grain::diameterUm).average().orElse(Double.NaN);
    }

    private static double meanAreaUm2(CrystalStory story) {
        double sum = 0;
        for (double d : parts(story, FINE_PARTS)) {
            sum += Math.PI / 4 * d * d;
        }
        return sum / FINE_PARTS;
    }

    /** Diameters that fill an area, the largest first. */
    private static double[] diametersUm(CrystalStory story, double areaUm2) {
        if (areaUm2 <= 0) {
            return new double[0];
        }
        double count = areaUm2 / meanAreaUm2(story);
        Require.that(
                count <= MOST,
                "the field would have %d crystals; at most %d are drawn. Take a smaller field.",
                Math.round(count),
                MOST);
        return parts(story, (int) Math.max(1, Math.round(count)));
    }

    /** The means of equal parts of the crystals, the largest first. */
    private static double[] parts(CrystalStory story, int count) {
        List<CrystalSizes.SizeClass> classes = story.sizes().classes();
        double all = classes.stream().mapToDouble(CrystalSizes.SizeClass::numberPercent).sum();
        double[] sums = new double[count];
        int part = 0;
        double room = all / count;
        for (CrystalSizes.SizeClass one : classes) {
            double left = one.numberPercent();
            while (left > 0 && part < count) {
                double taken = Math.min(left, room);
                // crystals are evenly spread between the ends of a class
                double from = one.toUm() - (one.toUm() - one.fromUm()) * left / one.numberPercent();
                double wide = (one.toUm() - one.fromUm()) * taken / one.numberPercent();
                sums[part] += taken * (from + wide / 2);
                left -= taken;
                room -= taken;
                if (room <= 1e-9 * all / count) {
                    part++;
                    room = all / count;
                }
            }
        }
        double mean = Arrays.stream(sums).sum() / all;
        double scale = story.meanUm().middle() / mean;
        double[] diameters = new double[count];
        for (int i = 0; i < count; i++) {
            diameters[count - 1 - i] = sums[i] * count / all * scale;
        }
        return diameters;
    }
}
