package coldwright.paint.chart;

import coldwright.figure.Axis;
import coldwright.figure.Figure;
import coldwright.figure.NumberColumn;
import coldwright.figure.ReferenceLine;
import coldwright.figure.Series;
import coldwright.paint.style.ValueSpan;

import java.util.DoubleSummaryStatistics;
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

    private AxisRange() {}

    /** The span of the x axis. */
    public static ValueSpan x(List<Figure> figures) {
        Figure figure = figures.get(0);
        BarGroups bars = BarGroups.of(figure);
        if (bars.drawn()) {
            return new ValueSpan(-0.5, bars.words().size() - 0.5);
        }
        ValueSpan everywhere = new ValueSpan(-ValueSpan.FARTHEST, ValueSpan.FARTHEST);
        boolean pointsOnly =
                figures.stream()
                        .flatMap(one -> one.series().stream())
                        .allMatch(Series.Dots.class::isInstance);
        return on(
                figure.x(),
                range(figures, everywhere, ReferenceLine.Across.X),
                pointsOnly ? BESIDE_POINTS : 0,
                0);
    }

    /** The span of the y axis, for the data within the x axis. */
    public static ValueSpan y(List<Figure> figures, ValueSpan x) {
        DoubleSummaryStatistics range = range(figures, x, ReferenceLine.Across.Y);
        boolean barred =
                figures.stream()
                        .flatMap(one -> one.series().stream())
                        .anyMatch(
                                one ->
                                        one instanceof Series.Bars
                                                || one instanceof Series.Histogram);
        if (barred) {
            range.accept(0);
        }
        return on(figures.get(0).y(), range, 0, barred ? ABOVE_BARS : 0);
    }

    /** The least and the largest value of the data within a span of x, and of the marks. */
    private static DoubleSummaryStatistics range(
            List<Figure> figures, ValueSpan within, ReferenceLine.Across across) {
        DoubleSummaryStatistics range = new DoubleSummaryStatistics();
        for (Figure figure : figures) {
            for (Series series : figure.series()) {
                NumberColumn xs = series.x();
                for (NumberColumn ys : series.columns()) {
                    for (int i = 0; i < xs.size(); i++) {
                        boolean drawn = Math.abs(ys.at(i)) <= ValueSpan.FARTHEST;
                        if (drawn && within.contains(xs.at(i))) {
                            range.accept((across == ReferenceLine.Across.X ? xs : ys).at(i));
                        }
                    }
                }
                if (series instanceof Series.Histogram bins && across == ReferenceLine.Across.X) {
                    range.accept(bins.from());
                    range.accept(bins.to());
                }
            }
        }
        for (ReferenceLine mark : figures.get(0).marks()) {
            if (mark.across() == across && Math.abs(mark.at()) <= ValueSpan.FARTHEST) {
                range.accept(mark.at());
            }
        }
        return range;
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

    private static ValueSpan on(
            Axis axis, DoubleSummaryStatistics range, double beside, double above) {
        double from = range.getCount() > 0 ? range.getMin() : 0;
        double to = range.getCount() > 0 ? range.getMax() : 1;
        if (range.getCount() > 0 && from < to) {
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
