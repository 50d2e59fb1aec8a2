package coldwright.figure;

import static coldwright.figure.FigureDescription.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.IntStream;

/** Describes a curve through its finite points: where it turns and where it levels off. */
record CurveShape(NumberColumn x, NumberColumn y, boolean gaps, Figure figure) {
    /** A rise or fall of less than this share of the curve's range doesn't count as a turn. */
    private static final double NO_TURN = 0.02;

    /** A curve that changes less than this share of its range at its end has levelled off. */
    private static final double LEVEL = 0.05;

    /** The last part of the x range, over which a curve must be level. */
    private static final double LAST_PART = 0.25;

    private static final int MOST_TURNS = 3;

    static CurveShape of(NumberColumn xs, NumberColumn ys, Figure figure) {
        int[] finite =
                IntStream.range(0, xs.size())
                        .filter(i -> Double.isFinite(xs.at(i)) && Double.isFinite(ys.at(i)))
                        .toArray();
        int count = finite.length;
        return new CurveShape(
                NumberColumn.of(Arrays.stream(finite).mapToDouble(xs::at).toArray()),
                NumberColumn.of(Arrays.stream(finite).mapToDouble(ys::at).toArray()),
                count > 0 && finite[count - 1] - finite[0] + 1 > count,
                figure);
    }

    int size() {
        return x.size();
    }

    DoubleSummaryStatistics xRange() {
        return Arrays.stream(x.toArray()).summaryStatistics();
    }

    DoubleSummaryStatistics yRange() {
        return Arrays.stream(y.toArray()).summaryStatistics();
    }

    double yWidth() {
        return size() == 0 ? 0 : yRange().getMax() - yRange().getMin();
    }

    String yNumber(double value) {
        return TypesetNumber.plain(value, yWidth());
    }

    String xNumber(double value) {
        return TypesetNumber.plain(value, size() == 0 ? 0 : xRange().getMax() - xRange().getMin());
    }

    /** The y value of a point with its unit. */
    String y(int i) {
        return figure.y().with(yNumber(y.at(i)));
    }

    /** The x value of a point with its unit. */
    String x(int i) {
        return figure.x().with(xNumber(x.at(i)));
    }

    String point(int i) {
        return text("point", y(i), x(i));
    }

    /** Describes the whole curve in words. */
    String describe() {
        if (size() < 2) {
            return size() == 0 ? text("points.none") : point(0);
        }
        int last = size() - 1;
        DoubleSummaryStatistics range = yRange();
        double largest = Math.max(Math.abs(range.getMin()), Math.abs(range.getMax()));
        List<Integer> turns = turns();
        String course;
        if (yWidth() <= 1e-9 * largest) {
            course = text("course.level", y(0));
        } else if (turns.size() > MOST_TURNS) {
            course =
                    text(
                            "course.wave",
                            yNumber(range.getMin()),
                            figure.y().with(yNumber(range.getMax())));
        } else {
            course = legs(turns);
        }
        String whole =
                text(
                        x.at(last) > x.at(0) ? "course.rising" : "course.going",
                        course,
                        figure.x().label().isBlank() ? "x" : figure.x().label(),
                        xNumber(x.at(0)),
                        x(last));
        String end = turns.isEmpty() && yWidth() > 1e-9 * largest ? levelled(whole) : whole;
        return gaps ? text("course.gaps", end) : end;
    }

    private String legs(List<Integer> turns) {
        int from = 0;
        String legs = "";
        for (int i = 0; i <= turns.size(); i++) {
            int to = i < turns.size() ? turns.get(i) : size() - 1;
            String way = y.at(to) > y.at(from) ? "rises" : "falls";
            legs =
                    from == 0
                            ? text("course." + way, yNumber(y.at(0)), y(to))
                            : text("course.then-" + way, legs, x(from), y(to));
            from = to;
        }
        return legs;
    }

    private String levelled(String course) {
        int last = size() - 1;
        int i = last;
        double least = LEVEL * yWidth();
        while (i > 0 && Math.abs(y.at(i - 1) - y.at(last)) <= least) {
            i--;
        }
        DoubleSummaryStatistics range = xRange();
        boolean level =
                Math.abs(x.at(last) - x.at(i)) >= LAST_PART * (range.getMax() - range.getMin());
        return level && i > 0 ? text("course.levelling", course, x(i)) : course;
    }

    /** The turning points, except those too small to be seen. */
    private List<Integer> turns() {
        List<Integer> turns = new ArrayList<>();
        double least = NO_TURN * yWidth();
        int extreme = 0;
        int direction = 0;
        for (int i = 1; i < size(); i++) {
            if (direction == 0) {
                direction =
                        Math.abs(y.at(i) - y.at(0)) > least
                                ? (int) Math.signum(y.at(i) - y.at(0))
                                : 0;
                extreme = direction == 0 ? 0 : i;
            } else if (direction * y.at(i) > direction * y.at(extreme)) {
                extreme = i;
            } else if (direction * (y.at(extreme) - y.at(i)) > least) {
                turns.add(extreme);
                direction = -direction;
                extreme = i;
            }
        }
        return turns;
    }
}
