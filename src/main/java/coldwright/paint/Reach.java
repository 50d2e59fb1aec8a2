package coldwright.paint;

import coldwright.figure.Axis;
import coldwright.figure.Figure;
import coldwright.figure.Mark;
import coldwright.figure.Numbers;
import coldwright.figure.Series;

import java.util.List;
import java.util.Optional;

/** From where to where the axes of a figure must run to show its data, and an earlier trace's. */
final class Reach {
    /** Room beside single points, as a share of their span. */
    private static final double BESIDE_POINTS = 0.04;

    /** Room above bars for their values, as a share of the span. */
    private static final double ABOVE_BARS = 0.07;

    /** How much of the former axes data must fill so that these stay. */
    private static final double HELD_SHARE = 0.6;

    private double least = Double.POSITIVE_INFINITY;
    private double most = Double.NEGATIVE_INFINITY;

    private Reach() {}

    /** The level axis' span. */
    static Span x(List<Figure> figures) {
        Figure figure = figures.get(0);
        Bars bars = Bars.of(figure);
        if (bars.drawn()) {
            return new Span(-0.5, bars.words().size() - 0.5);
        }
        Reach reach = new Reach();
        boolean pointsOnly = true;
        for (Figure one : figures) {
            for (Series series : one.series()) {
                pointsOnly &= series instanceof Series.Dots;
                for (Numbers row : rows(series)) {
                    reach.take(xOf(series), row, new Span(-Span.FARTHEST, Span.FARTHEST), true);
                }
            }
        }
        reach.takeMarks(figure, Mark.Across.X);
        return reach.on(figure.x(), pointsOnly ? BESIDE_POINTS : 0, 0);
    }

    /** The upright axis' span, for what stands within the level axis'. */
    static Span y(List<Figure> figures, Span x) {
        Figure figure = figures.get(0);
        Reach reach = new Reach();
        boolean barred = false;
        for (Figure one : figures) {
            for (Series series : one.series()) {
                barred |= series instanceof Series.Bars;
                for (Numbers row : rows(series)) {
                    reach.take(xOf(series), row, x, false);
                }
            }
        }
        reach.takeMarks(figure, Mark.Across.Y);
        if (barred) {
            reach.take(0);
            return reach.on(figure.y(), 0, ABOVE_BARS);
        }
        return reach.on(figure.y(), 0, 0);
    }

    /** The former span, if the data fit it and fill enough of it. */
    static Optional<Span> held(Span whole, Axis axis, Optional<Span> former) {
        boolean fixed = axis.from().isPresent() || axis.to().isPresent();
        return former.filter(
                span ->
                        !fixed
                                && span.holds(whole.from())
                                && span.holds(whole.to())
                                && whole.width() >= HELD_SHARE * span.width());
    }

    static Numbers xOf(Series series) {
        if (series instanceof Series.Curve curve) {
            return curve.x();
        } else if (series instanceof Series.Dots dots) {
            return dots.x();
        } else if (series instanceof Series.Band band) {
            return band.x();
        } else if (series instanceof Series.Bars bars) {
            return Numbers.of(new double[bars.size()]);
        }
        throw new AssertionError(series.getClass());
    }

    private static List<Numbers> rows(Series series) {
        if (series instanceof Series.Curve curve) {
            return List.of(curve.y());
        } else if (series instanceof Series.Dots dots) {
            return List.of(dots.y());
        } else if (series instanceof Series.Band band) {
            return List.of(band.low(), band.high());
        } else if (series instanceof Series.Bars bars) {
            return List.of(bars.values());
        }
        throw new AssertionError(series.getClass());
    }

    private void take(Numbers xs, Numbers ys, Span within, boolean takeX) {
        for (int i = 0; i < xs.size(); i++) {
            double x = xs.at(i);
            double y = ys.at(i);
            if (within.holds(x) && Math.abs(y) <= Span.FARTHEST) {
                take(takeX ? x : y);
            }
        }
    }

    private void take(double value) {
        least = Math.min(least, value);
        most = Math.max(most, value);
    }

    private void takeMarks(Figure figure, Mark.Across across) {
        for (Mark mark : figure.marks()) {
            if (mark.across() == across && Math.abs(mark.at()) <= Span.FARTHEST) {
                take(mark.at());
            }
        }
    }

    private Span on(Axis axis, double beside, double above) {
        double from = least <= most ? least : 0;
        double to = least <= most ? most : 1;
        if (least < most) {
            double width = to - from;
            from -= width * beside + (from < 0 ? width * above : 0);
            to += width * beside + (to > 0 ? width * above : 0);
        }
        double fixedFrom = finite(axis.from().orElse(Double.NaN));
        double fixedTo = finite(axis.to().orElse(Double.NaN));
        if (fixedFrom < fixedTo) {
            return Span.around(fixedFrom, fixedTo);
        } else if (!Double.isNaN(fixedFrom)) {
            return Span.around(fixedFrom, Math.max(to, fixedFrom));
        } else if (!Double.isNaN(fixedTo)) {
            return Span.around(Math.min(from, fixedTo), fixedTo);
        }
        return Span.around(from, to);
    }

    private static double finite(double end) {
        return Math.abs(end) <= Span.FARTHEST ? end : Double.NaN;
    }
}
