package coldwright.figure;

import java.util.ArrayList;
import java.util.List;

/** Describes a curve through its finite points: where it turns and where it levels off. */
final class CurveShape {
    /** A rise or fall of less than this share of the curve's range doesn't count as a turn. */
    private static final double NO_TURN = 0.02;

    /** A curve that changes less than this share of its range at its end has levelled off. */
    private static final double LEVEL = 0.05;

    /** The last part of the x range, over which a curve must be level. */
    private static final double LAST_PART = 0.25;

    private static final int MOST_TURNS = 3;

    private final double[] x;
    private final double[] y;
    private final boolean gaps;

    private CurveShape(double[] x, double[] y, boolean gaps) {
        this.x = x;
        this.y = y;
        this.gaps = gaps;
    }

    static CurveShape of(NumberColumn xs, NumberColumn ys) {
        double[] x = new double[xs.size()];
        double[] y = new double[xs.size()];
        int count = 0;
        int first = -1;
        int last = -1;
        for (int i = 0; i < xs.size(); i++) {
            if (Double.isFinite(xs.at(i)) && Double.isFinite(ys.at(i))) {
                x[count] = xs.at(i);
                y[count] = ys.at(i);
                count++;
                first = first < 0 ? i : first;
                last = i;
            }
        }
        boolean gaps = count > 0 && last - first + 1 > count;
        return new CurveShape(
                java.util.Arrays.copyOf(x, count), java.util.Arrays.copyOf(y, count), gaps);
    }

    int size() {
        return x.length;
    }

    int lowest() {
        return extreme(y, -1);
    }

    int highest() {
        return extreme(y, 1);
    }

    int leftmost() {
        return extreme(x, -1);
    }

    int rightmost() {
        return extreme(x, 1);
    }

    private static int extreme(double[] values, int sign) {
        int best = 0;
        for (int i = 1; i < values.length; i++) {
            if (sign * values[i] > sign * values[best]) {
                best = i;
            }
        }
        return best;
    }

    double yWidth() {
        return size() == 0 ? 0 : y[highest()] - y[lowest()];
    }

    double xWidth() {
        return size() == 0 ? 0 : x[rightmost()] - x[leftmost()];
    }

    String yNumber(int i) {
        return TypesetNumber.plain(y[i], yWidth());
    }

    String xNumber(int i) {
        return TypesetNumber.plain(x[i], xWidth());
    }

    String y(int i, Axis axis) {
        return yNumber(i) + (axis.unit().isBlank() ? "" : " " + axis.unit());
    }

    String x(int i, Axis axis) {
        return xNumber(i) + (axis.unit().isBlank() ? "" : " " + axis.unit());
    }

    /** Describes the whole curve in words. */
    String describe(Figure figure) {
        if (size() == 0) {
            return "no points";
        }
        String way =
                " as %s goes from %s to %s"
                        .formatted(
                                figure.x().label().isBlank() ? "x" : figure.x().label(),
                                xNumber(0),
                                x(size() - 1, figure.x()));
        if (x[size() - 1] > x[0]) {
            way = way.replace(" goes ", " rises ");
        }
        String withGaps = gaps ? ", with gaps" : "";
        if (size() == 1) {
            return y(0, figure.y()) + " at " + x(0, figure.x());
        }
        if (yWidth() <= 1e-9 * Math.max(Math.abs(y[lowest()]), Math.abs(y[highest()]))) {
            return "stays at " + y(0, figure.y()) + way + withGaps;
        }
        List<Integer> turns = turns();
        if (turns.size() > MOST_TURNS) {
            return "goes up and down between %s and %s"
                            .formatted(yNumber(lowest()), y(highest(), figure.y()))
                    + way
                    + withGaps;
        }
        return legs(turns, figure) + (turns.isEmpty() ? way + levelled(figure) : way) + withGaps;
    }

    private String legs(List<Integer> turns, Figure figure) {
        StringBuilder text = new StringBuilder();
        int from = 0;
        for (int turn : turns) {
            text.append(from == 0 ? leg(from, turn) + " from " + yNumber(0) : leg(from, turn));
            text.append(" to ").append(y(turn, figure.y()));
            text.append(" at ").append(x(turn, figure.x())).append(", then ");
            from = turn;
        }
        int end = size() - 1;
        String start = from == 0 ? " from " + yNumber(0) : "";
        return text + leg(from, end) + start + " to " + y(end, figure.y());
    }

    private String leg(int from, int to) {
        return y[to] > y[from] ? "rises" : "falls";
    }

    private String levelled(Figure figure) {
        double end = y[size() - 1];
        int i = size() - 1;
        while (i > 0 && Math.abs(y[i - 1] - end) <= LEVEL * yWidth()) {
            i--;
        }
        boolean level = Math.abs(x[size() - 1] - x[i]) >= LAST_PART * xWidth();
        return level && i > 0 ? ", levelling off from about " + x(i, figure.x()) : "";
    }

    /** The turning points, except those too small to be seen. */
    private List<Integer> turns() {
        List<Integer> turns = new ArrayList<>();
        double least = NO_TURN * yWidth();
        int extreme = 0;
        int direction = 0;
        for (int i = 1; i < size(); i++) {
            if (direction == 0) {
                direction = Math.abs(y[i] - y[0]) > least ? (int) Math.signum(y[i] - y[0]) : 0;
                extreme = direction == 0 ? 0 : i;
            } else if (direction * y[i] > direction * y[extreme]) {
                extreme = i;
            } else if (direction * (y[extreme] - y[i]) > least) {
                turns.add(extreme);
                direction = -direction;
                extreme = i;
            }
        }
        return turns;
    }
}
