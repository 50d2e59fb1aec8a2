package coldwright.sight;

import coldwright.figure.Drawing;
import coldwright.figure.Piece;
import coldwright.figure.Tint;
import coldwright.figure.TypesetNumber;
import coldwright.science.freezer.BagSection;
import coldwright.science.freezer.FreezePlan;

import java.util.ArrayList;
import java.util.List;

/**
 * A cross-section of a bag of mix in its bath of ice and salt, to scale, with the temperatures of
 * mix, wall and bath while it freezes.
 *
 * <pre>{@code
 * show(BagAcross.of(FreezePlan.bag(mix, IceAndSalt.of(2000, 500))));
 * }</pre>
 */
public final class BagAcross {
    private static final int MOMENTS = 25;
    private static final double BATH_MM = 10;
    private static final double WIDTH_OF_HEIGHT = 1.45;
    private static final double BAR_MM = 10;

    /** Left edge of the labels, share of the width. */
    private static final double LABELS_AT = 0.03;

    /** Tolerance: a start at 5 °C is slightly warmer in the simulation. */
    private static final double SAME_C = 0.05;

    private static final String SOURCE =
            "Temperatures: the plan's calculation; films drawn as thick as the layers at rest with the same resistance to heat";

    private BagAcross() {}

    /**
     * {@return the bag of a plan, from the moment it goes into the bath until it is soft-serve}
     *
     * @throws IllegalArgumentException if the plan is for another holder or another cold
     */
    public static Drawing of(FreezePlan plan) {
        List<BagSection> course = BagSection.course(plan, MOMENTS);
        double half =
                course.stream().mapToDouble(one -> one.depth().bathMm()).max().orElseThrow()
                        + BATH_MM;
        double width = 2 * half * WIDTH_OF_HEIGHT;
        double coldest = course.stream().mapToDouble(BagSection::bathC).min().orElseThrow();
        double warmest = course.stream().mapToDouble(BagSection::middleC).max().orElseThrow();
        List<Drawing.Moment> moments = new ArrayList<>();
        for (BagSection section : course) {
            String label =
                    "mix %s °C with %s %% of its water ice, bath %s °C"
                            .formatted(
                                    TypesetNumber.of(section.middleC(), 0.1),
                                    TypesetNumber.of(section.icePercent(), 1),
                                    TypesetNumber.of(section.bathC(), 0.1));
            List<Piece> pieces = pieces(section, half);
            label(pieces, section, half, width);
            moments.add(new Drawing.Moment(section.minute(), "min", label, pieces));
        }
        return Drawing.of(
                        "A bag of mix in ice and salt, cut across",
                        new Drawing.Field(width, 2 * half, "mm"),
                        new Drawing.ScaleBar(BAR_MM, TypesetNumber.plain(BAR_MM, BAR_MM) + " mm"))
                .warmth(Math.floor(coldest), Math.ceil(warmest - SAME_C))
                .at(moments)
                .source(SOURCE);
    }

    /** Both halves, from the middle outward; the walls last, over the parts beside them. */
    private static List<Piece> pieces(BagSection section, double half) {
        List<Piece> pieces = new ArrayList<>();
        List<BagSection.Point> points = section.points();
        for (int i = 1; i < points.size(); i++) {
            BagSection.Point in = points.get(i - 1);
            BagSection.Point out = points.get(i);
            if (out.fromMiddleMm() > in.fromMiddleMm()) {
                addBoth(pieces, half, in, out);
            }
        }
        BagSection.Point rim = points.get(points.size() - 1);
        addBoth(pieces, half, rim, new BagSection.Point(half, rim.temperatureC()));
        Tint wall = Tint.of(Tint.Role.WALL);
        double from = section.depth().contentMm();
        double to = from + section.depth().wallMm();
        pieces.add(new Piece.Band(half - to, half - from, wall, wall));
        pieces.add(new Piece.Band(half + from, half + to, wall, wall));
        return pieces;
    }

    private static void addBoth(
            List<Piece> pieces, double half, BagSection.Point in, BagSection.Point out) {
        Tint warm = Tint.warmth(in.temperatureC());
        Tint cold = Tint.warmth(out.temperatureC());
        pieces.add(new Piece.Band(half - out.fromMiddleMm(), half - in.fromMiddleMm(), cold, warm));
        pieces.add(new Piece.Band(half + in.fromMiddleMm(), half + out.fromMiddleMm(), warm, cold));
    }

    private static void label(List<Piece> pieces, BagSection section, double half, double width) {
        BagSection.Depth depth = section.depth();
        double x = width * LABELS_AT;
        pieces.add(new Piece.Label(x, half - (depth.bathMm() + half) / 2, "bath of ice and brine"));
        double film = depth.contentMm() + depth.wallMm() + depth.filmMm() / 2;
        pieces.add(new Piece.Label(x, half - film, "film of brine"));
        pieces.add(new Piece.Label(x, half, "mix"));
        String wall = "wall of the bag, %s mm".formatted(TypesetNumber.of(depth.wallMm(), 0.01));
        double at = half + depth.contentMm() + depth.wallMm() / 2;
        pieces.add(new Piece.Label(width * 0.6, at, wall));
    }
}
