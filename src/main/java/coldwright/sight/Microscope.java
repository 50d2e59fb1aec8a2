package coldwright.sight;

import coldwright.figure.Drawing;
import coldwright.figure.Piece;
import coldwright.figure.Tint;
import coldwright.figure.TypesetNumber;
import coldwright.science.Require;
import coldwright.science.crystal.CrystalStory;
import coldwright.science.crystal.Storage;
import coldwright.science.emulsion.Churning;
import coldwright.science.emulsion.Clumping;
import coldwright.science.emulsion.Globule;
import coldwright.science.emulsion.GlobuleField;
import coldwright.science.emulsion.GlobuleSizes;
import coldwright.science.emulsion.Slide;
import coldwright.science.mix.Mix;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Microscope views of a milk or mix, to scale.
 *
 * <pre>{@code
 * show(Microscope.globules(milk));
 * show(Microscope.globules(milk, GlobuleSizes.homogenised()));
 * show(Microscope.homogenising(milk));
 * show(Microscope.whipping(mix, 4, Churning.Motion.WHISK));
 * show(Microscope.crystals(fresh.storedAt(-12), 28));
 * show(BagAcross.of(plan));
 * }</pre>
 *
 * The same call always gives the same drawing: random positions are seeded.
 */
public final class Microscope {
    private static final long SEED = 20;
    private static final int WHIPPING_MOMENTS = 25;
    private static final double LONGEST_WHIPPING_MIN = 120;

    /** Most discs in all moments together; more make a page slow. */
    private static final int MOST_DISCS = 24_000;

    private static final String SIZES =
            "Globule sizes: P. F. Fox and P. L. H. McSweeney, Dairy Chemistry and Biochemistry; a log-normal distribution, random positions";
    private static final String CLUMPING =
            "Clumping: collisions by shear after M. von Smoluchowski, a trend; the shape of the clusters is drawn, not calculated";

    private static final Tint SINGLE = Tint.of(Tint.Role.FAT);
    private static final Tint CLUMPED = Tint.of(Tint.Role.CLUMPED_FAT);

    private Microscope() {}

    /** {@return fat globules of milk, cream or mix, not homogenised, 100 × 70 µm, 2 µm deep} */
    public static Drawing globules(Mix mix) {
        return globules(mix, GlobuleSizes.rawMilk());
    }

    /**
     * {@return the fat globules of milk, cream or a mix, 100 × 70 µm of it, 2 µm deep}
     *
     * @param sizes its globules, such as {@link GlobuleSizes#homogenised}
     */
    public static Drawing globules(Mix mix, GlobuleSizes sizes) {
        GlobuleField field = fieldOf(mix, sizes, 1);
        return empty("Fat globules under a microscope", field.slide())
                .at(moment(0, describe(sizes, field), field))
                .source(SIZES);
    }

    /** {@return milk, cream or a mix before and after it is homogenised, two moments} */
    public static Drawing homogenising(Mix mix) {
        GlobuleField raw = fieldOf(mix, GlobuleSizes.rawMilk(), 1);
        GlobuleField fine = fieldOf(mix, GlobuleSizes.homogenised(), 1);
        return empty("Fat globules before and after homogenising", raw.slide())
                .at(moment(0, "raw: " + describe(GlobuleSizes.rawMilk(), raw), raw))
                .at(moment(1, "homogenised: " + describe(GlobuleSizes.homogenised(), fine), fine))
                .source(SIZES);
    }

    private static Drawing.Moment moment(double time, String label, GlobuleField field) {
        return new Drawing.Moment(time, "", label, pieces(field));
    }

    /**
     * {@return the globules of a mix that was not homogenised, sticking together while it is
     * whipped, from the first stroke to butter, or two hours of it}
     *
     * @param temperatureC temperature while it is moved, °C, −20 to 40
     */
    public static Drawing whipping(Mix mix, double temperatureC, Churning.Motion motion) {
        return whipping(mix, Churning.of(mix, temperatureC), motion);
    }

