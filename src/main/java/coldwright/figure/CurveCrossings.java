package coldwright.figure;

import static coldwright.figure.FigureDescription.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Finds where the curves of a figure cross, and which is above which if they don't. */
final class CurveCrossings {
    private static final int MOST_LINES = 6;
    private static final int MOST_CROSSINGS = 4;

    /** Curves nearer than this share of the figure's height count as touching. */
    private static final double TOUCHING = 1e-3;

    private CurveCrossings() {}

    static List<String> describe(Figure figure) {
        List<Series.Curve> curves =
                figure.series().stream()
                        .filter(Series.Curve.class::isInstance)
                        .map(Series.Curve.class::cast)
                        .filter(curve -> rises(curve.x()))
                        .toList();
        List<String> sentences = new ArrayList<>();
        if (curves.size() < 2 || curves.size() > MOST_LINES) {
            return sentences;
        }
        for (int i = 0; i < curves.size(); i++) {
            for (int k = i + 1; k < curves.size(); k++) {
                addCrossing(curves.get(i), curves.get(k), figure, sentences);
            }
        }
        if (curves.size() == 2 && sentences.isEmpty()) {
            addOrder(curves.get(0), curves.get(1), figure, sentences);
        }
        return sentences.size() <= MOST_CROSSINGS
                ? sentences
                : List.of(text("crossings", sentences.size()));
    }

    private static boolean rises(NumberColumn x) {
        return x.size() > 1 && IntStream.range(1, x.size()).allMatch(i -> x.at(i) > x.at(i - 1));
    }

    private static void addCrossing(
            Series.Curve one, Series.Curve other, Figure figure, List<String> sentences) {
        double least = TOUCHING * height(one, other, figure);
        double lastX = Double.NaN;
        double lastApart = 0;
        for (int i = 0; i < one.size(); i++) {
            double x = one.x().at(i);
            double apart = one.y().at(i) - at(other, x);
            if (Double.isNaN(apart) || Double.isInfinite(apart)) {
                lastApart = 0;
                continue;
            }
            if (Math.abs(apart) < least) {
                continue;
            }
            if (lastApart * apart < 0) {
                double cross = lastX + (x - lastX) * lastApart / (lastApart - apart);
                CurveShape shape = CurveShape.of(one.x(), one.y(), figure);
                sentences.add(
                        text(
                                "crossing",
                                one.name(),
                                other.name(),
                                figure.x().with(shape.xNumber(cross)),
                                figure.y().with(shape.yNumber(at(one, cross)))));
            }
            lastX = x;
            lastApart = apart;
        }
    }

    private static void addOrder(
            Series.Curve one, Series.Curve other, Figure figure, List<String> sentences) {
        double least = TOUCHING * height(one, other, figure);
        boolean above = false;
        boolean below = false;
        for (int i = 0; i < one.size(); i++) {
            double apart = one.y().at(i) - at(other, one.x().at(i));
            above |= apart > least;
            below |= apart < -least;
        }
        if (above != below) {
            String upper = above ? one.name() : other.name();
            String lower = above ? other.name() : one.name();
            sentences.add(text("never-below", upper, lower));
        }
    }

    private static double height(Series.Curve one, Series.Curve other, Figure figure) {
        return Math.max(
                CurveShape.of(one.x(), one.y(), figure).yWidth(),
                CurveShape.of(other.x(), other.y(), figure).yWidth());
    }

    /** The value of a curve at an x value, linearly interpolated; NaN outside its range. */
    private static double at(Series.Curve curve, double x) {
        NumberColumn xs = curve.x();
        int low = 0;
        int high = xs.size() - 1;
        if (!(x >= xs.at(low) && x <= xs.at(high))) {
            return Double.NaN;
        }
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (xs.at(middle) <= x) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double share = (x - xs.at(low)) / (xs.at(high) - xs.at(low));
        return curve.y().at(low) + share * (curve.y().at(high) - curve.y().at(low));
    }
}
