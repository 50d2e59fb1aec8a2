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

/** The view of a figure: its zoom, its earlier trace, and the moment of a drawing. */
public final class FigureModel {
    /** Zoom factor of one key press. */
    private static final double NEARER = 0.7;

    private final BooleanProperty earlierShown = new SimpleBooleanProperty(true);
    private final ReadOnlyBooleanWrapper zoomed = new ReadOnlyBooleanWrapper(false);
    private final Playback playback = new Playback();
    private ShownFigure shownFigure;
    private Optional<ViewedRange> part = Optional.empty();
    private int series;
    private int point = -1;

    /** The visible part of a figure. */
    private record ViewedRange(ValueSpan x, ValueSpan y) {}

    /**
     * Shows a figure or drawing and keeps the zoom if the axes are the same; returns whether they
     * differ from those of the one before.
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

    /** What to paint: the drawing, or the visible part of the figure with the predicted curve. */
    public Exhibit seen() {
        Exhibit whole = shownFigure.shown();
        if (whole instanceof Figure figure && part.isPresent()) {
            ViewedRange some = part.get();
            return figure.xBetween(some.x().from(), some.x().to())
                    .yBetween(some.y().from(), some.y().to());
        }
        return whole;
    }

    /** The earlier figure, if there is one and it is wanted. */
    public Optional<Figure> earlier() {
        return shownFigure.earlier().filter(was -> earlierShown.get());
    }

    /** Zooms to the rectangle between two corners; not to a tiny one, nor on bars. */
    public void zoom(PlotArea plot, FigureReadout.ImagePoint one, FigureReadout.ImagePoint other) {
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

    /** Whether it can be zoomed; true for a chart without bars. */
    public boolean canZoom() {
        return shownFigure != null
                && shownFigure.exhibit() instanceof Figure figure
                && !barred(figure);
    }

    /** Zooms in or out around the readout, if there is one. */
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

    public void whole() {
        part = Optional.empty();
        zoomed.set(false);
    }

    /** Moves the readout along a series by fiftieths of the points, back if negative. */
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

    /** Moves the readout to the next series (1) or the previous (−1), at the same share. */
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

    /** The current figure or drawing; null before the first. */
    public ShownFigure drawn() {
        return shownFigure;
    }

    /** Whether the earlier trace is shown; initially true. */
    public BooleanProperty earlierShown() {
        return earlierShown;
    }

    public ReadOnlyBooleanProperty zoomed() {
        return zoomed.getReadOnlyProperty();
    }

    public Playback play() {
        return playback;
    }
}
