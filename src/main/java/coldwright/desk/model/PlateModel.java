package coldwright.desk.model;

import coldwright.figure.Drawing;
import coldwright.figure.Exhibit;
import coldwright.figure.Figure;
import coldwright.figure.Series;
import coldwright.paint.Plot;
import coldwright.paint.Span;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.SimpleBooleanProperty;

import java.util.Optional;

/**
 * What a plate shows of its figure: which part, with or without the earlier trace, which moment.
 */
public final class PlateModel {
    /** How much nearer or farther one press brings the figure. */
    private static final double NEARER = 0.7;

    private final BooleanProperty earlierShown = new SimpleBooleanProperty(true);
    private final ReadOnlyBooleanWrapper zoomed = new ReadOnlyBooleanWrapper(false);
    private final Play play = new Play();
    private Drawn drawn;
    private Optional<Part> part = Optional.empty();
    private int series;
    private int point = -1;

    /**
     * The part of a figure that is seen.
     *
     * @param x from where to where along the level axis
     * @param y from where to where along the upright axis
     */
    private record Part(Span x, Span y) {}

    /**
     * Shows a figure or drawing; where it counts the same things the part that is seen stays.
     *
     * @param is what to show
     * @return whether it counts other things than the one before
     */
    public boolean show(Drawn is) {
        boolean other = drawn == null || !sameAxes(drawn.exhibit(), is.exhibit());
        if (other) {
            whole();
            point = -1;
        }
        drawn = is;
        if (is.exhibit() instanceof Drawing drawing) {
            play.take(drawing.moments().size());
        } else {
            play.take(1);
        }
        return other;
    }

    private static boolean sameAxes(Exhibit one, Exhibit other) {
        return one instanceof Figure was
                && other instanceof Figure is
                && was.x().caption().equals(is.x().caption())
                && was.y().caption().equals(is.y().caption())
                && barred(was) == barred(is);
    }

    private static boolean barred(Figure figure) {
        return figure.series().stream().anyMatch(Series.Bars.class::isInstance);
    }

    /**
     * What is to be painted.
     *
     * @return the drawing, or the part of the figure that is seen, with the learner's forecast
     */
    public Exhibit seen() {
        Exhibit whole = drawn.shown();
        if (whole instanceof Figure figure && part.isPresent()) {
            Part some = part.get();
            return figure.xBetween(some.x().from(), some.x().to())
                    .yBetween(some.y().from(), some.y().to());
        }
        return whole;
    }

    /**
     * The trace behind it.
     *
     * @return the earlier figure, if there is one and it is wanted
     */
    public Optional<Figure> earlier() {
        return drawn.earlier().filter(was -> earlierShown.get());
    }

    /**
     * Sees only a part, if it is one: no smaller than some pixels, and no bars, which have no
     * between.
     *
     * @param plot where the data stand
     * @param one a corner of the part
     * @param other the corner across
     */
    public void zoom(Plot plot, Reading.Spot one, Reading.Spot other) {
        boolean tiny = Math.abs(one.x() - other.x()) < 6 || Math.abs(one.y() - other.y()) < 6;
        if (!tiny && canZoom()) {
            part =
                    Optional.of(
                            new Part(
                                    span(plot.xAt(one.x()), plot.xAt(other.x()), plot.x()),
                                    span(plot.yAt(one.y()), plot.yAt(other.y()), plot.y())));
            zoomed.set(true);
        }
    }

    private static Span span(double a, double b, Span within) {
        double from = Math.max(within.from(), Math.min(a, b));
        double to = Math.min(within.to(), Math.max(a, b));
        return from < to ? new Span(from, to) : within;
    }

    /**
     * Whether parts can be seen.
     *
     * @return true of a chart without bars
     */
    public boolean canZoom() {
        return drawn != null && drawn.exhibit() instanceof Figure figure && !barred(figure);
    }

    /**
     * Sees it from nearer or farther.
     *
     * @param plot where the data stand
     * @param reading what stays in the middle, if anything is read
     * @param nearer nearer if true
     */
    public void zoom(Plot plot, Optional<Reading> reading, boolean nearer) {
        if (!canZoom() || !nearer && !zoomed.get()) {
            return;
        }
        double x = reading.map(Reading::x).orElse((plot.x().from() + plot.x().to()) / 2);
        double y = reading.map(Reading::y).orElse((plot.y().from() + plot.y().to()) / 2);
        double by = nearer ? NEARER : 1 / NEARER;
        part = Optional.of(new Part(about(x, plot.x(), by), about(y, plot.y(), by)));
        zoomed.set(true);
    }

    private static Span about(double middle, Span span, double by) {
        double half = span.width() * by / 2;
        double held = Math.max(span.from(), Math.min(span.to(), middle));
        boolean told = held - half < held + half && Double.isFinite(half);
        return told ? new Span(held - half, held + half) : span;
    }

    /** Sees all of it. */
    public void whole() {
        part = Optional.empty();
        zoomed.set(false);
    }

    /**
     * Walks along a series by the keyboard.
     *
     * @param plot where the data stand
     * @param steps how many fiftieths of the points, back if negative
     * @return what is read there
     */
    public Optional<Reading> walk(Plot plot, int steps) {
        if (!(seen() instanceof Figure figure) || figure.series().isEmpty()) {
            return Optional.empty();
        }
        series = Math.min(series, figure.series().size() - 1);
        Series one = figure.series().get(series);
        int size = one.size();
        int stride = one instanceof Series.Curve ? Math.max(1, size / 50) : 1;
        point = point < 0 && Math.abs(steps) <= 1 ? size / 2 : point + steps * stride;
        point = Math.max(0, Math.min(size - 1, point));
        return size == 0 ? Optional.empty() : Reading.at(figure, series, point, plot);
    }

    /**
     * Goes over to another series, to the same share of its points.
     *
     * @param plot where the data stand
     * @param by 1 to the next, −1 to the one before
     * @return what is read there
     */
    public Optional<Reading> change(Plot plot, int by) {
        if (!(seen() instanceof Figure figure) || figure.series().isEmpty()) {
            return Optional.empty();
        }
        int count = figure.series().size();
        series = Math.min(series, count - 1);
        int was = Math.max(1, figure.series().get(series).size());
        double share = point < 0 ? 0.5 : point / (double) was;
        series = Math.floorMod(series + by, count);
        point = (int) (share * figure.series().get(series).size());
        return walk(plot, 0);
    }

    /**
     * What it was last given.
     *
     * @return the figure or drawing; null before
     */
    public Drawn drawn() {
        return drawn;
    }

    /**
     * Whether the earlier trace is wanted.
     *
     * @return true at first
     */
    public BooleanProperty earlierShown() {
        return earlierShown;
    }

    /**
     * Whether only a part is seen.
     *
     * @return true if so
     */
    public ReadOnlyBooleanProperty zoomed() {
        return zoomed.getReadOnlyProperty();
    }

    /**
     * The time of a drawing.
     *
     * @return which moment is seen
     */
    public Play play() {
        return play;
    }
}
