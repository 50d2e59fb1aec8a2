package coldwright.desk.model;

import coldwright.figure.Axis;
import coldwright.figure.Digits;
import coldwright.figure.Figure;
import coldwright.figure.Numbers;
import coldwright.figure.Series;
import coldwright.paint.Plot;
import coldwright.paint.Span;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A value read off a figure.
 *
 * @param series which series of the figure, from 0
 * @param x where, in the level axis' unit; under bars the word's number
 * @param y the value, in the upright axis' unit
 * @param words name, x and y with their units
 */
public record Reading(int series, double x, double y, String words) {
    /** How much finer than the width of an axis values are read. */
    private static final double FINENESS = 400;

    /** The share of a word's place that its bars take. */
    private static final double BARS_OF_SLOT = 0.62;

    /**
     * A place on the sheet, in logical pixels from its top left.
     *
     * @param x from the left
     * @param y from the top
     */
    public record Spot(double x, double y) {}

    /**
     * What stands nearest to a place.
     *
     * @param figure the figure
     * @param plot where its data stand
     * @param spot the place
     * @return the reading on the nearest series; none outside the plot or beside all data
     */
    public static Optional<Reading> near(Figure figure, Plot plot, Spot spot) {
        if (!plot.area().holds(spot.x(), spot.y())) {
            return Optional.empty();
        }
        Reading best = null;
        double least = Double.POSITIVE_INFINITY;
        List<Series> all = figure.series();
        for (int i = 0; i < all.size(); i++) {
            Optional<Reading> one = near(figure, i, plot, spot);
            if (one.isPresent()) {
                double apart = apart(all.get(i), one.get(), plot, spot);
                if (apart < least) {
                    least = apart;
                    best = one.get();
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private static double apart(Series series, Reading one, Plot plot, Spot spot) {
        double beside = series instanceof Series.Dots ? plot.xPx(one.x()) - spot.x() : 0;
        if (series instanceof Series.Bars) {
            return Math.abs(plot.xPx(one.x()) - spot.x());
        }
        return Math.hypot(beside, plot.yPx(one.y()) - spot.y());
    }

    private static Optional<Reading> near(Figure figure, int index, Plot plot, Spot spot) {
        Series series = figure.series().get(index);
        double x = plot.xAt(spot.x());
        if (series instanceof Series.Curve curve) {
            return nearest(curve.x(), curve.y(), x, plot, spot).stream()
                    .mapToObj(y -> of(figure, index, plot, x, y))
                    .findFirst();
        } else if (series instanceof Series.Band band) {
            OptionalDouble low = nearest(band.x(), band.low(), x, plot, spot);
            OptionalDouble high = nearest(band.x(), band.high(), x, plot, spot);
            if (low.isEmpty() || high.isEmpty()) {
                return Optional.empty();
            }
            double toLow = Math.abs(plot.yPx(low.getAsDouble()) - spot.y());
            double toHigh = Math.abs(plot.yPx(high.getAsDouble()) - spot.y());
            double y = toLow < toHigh ? low.getAsDouble() : high.getAsDouble();
            return Optional.of(of(figure, index, plot, x, y));
        } else if (series instanceof Series.Dots dots) {
            int nearest = -1;
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < dots.size(); i++) {
                double apart =
                        Math.hypot(
                                plot.xPx(dots.x().at(i)) - spot.x(),
                                plot.yPx(dots.y().at(i)) - spot.y());
                if (apart < least) {
                    nearest = i;
                    least = apart;
                }
            }
            return nearest < 0 ? Optional.empty() : at(figure, index, nearest, plot);
        } else if (series instanceof Series.Bars bars) {
            int count =
                    (int) figure.series().stream().filter(Series.Bars.class::isInstance).count();
            int place = (int) Math.round(x - (index - (count - 1) / 2.0) * BARS_OF_SLOT / count);
            return place < 0 || place >= bars.size()
                    ? Optional.empty()
                    : at(figure, index, place, plot);
        }
        throw new AssertionError(series.getClass());
    }

    /**
     * The reading at one point of a series.
     *
     * @param figure the figure
     * @param series which series, from 0
     * @param point which of its points, from 0
     * @param plot where the data stand
     * @return the reading; none at a gap
     */
    public static Optional<Reading> at(Figure figure, int series, int point, Plot plot) {
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
            int count =
                    (int) figure.series().stream().filter(Series.Bars.class::isInstance).count();
            x = point + (series - (count - 1) / 2.0) * BARS_OF_SLOT / count;
            y = bars.values().at(point);
        } else {
            throw new AssertionError(one.getClass());
        }
        return Double.isFinite(x) && Double.isFinite(y)
                ? Optional.of(of(figure, series, plot, x, y))
                : Optional.empty();
    }

    private static Reading of(Figure figure, int index, Plot plot, double x, double y) {
        Series series = figure.series().get(index);
        String value = number(y, plot.y(), figure.y());
        String words;
        if (series instanceof Series.Bars bars) {
            int place = (int) Math.round(x);
            String word = bars.words().get(Math.max(0, Math.min(bars.size() - 1, place)));
            words = named(series, figure) + word + ", " + value;
        } else {
            words = named(series, figure) + number(x, plot.x(), figure.x()) + ", " + value;
        }
        return new Reading(index, x, y, words);
    }

    private static String named(Series series, Figure figure) {
        boolean alone = figure.series().size() == 1 || series.name().isBlank();
        return alone ? "" : series.name().strip() + ": ";
    }

    private static String number(double value, Span span, Axis axis) {
        String unit = axis.unit().isBlank() ? "" : " " + axis.unit();
        String label = unit.isEmpty() && !axis.label().isBlank() ? axis.label() + " " : "";
        return label + Digits.of(value, span.width() / FINENESS) + unit;
    }

    /** Of the places where a line passes over an x, the one nearest to the spot. */
    private static OptionalDouble nearest(Numbers xs, Numbers ys, double x, Plot plot, Spot spot) {
        double best = Double.NaN;
        for (int i = 0; i + 1 < xs.size(); i++) {
            double y = between(xs, ys, i, x);
            boolean nearer =
                    Double.isNaN(best)
                            || Math.abs(plot.yPx(y) - spot.y())
                                    < Math.abs(plot.yPx(best) - spot.y());
            if (Double.isFinite(y) && nearer) {
                best = y;
            }
        }
        return Double.isNaN(best) ? OptionalDouble.empty() : OptionalDouble.of(best);
    }

    /** The value over a line's part from one point to the next; NaN beside it. */
    private static double between(Numbers xs, Numbers ys, int i, double x) {
        double from = xs.at(i);
        double to = xs.at(i + 1);
        if (!(Math.min(from, to) <= x && x <= Math.max(from, to))) {
            return Double.NaN;
        }
        double share = from == to ? 0 : (x - from) / (to - from);
        return ys.at(i) + share * (ys.at(i + 1) - ys.at(i));
    }

    /** The first value of a line over an x. */
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
