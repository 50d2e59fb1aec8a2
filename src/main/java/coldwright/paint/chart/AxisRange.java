package coldwright.paint.chart;

import coldwright.figure.Axis;
import coldwright.figure.Figure;
import coldwright.figure.NumberColumn;
import coldwright.figure.ReferenceLine;
import coldwright.figure.Series;
import coldwright.paint.style.ValueSpan;

import java.util.List;
import java.util.Optional;

/** The ranges of the axes that show a figure's data and those of an earlier one. */
public final class AxisRange {
    /** Margin beside single points, as a share of their span. */
    private static final double BESIDE_POINTS = 0.04;

    /** Margin above bars for their values, as a share of the span. */
    private static final double ABOVE_BARS = 0.07;

    /** The share of the former axes that data must fill to keep them. */
    private static final double HELD_SHARE = 0.6;

    private double least = Double.POSITIVE_INFINITY;
    private double most = Double.NEGATIVE_INFINITY;

    private AxisRange() {}

    /** The span of the x axis. */
    public static ValueSpan x(List<Figure> figures) {
        Figure figure = figures.get(0);
        BarGroups bars = BarGroups.of(figure);
        if (bars.drawn()) {
            return new ValueSpan(-0.5, bars.words().size() - 0.5);
        }
        AxisRange axisRange = new AxisRange();
        boolean pointsOnly = true;
        for (Figure one : figures) {
            for (Series series : one.series()) {
                pointsOnly &= series instanceof Series.Dots;
                for (NumberColumn row : rows(series)) {
                    axisRange.take(
                            xOf(series),
                            row,
                            new ValueSpan(-ValueSpan.FARTHEST, ValueSpan.FARTHEST),
                            true);
                }
            }
        }
        axisRange.takeMarks(figure, ReferenceLine.Across.X);
        return axisRange.on(figure.x(), pointsOnly ? BESIDE_POINTS : 0, 0);
    }

    /** The span of the y axis, for the data within the x axis. */
    public static ValueSpan y(List<Figure> figures, ValueSpan x) {
        Figure figure = figures.get(0);
        AxisRange axisRange = new AxisRange();
        boolean barred = false;
        for (Figure one : figures) {
            for (Series series : one.series()) {
                barred |= series instanceof Series.Bars;
                for (NumberColumn row : rows(series)) {
                    axisRange.take(xOf(series), row, x, false);
                }
            }
        }
        axisRange.takeMarks(figure, ReferenceLine.Across.Y);
        if (barred) {
            axisRange.take(0);
            return axisRange.on(figure.y(), 0, ABOVE_BARS);
        }
        return axisRange.on(figure.y(), 0, 0);
    }

    /** The former span, if the data fit it and fill enough of it. */
    static Optional<ValueSpan> fixedRange(ValueSpan whole, Axis axis, Optional<ValueSpan> former) {
        boolean fixed = axis.from().isPresent() || axis.to().isPresent();
        return former.filter(
                span ->
                        !fixed
                                && span.contains(whole.from())
                                && span.contains(whole.to())
                                && whole.width() >= HELD_SHARE * span.width());
    }

    static NumberColumn xOf(Series series) {
        if (series instanceof Series.Curve curve) {
            return curve.x();
        } else if (series instanceof Series.Dots dots) {
            return dots.x();
        } else if (series instanceof Series.Band band) {
            return band.x();
        } else if (series instanceof Series.Bars bars) {
            return NumberColumn.of(new double[bars.size()]);
        }
        throw new AssertionError(series.getClass());
    }

    private static List<NumberColumn> rows(Series series) {
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

    private void take(NumberColumn xs, NumberColumn ys, ValueSpan within, boolean takeX) {
        for (int i = 0; i < xs.size(); i++) {
            double x = xs.at(i);
            double y = ys.at(i);
            if (within.contains(x) && Math.abs(y) <= ValueSpan.FARTHEST) {
                take(takeX ? x : y);
            }
        }
    }

    private void take(double value) {
        least = Math.min(least, value);
        most = Math.max(most, value);
    }

    private void takeMarks(Figure figure, ReferenceLine.Across across) {
        for (ReferenceLine mark : figure.marks()) {
            if (mark.across() == across && Math.abs(mark.at()) <= ValueSpan.FARTHEST) {
                take(mark.at());
            }
        }
    }

    private ValueSpan on(Axis axis, double beside, double above) {
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
            return ValueSpan.around(fixedFrom, fixedTo);
        } else if (!Double.isNaN(fixedFrom)) {
            return ValueSpan.around(fixedFrom, Math.max(to, fixedFrom));
        } else if (!Double.isNaN(fixedTo)) {
            return ValueSpan.around(Math.min(from, fixedTo), fixedTo);
        }
        return ValueSpan.around(from, to);
    }

    private static double finite(double end) {
        return Math.abs(end) <= ValueSpan.FARTHEST ? end : Double.NaN;
    }
}
