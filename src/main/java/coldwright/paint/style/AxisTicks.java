package coldwright.paint.style;

import coldwright.figure.TypesetNumber;

import java.util.ArrayList;
import java.util.List;

/** The ticks of an axis in its range, a step apart: multiples of 1, 2 or 5 times a power of ten. */
public record AxisTicks(ValueSpan span, double step) {
    /** Rounding tolerance, in steps, for a tick at the very end of an axis. */
    private static final double SLACK = 1e-6;

    /** At most {@code most} ticks for an axis. */
    public static AxisTicks on(ValueSpan span, int most) {
        return new AxisTicks(span, stepFor(span.width(), Math.max(1, most)));
    }

    /** The same axis, extended to the next tick at either end. */
    public static AxisTicks letOut(ValueSpan span, int most) {
        double step = stepFor(span.width(), Math.max(1, most));
        double from = Math.floor(span.from() / step + SLACK) * step;
        double to = Math.ceil(span.to() / step - SLACK) * step;
        return Double.isFinite(from) && Double.isFinite(to) && from < to
                ? new AxisTicks(new ValueSpan(from, to), step)
                : new AxisTicks(span, step);
    }

    private static double stepFor(double width, int most) {
        double rough = width / most;
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        for (int leading : new int[] {1, 2, 5}) {
            if (leading * power >= rough * (1 - SLACK)) {
                return leading * power;
            }
        }
        return 10 * power;
    }

    /** The first tick, in steps from zero. */
    private double first() {
        return Math.ceil(span.from() / step - SLACK);
    }

    public int count() {
        return (int) Math.max(0, Math.floor(span.to() / step + SLACK) - first() + 1);
    }

    public double value(int index) {
        double value = (first() + index) * step;
        return Math.abs(value) < step * SLACK ? 0 : value;
    }

    public List<String> labels() {
        List<String> labels = new ArrayList<>();
        double largest = Math.max(Math.abs(span.from()), Math.abs(span.to()));
        for (int i = 0; i < count(); i++) {
            labels.add(value(i) == 0 ? "0" : TypesetNumber.of(value(i), step, largest));
        }
        return labels;
    }
}