    /**
     * {@return the globules of a mix, sticking together while it is whipped, from the first stroke
     * to butter, or two hours of it}
     *
     * @param churning its churning, such as {@code Churning.of(mix, 4).withFineGlobules()}
     */
    public static Drawing whipping(Mix mix, Churning churning, Churning.Motion motion) {
        GlobuleSizes sizes =
                churning.homogenised() ? GlobuleSizes.homogenised() : GlobuleSizes.rawMilk();
        GlobuleField fresh = fieldOf(mix, sizes, WHIPPING_MOMENTS);
        Clumping clumping = Clumping.of(fresh, SEED);
        double butter = churning.minutesToButter(motion).middle();
        double end = Math.min(butter, LONGEST_WHIPPING_MIN);
        List<Drawing.Moment> moments = new ArrayList<>();
        for (int i = 0; i < WHIPPING_MOMENTS; i++) {
            double minutes = end * i / (WHIPPING_MOMENTS - 1);
            double clumped = churning.clumpedPercent(minutes, motion).middle();
            moments.add(
                    new Drawing.Moment(
                            minutes,
                            "min",
                            "%s %% of the fat clumped".formatted(TypesetNumber.of(clumped, 1)),
                            pieces(clumping.at(clumped))));
        }
        return empty("Fat globules clumping", fresh.slide())
                .at(moments)
                .source(SIZES)
                .source(CLUMPING);
    }

    /**
     * {@return about 110 ice crystals of a batch now, with a bar of 50 µm}
     *
     * @throws IllegalArgumentException if there is no ice
     */
    public static Drawing crystals(CrystalStory story) {
        return Crystals.of(story);
    }

    /**
     * {@return the ice crystals of a batch in storage, the same place from time to time, with a bar
     * of 50 µm: they grow fewer and larger}
     *
     * @param store the store, such as {@code fresh.storedAt(-12)}
     * @param days how long, d, 0.1 to 1000
     * @throws IllegalArgumentException if there is no ice
     */
    public static Drawing crystals(Storage store, double days) {
        return Crystals.kept(store, days);
    }

    /**
     * {@return the ice crystals of a batch at different points of its story, fresh, hardened, after
     * a warm spell: the same place each time, with a bar of 50 µm}
     *
     * @param stories the same batch at later and later times
     * @throws IllegalArgumentException if none has ice
     */
    public static Drawing crystals(List<CrystalStory> stories) {
        return Crystals.course("Ice crystals of a batch", stories, "d");
    }

    /** The usual field, or a smaller one if that would contain too many globules. */
    private static GlobuleField fieldOf(Mix mix, GlobuleSizes sizes, int moments) {
        double fatVolumePercent = GlobuleField.fatVolumePercent(mix);
        Require.within("fatPercent", mix.fatPercent(), new Require.Range(0, 55, "%"));
        for (double times : new double[] {1, 0.5, 0.2, 0.1}) {
            Slide slide = Slide.USUAL.times(times);
            if (GlobuleField.expected(sizes, fatVolumePercent, slide) * moments < MOST_DISCS) {
                return GlobuleField.of(sizes, fatVolumePercent, slide, SEED);
            }
        }
        return GlobuleField.of(sizes, fatVolumePercent, Slide.USUAL.times(0.05), SEED);
    }

    private static Drawing empty(String title, Slide slide) {
        double bar = slide.widthUm() / 10;
        return Drawing.of(
                title,
                new Drawing.Field(slide.widthUm(), slide.heightUm(), "µm"),
                new Drawing.ScaleBar(bar, TypesetNumber.plain(bar, bar) + " µm"));
    }

    private static String describe(GlobuleSizes sizes, GlobuleField field) {
        double d = sizes.sauterDiameterUm();
        return "%d globules, Sauter diameter %s µm, fat %s %% by volume"
                .formatted(
                        field.globules().size(),
                        TypesetNumber.plain(d, d),
                        TypesetNumber.of(field.fatVolumePercent(), 0.1));
    }

    /** The globules with clumped ones last, so that clusters are in front. */
    private static List<Piece> pieces(GlobuleField field) {
        return field.globules().stream()
                .sorted(Comparator.comparing(Globule::clumped))
                .<Piece>map(
                        one ->
                                new Piece.Disc(
                                        one.xUm(),
                                        one.yUm(),
                                        one.radiusUm(),
                                        one.clumped() ? CLUMPED : SINGLE))
                .toList();
    }
}
