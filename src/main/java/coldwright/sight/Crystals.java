package coldwright.sight;

import coldwright.figure.Drawing;
import coldwright.figure.NumberColumn;
import coldwright.figure.Piece;
import coldwright.figure.Tint;
import coldwright.figure.TypesetNumber;
import coldwright.science.Require;
import coldwright.science.crystal.CrystalStory;
import coldwright.science.crystal.Grain;
import coldwright.science.crystal.GrainField;
import coldwright.science.crystal.Storage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;

/** Drawings of the ice crystals of a batch, packed side by side, from its {@link CrystalStory}. */
final class Crystals {
    private static final long SEED = 7;
    private static final int COUNT = 110;
    private static final int MOMENTS = 13;
    private static final double BAR_UM = 50;

    /** Days are closer together at the beginning because more happens there. */
    private static final double CLOSER = 1.5;

    private static final String SOURCE =
            "Crystals: population balance with coarsening by Gibbs–Thomson and diffusion (Lifshitz, Slyozov and Wagner), within a factor of 2 in rate; ice by the freezing curve; outlines drawn, not calculated";

    private Crystals() {}

    static Drawing of(CrystalStory story) {
        return course("Ice crystals", List.of(story), "");
    }

    static Drawing kept(Storage store, double days) {
        Require.within("days", days, new Require.Range(0.1, 1000, "d"));
        List<CrystalStory> stories = new ArrayList<>();
        stories.add(store.before());
        for (int i = 1; i < MOMENTS; i++) {
            stories.add(store.forDays(days * Math.pow(i / (MOMENTS - 1.0), CLOSER)));
        }
        return course("Ice crystals in the store", stories, "d");
    }

    static Drawing course(String title, List<CrystalStory> stories, String unit) {
        double widthUm = GrainField.widthUmFor(firstWithIce(stories), COUNT);
        List<GrainField> fields = GrainField.course(stories, widthUm, SEED);
        double firstHours = hours(stories.get(0));
        List<Drawing.Moment> moments = new ArrayList<>();
        for (int i = 0; i < stories.size(); i++) {
            CrystalStory story = stories.get(i);
            String temperature = TypesetNumber.of(story.temperatureC(), 1) + " °C, ";
            String label =
                    fields.get(i).grains().isEmpty()
                            ? temperature + "no ice"
                            : "%smean %s µm, ice %s %% by volume"
                                    .formatted(
                                            temperature,
                                            TypesetNumber.of(story.meanUm().middle(), 1),
                                            TypesetNumber.of(
                                                    GrainField.iceVolumePercent(story), 1));
            double days = (hours(story) - firstHours) / 24;
            moments.add(new Drawing.Moment(days, unit, label, pieces(fields.get(i))));
        }
        double height = widthUm * GrainField.HEIGHT_OF_WIDTH;
        Drawing.Field field = new Drawing.Field(widthUm, height, "µm");
        return Drawing.of(title, field, bar(widthUm))
                .on(Tint.Role.SYRUP)
                .at(moments)
                .source(SOURCE);
    }

    /** Length of the scale bar: 50 µm, or another length if the field is much larger or smaller. */
    private static Drawing.ScaleBar bar(double widthUm) {
        double length = BAR_UM;
        while (length < widthUm / 30) {
            length *= 10;
        }
        if (length > widthUm / 2) {
            length /= 5;
        }
        return new Drawing.ScaleBar(length, TypesetNumber.plain(length, length) + " µm");
    }

    private static CrystalStory firstWithIce(List<CrystalStory> stories) {
        return stories.stream()
                .filter(story -> GrainField.iceVolumePercent(story) > 0)
                .findFirst()
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "there is no ice to be seen; freeze it first with frozenBy(Method.BAG) or another"));
    }

    private static double hours(CrystalStory story) {
        var timeline = story.timeline();
        return timeline.isEmpty() ? 0 : timeline.get(timeline.size() - 1).hours();
    }

    /** The crystals, with the cut parts repeated at the opposite edge of the field. */
    private static List<Piece> pieces(GrainField field) {
        List<Piece> pieces = new ArrayList<>();
        for (Grain grain : field.grains()) {
            for (int right = -1; right <= 1; right++) {
                for (int down = -1; down <= 1; down++) {
                    double dx = right * field.widthUm();
                    double dy = down * field.heightUm();
                    Piece.Outline outline = outline(grain, dx, dy);
                    if (reaches(outline.x(), field.widthUm())
                            && reaches(outline.y(), field.heightUm())) {
                        pieces.add(outline);
                    }
                }
            }
        }
        return pieces;
    }

    /** Whether some of it is between 0 and an end. */
    private static boolean reaches(NumberColumn corners, double endUm) {
        DoubleSummaryStatistics range = Arrays.stream(corners.toArray()).summaryStatistics();
        return range.getMax() > 0 && range.getMin() < endUm;
    }

    private static Piece.Outline outline(Grain grain, double dx, double dy) {
        double[] xs = grain.corners().stream().mapToDouble(c -> c.xUm() + dx).toArray();
        double[] ys = grain.corners().stream().mapToDouble(c -> c.yUm() + dy).toArray();
        return new Piece.Outline(NumberColumn.of(xs), NumberColumn.of(ys), Tint.of(Tint.Role.ICE));
    }
}
