package coldwright.desk.figure.model;

import coldwright.figure.Drawing;
import coldwright.figure.Exhibit;
import coldwright.figure.Figure;
import coldwright.figure.Series;
import coldwright.paint.style.PlotArea;
import coldwright.paint.style.ValueSpan;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.SimpleBooleanProperty;

import java.util.Optional;

/**
 * What a plate shows of its figure: which part, with or without the earlier trace, which moment.
 */
public final class FigureModel {
    /** How much nearer or farther one press brings the figure. */
    private static final double NEARER = 0.7;

    private final BooleanProperty earlierShown = new SimpleBooleanProperty(true);
    private final ReadOnlyBooleanWrapper zoomed = new ReadOnlyBooleanWrapper(false);
    private final Playback playback = new Playback();
    private ShownFigure shownFigure;
    private Optional<ViewedRange> part = Optional.empty();
    private int series;
    private int point = -1;

    /**
     * The part of a figure that is seen.
     *
     * @param x from where to where along the level axis
     * @param y from where to where along the upright axis
     */
    private record ViewedRange(ValueSpan x, ValueSpan y) {}

    /**
     * Shows a figure or drawing; where it counts the same things the part that is seen stays.
     *
     * @param is what to show
     * @return whether it counts other things than the one before
     */
    public boolean show(ShownFigure is) {
        boolean other = shownFigure == null || !sameAxes(shownFigure.exhibit(), is.exhibit());
        if (other) {
            whole();
            point = -1;
        }
        shownFigure = is;
        if (is.exhibit() instanceof Drawing drawing) {
            playback.take(drawing.moments().size());
        } else {
            playback.take(1);
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
        Exhibit whole = shownFigure.shown();
        if (whole instanceof Figure figure && part.isPresent()) {
            ViewedRange some = part.get();
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
        return shownFigure.earlier().filter(was -> earlierShown.get());
    }

    /**
     * Sees only a part, if it is one: no smaller than some pixels, and no bars, which have no
     * between.
     *
     * @param plot where the data stand
     * @param one a corner of the part
     * @param other the corner across
     */
    public void zoom(PlotArea plot, FigureReadout.SheetPoint one, FigureReadout.SheetPoint other) {
        boolean tiny = Math.abs(one.x() - other.x()) < 6 || Math.abs(one.y() - other.y()) < 6;
        if (!tiny && canZoom()) {
            part =
                    Optional.of(
                            new ViewedRange(
                                    span(plot.xAt(one.x()), plot.xAt(other.x()), plot.x()),
                                    span(plot.yAt(one.y()), plot.yAt(other.y()), plot.y())));
            zoomed.set(true);
        }
    }

    private static ValueSpan span(double a, double b, ValueSpan within) {
        double from = Math.max(within.from(), Math.min(a, b));
        double to = Math.min(within.to(), Math.max(a, b));
        return from < to ? new ValueSpan(from, to) : within;
    }

    /**
     * Whether parts can be seen.
     *
     * @return true of a chart without bars
     */
    public boolean canZoom() {
        return shownFigure != null
                && shownFigure.exhibit() instanceof Figure figure
                && !barred(figure);
    }

    /**
     * Sees it from nearer or farther.
     *
     * @param plot where the data stand
     * @param reading what stays in the middle, if anything is read
     * @param nearer nearer if true
     */
    public void zoom(PlotArea plot, Optional<FigureReadout> reading, boolean nearer) {
        if (!canZoom() || !nearer && !zoomed.get()) {
            return;
        }
        double x = reading.map(FigureReadout::x).orElse((plot.x().from() + plot.x().to()) / 2);
        double y = reading.map(FigureReadout::y).orElse((plot.y().from() + plot.y().to()) / 2);
        double by = nearer ? NEARER : 1 / NEARER;
        part = Optional.of(new ViewedRange(about(x, plot.x(), by), about(y, plot.y(), by)));
        zoomed.set(true);
    }

    private static ValueSpan about(double middle, ValueSpan span, double by) {
        double half = span.width() * by / 2;
        double held = Math.max(span.from(), Math.min(span.to(), middle));
        boolean told = held - half < held + half && Double.isFinite(half);
        return told ? new ValueSpan(held - half, held + half) : span;
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
    public Optional<FigureReadout> walk(PlotArea plot, int steps) {
        if (!(seen() instanceof Figure figure) || figure.series().isEmpty()) {
            return Optional.empty();
        }
        series = Math.min(series, figure.series().size() - 1);
        Series one = figure.series().get(series);
        int size = one.size();
        int stride = one instanceof Series.Curve ? Math.max(1, size / 50) : 1;
        point = point < 0 && Math.abs(steps) <= 1 ? size / 2 : point + steps * stride;
        point = Math.max(0, Math.min(size - 1, point));
        return size == 0 ? Optional.empty() : FigureReadout.at(figure, series, point, plot);
    }

    /**
     * Goes over to another series, to the same share of its points.
     *
     * @param plot where the data stand
     * @param by 1 to the next, −1 to the one before
     * @return what is read there
     */
    public Optional<FigureReadout> change(PlotArea plot, int by) {
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
    public ShownFigure drawn() {
        return shownFigure;
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
    public Playback play() {
        return playback;
    }
}
