package coldwright.figure;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/** An immutable list of numbers, one for each point of a series. */
public final class NumberColumn {
    private final double[] values;

    private NumberColumn(double[] values) {
        this.values = values;
    }

    /** Copies numbers; one that isn't finite leaves a gap in the curve. */
    public static NumberColumn of(double... values) {
        return new NumberColumn(values.clone());
    }

    /**
     * Evenly spaced numbers from one end to the other, both included.
     *
     * @param count how many, 2 or more
     */
    public static NumberColumn spaced(double from, double to, int count) {
        if (count < 2) {
            throw new IllegalArgumentException("count is " + count + "; it must be 2 or more");
        }
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = from + (to - from) * i / (count - 1);
        }
        return new NumberColumn(values);
    }

    /** {@return a function's results for each number, in the same order} */
    public NumberColumn map(DoubleUnaryOperator function) {
        return new NumberColumn(Arrays.stream(values).map(function).toArray());
    }

    /** {@return each number once, in order of first use} */
    public NumberColumn distinct() {
        return new NumberColumn(Arrays.stream(values).distinct().toArray());
    }

    /** {@return the number of values} */
    public int size() {
        return values.length;
    }

    /**
     * {@return the value at an index}
     *
     * @param index from 0
     */
    public double at(int index) {
        return values[index];
    }

    /** {@return a copy as a new array} */
    public double[] toArray() {
        return values.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof NumberColumn that && Arrays.equals(values, that.values);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        return Arrays.toString(values);
    }
}
