package coldwright.desk.figure.model;

import coldwright.figure.Axis;
import coldwright.figure.Figure;
import coldwright.figure.NumberColumn;
import coldwright.figure.Series;
import coldwright.figure.TypesetNumber;
import coldwright.paint.chart.BarGroups;
import coldwright.paint.style.PlotArea;
import coldwright.paint.style.ValueSpan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * A value read off a series of a figure, counted from 0, in the units of the axes; for bars x is
 * the index of the category. The words are name, x and y with their units.
 */
public record FigureReadout(int series, double x, double y, String words) {
    /** A readout resolves an axis into this many steps. */
    private static final double FINENESS = 400;

    /** A point on the image, in logical pixels from its top left. */
    public record ImagePoint(double x, double y) {}

    /** The readout nearest to a point; empty outside the plot or away from all data. */
    public static Optional<FigureReadout> near(
            Figure figure, PlotArea plot, ImagePoint imagePoint) {
        if (!plot.area().contains(imagePoint.x(), imagePoint.y())) {
            return Optional.empty();
        }
        FigureReadout best = null;
        double least = Double.POSITIVE_INFINITY;
        List<Series> all = figure.series();
        for (int i = 0; i < all.size(); i++) {
            Optional<FigureReadout> one = near(figure, i, plot, imagePoint);
            if (one.isPresent()) {
                double apart = apart(all.get(i), one.get(), plot, imagePoint);
                if (apart < least) {
                    least = apart;
                    best = one.get();
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private static double apart(
            Series series, FigureReadout one, PlotArea plot, ImagePoint imagePoint) {
        double beside = series instanceof Series.Dots ? plot.xPx(one.x()) - imagePoint.x() : 0;
        if (series instanceof Series.Bars) {
            return Math.abs(plot.xPx(one.x()) - imagePoint.x());
        }
        return Math.hypot(beside, plot.yPx(one.y()) - imagePoint.y());
    }

    private static Optional<FigureReadout> near(
            Figure figure, int index, PlotArea plot, ImagePoint imagePoint) {
        Series series = figure.series().get(index);
        double x = plot.xAt(imagePoint.x());
        if (series instanceof Series.Curve curve) {
            return nearest(curve.x(), curve.y(), x, plot, imagePoint).stream()
                    .mapToObj(y -> of(figure, index, plot, x, y))
                    .findFirst();
        } else if (series instanceof Series.Band band) {
            OptionalDouble low = nearest(band.x(), band.low(), x, plot, imagePoint);
            OptionalDouble high = nearest(band.x(), band.high(), x, plot, imagePoint);
            if (low.isEmpty() || high.isEmpty()) {
                return Optional.empty();
            }
            double toLow = Math.abs(plot.yPx(low.getAsDouble()) - imagePoint.y());
            double toHigh = Math.abs(plot.yPx(high.getAsDouble()) - imagePoint.y());
            double y = toLow < toHigh ? low.getAsDouble() : high.getAsDouble();
            return Optional.of(of(figure, index, plot, x, y));
        } else if (series instanceof Series.Dots dots) {
            int nearest = -1;
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < dots.size(); i++) {
                double apart =
                        Math.hypot(
                                plot.xPx(dots.x().at(i)) - imagePoint.x(),
                                plot.yPx(dots.y().at(i)) - imagePoint.y());
                if (apart < least) {
                    nearest = i;
                    least = apart;
                }
            }
            return nearest < 0 ? Optional.empty() : at(figure, index, nearest, plot);
        } else if (series instanceof Series.Bars bars) {
            int place = (int) Math.round(x - barOffset(figure, index));
            return place < 0 || place >= bars.size()
                    ? Optional.empty()
                    : at(figure, index, place, plot);
        }
        return IntStream.range(0, series.size())
                .boxed()
                .flatMap(i -> at(figure, index, i, plot).stream())
                .min(
                        Comparator.comparingDouble(
                                one ->
                                        Math.hypot(
                                                plot.xPx(one.x()) - imagePoint.x(),
                                                series instanceof Series.Histogram
                                                        ? 0
                                                        : plot.yPx(one.y()) - imagePoint.y())));
    }

    /** The readout at one point of a series, both counted from 0; empty at a gap. */
    public static Optional<FigureReadout> at(Figure figure, int series, int point, PlotArea plot) {
        Series one = figure.series().get(series);
        double x;
        double y;
        if (one instanceof Series.Curve curve) {
            x = curve.x().at(point);
            y = curve.y().at(point);
        } else if (one instanceof Series.Dots dots) {
            x = dots.x().at(point);
            y = dots.y().at(point);
        } else if (one instanceof Series.Band band) {
            x = band.x().at(point);
            y = band.high().at(point);
        } else if (one instanceof Series.Bars bars) {
            x = point + barOffset(figure, series);
            y = bars.values().at(point);
        } else {
            x = one instanceof Series.BoxPlot ? series : one.x().at(point);
            y = one.columns().get(0).at(point);
        }
        return Double.isFinite(x) && Double.isFinite(y)
                ? Optional.of(of(figure, series, plot, x, y))
                : Optional.empty();
    }

    /** Middle of a series' bars, from that of their category, categories. */
    private static double barOffset(Figure figure, int series) {
        long count = figure.series().stream().filter(Series.Bars.class::isInstance).count();
        return (series - (count - 1) / 2.0) * BarGroups.SHARE_OF_SLOT / count;
    }

    private static FigureReadout of(Figure figure, int index, PlotArea plot, double x, double y) {
        Series series = figure.series().get(index);
        String value = number(y, plot.y(), figure.y());
        String words;
        if (series instanceof Series.Bars bars) {
            int place = (int) Math.round(x);
            String word = bars.words().get(Math.max(0, Math.min(bars.size() - 1, place)));
            words = named(series, figure) + word + ", " + value;
        } else if (series instanceof Series.BoxPlot) {
            words = series.name() + ", " + value;
        } else if (series instanceof Series.HeatMap map) {
            words =
                    "%s, %s: %s %s"
                            .formatted(
                                    number(x, plot.x(), figure.x()),
                                    value,
                                    map.name(),
                                    TypesetNumber.plain(
                                            map.valueAt(x, y),
                                            map.range().getMax() - map.range().getMin()));
        } else {
            words = named(series, figure) + number(x, plot.x(), figure.x()) + ", " + value;
        }
        return new FigureReadout(index, x, y, words);
    }

    private static String named(Series series, Figure figure) {
        boolean alone = figure.series().size() == 1 || series.name().isBlank();
        return alone ? "" : series.name().strip() + ": ";
    }

    private static String number(double value, ValueSpan span, Axis axis) {
        String unit = axis.unit().isBlank() ? "" : " " + axis.unit();
        String label = unit.isEmpty() && !axis.label().isBlank() ? axis.label() + " " : "";
        return label + TypesetNumber.of(value, span.width() / FINENESS) + unit;
    }

    /** Of a line's values at an x, the one nearest to the point. */
    private static OptionalDouble nearest(
            NumberColumn xs, NumberColumn ys, double x, PlotArea plot, ImagePoint imagePoint) {
        double best = Double.NaN;
        for (int i = 0; i + 1 < xs.size(); i++) {
            double y = between(xs, ys, i, x);
            boolean nearer =
                    Double.isNaN(best)
                            || Math.abs(plot.yPx(y) - imagePoint.y())
                                    < Math.abs(plot.yPx(best) - imagePoint.y());
            if (Double.isFinite(y) && nearer) {
                best = y;
            }
        }
        return Double.isNaN(best) ? OptionalDouble.empty() : OptionalDouble.of(best);
    }

    /** The value of a line between one point and the next; NaN outside. */
    private static double between(NumberColumn xs, NumberColumn ys, int i, double x) {
        double from = xs.at(i);
        double to = xs.at(i + 1);
        if (!(Math.min(from, to) <= x && x <= Math.max(from, to))) {
            return Double.NaN;
        }
        double share = from == to ? 0 : (x - from) / (to - from);
        return ys.at(i) + share * (ys.at(i + 1) - ys.at(i));
    }

    /** The first value of a line at an x. */
    static OptionalDouble yAt(Series.Curve curve, double x) {
        for (int i = 0; i + 1 < curve.size(); i++) {
            double y = between(curve.x(), curve.y(), i, x);
            if (Double.isFinite(y)) {
                return OptionalDouble.of(y);
            }
        }
        return OptionalDouble.empty();
    }
}
