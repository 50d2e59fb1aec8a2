package coldwright.desk.figure.model;

import coldwright.desk.messages.Messages;
import coldwright.figure.Figure;
import coldwright.figure.FigureDescription;
import coldwright.figure.Series;
import coldwright.figure.TypesetNumber;
import coldwright.lesson.ExpectedAnswer;
import coldwright.workbook.work.LearnerAnswer;

import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** A curve that the learner draws by hand: one value for each position on the x axis. */
public final class CurveSketch {
    /** Number of keyboard steps along the x axis, so there is one position more. */
    public static final int PLACES = 20;

    /** Resolution of the mouse along the x axis. */
    private static final int COLUMNS = 200;

    private static final int COLUMNS_PER_PLACE = COLUMNS / PLACES;

    /** Share of the y axis by which one key press moves a value. */
    private static final double NUDGE = 1.0 / 40;

    /** Number of points at which two curves are compared. */
    private static final int COMPARED = 100;

    private final ExpectedAnswer.Curve axes;
    private final TreeMap<Integer, Double> columns = new TreeMap<>();
    private final ObservableList<LearnerAnswer.Point> points = FXCollections.observableArrayList();

    /** Kept because its listeners are attached to it, and its source refers to it weakly. */
    private final ObservableList<LearnerAnswer.Point> shown =
            FXCollections.unmodifiableObservableList(points);

    public CurveSketch(ExpectedAnswer.Curve axes) {
        this.axes = axes;
    }

    /** Draws a straight stroke over earlier values, in the axes' units, clamped to them. */
    public void draw(LearnerAnswer.Point from, LearnerAnswer.Point to) {
        int first = column(from.x());
        int last = column(to.x());
        int way = Integer.compare(last, first);
        for (int i = first; i != last; i += way) {
            double share = (i - first) / (double) (last - first);
            columns.put(i, within(from.y() + share * (to.y() - from.y())));
        }
        columns.put(last, within(to.y()));
        told();
    }

    /**
     * Moves the value at a place from 0 to {@link #PLACES}, or starts one there, by fortieths of
     * the y axis, down if negative.
     */
    public void nudge(int place, int steps) {
        double height = axes.upright().to() - axes.upright().from();
        double now = valueAt(place).orElseGet(() -> beside(place)) + steps * NUDGE * height;
        int at = place * COLUMNS_PER_PLACE;
        columns.subMap(at - COLUMNS_PER_PLACE + 1, at + COLUMNS_PER_PLACE).clear();
        columns.put(at, within(now));
        told();
    }

    /** Initial value: that of the nearest drawn position, or half way up. */
    private double beside(int place) {
        Map.Entry<Integer, Double> left = columns.floorEntry(place * COLUMNS_PER_PLACE);
        Map.Entry<Integer, Double> right = columns.ceilingEntry(place * COLUMNS_PER_PLACE);
        if (left != null) {
            return left.getValue();
        }
        return right != null ? right.getValue() : (axes.upright().from() + axes.upright().to()) / 2;
    }

    public void clear() {
        columns.clear();
        told();
    }

    /** Restores a curve drawn earlier. */
    public void restore(List<LearnerAnswer.Point> kept) {
        columns.clear();
        kept.forEach(point -> columns.put(column(point.x()), within(point.y())));
        told();
    }

    private void told() {
        points.setAll(
                columns.entrySet().stream()
                        .map(one -> new LearnerAnswer.Point(xAt(one.getKey()), one.getValue()))
                        .toList());
    }

    private int column(double x) {
        ExpectedAnswer.Scale level = axes.level();
        double share = (x - level.from()) / (level.to() - level.from());
        return (int) Math.round(Math.max(0, Math.min(1, share)) * COLUMNS);
    }

    private double xAt(int column) {
        ExpectedAnswer.Scale level = axes.level();
        return level.from() + (level.to() - level.from()) * column / COLUMNS;
    }

    private double within(double y) {
        return Math.max(axes.upright().from(), Math.min(axes.upright().to(), y));
    }

    /**
     * The value at a place from 0 to {@link #PLACES}, interpolated linearly, in the y axis' unit;
     * empty outside the drawn range.
     */
    public OptionalDouble valueAt(int place) {
        return at(place * COLUMNS_PER_PLACE);
    }

    private OptionalDouble at(double column) {
        Map.Entry<Integer, Double> left = columns.floorEntry((int) Math.floor(column));
        Map.Entry<Integer, Double> right = columns.ceilingEntry((int) Math.ceil(column));
        if (left == null || right == null) {
            return OptionalDouble.empty();
        }
        double wide = right.getKey() - left.getKey();
        double share = wide == 0 ? 0 : (column - left.getKey()) / wide;
        return OptionalDouble.of(left.getValue() + share * (right.getValue() - left.getValue()));
    }

    /** The x value of a place from 0 to {@link #PLACES}, in the x axis' unit. */
    public double xOf(int place) {
        return xAt(place * COLUMNS_PER_PLACE);
    }

    /** The drawn points from left to right, in the units of the axes; not to be changed. */
    public ObservableList<LearnerAnswer.Point> points() {
        return shown;
    }

    /** The axes to draw on, as an empty figure. */
    public Figure paper() {
        return Figure.of("")
                .x(axes.level().label(), axes.level().unit())
                .xBetween(axes.level().from(), axes.level().to())
                .y(axes.upright().label(), axes.upright().unit())
                .yBetween(axes.upright().from(), axes.upright().to());
    }

    /** The drawn line; empty with fewer than two points. */
    public Optional<Series.Curve> curve() {
        if (columns.size() < 2) {
            return Optional.empty();
        }
        double[] xs = points.stream().mapToDouble(LearnerAnswer.Point::x).toArray();
        double[] ys = points.stream().mapToDouble(LearnerAnswer.Point::y).toArray();
        return Optional.of((Series.Curve) paper().line(name(), xs, ys).series().get(0));
    }

    /** A figure with the drawn line as its last series, unless it has one of that name. */
    public Figure into(Figure figure) {
        boolean taken = figure.series().stream().anyMatch(one -> one.name().equals(name()));
        return curve().filter(line -> !taken).map(figure::plus).orElse(figure);
    }

    /** The drawn line's series name in the figure of the result. */
    public static String name() {
        return Messages.of("prediction.yours");
    }

    /** The drawn line in words: {@code falls from 0 to −4 °C as sucrose rises from 0 to 40 %}. */
    public Optional<String> description() {
        return curve().map(drawn -> FigureDescription.course(drawn, paper()));
    }

    /**
     * The distance of the drawn line from the result's first curve, in one sentence; empty if
     * nothing is drawn or the two don't overlap.
     */
    public Optional<String> distance(Series.Curve result) {
        double sum = 0;
        int count = 0;
        for (int i = 0; i <= COMPARED && columns.size() > 1; i++) {
            double column = i * COLUMNS / (double) COMPARED;
            double x = xAt(0) + (xAt(COLUMNS) - xAt(0)) * i / COMPARED;
            OptionalDouble mine = at(column);
            OptionalDouble its = FigureReadout.yAt(result, x);
            if (mine.isPresent() && its.isPresent()) {
                sum += Math.abs(mine.getAsDouble() - its.getAsDouble());
                count++;
            }
        }
        if (count == 0) {
            return Optional.empty();
        }
        double wide = axes.upright().to() - axes.upright().from();
        String mean = TypesetNumber.plain(sum / count, Math.min(wide, 4 * sum / count));
        String unit = axes.upright().unit().isBlank() ? "" : " " + axes.upright().unit();
        return Optional.of(Messages.of("prediction.distance", mean + unit));
    }
}
