package coldwright.science.crystal;

import coldwright.science.Band;

import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.ToDoubleFunction;

/** Three values: for the finest, the middle and the coarsest outcome of a band. */
record LowMidHigh<T>(T fine, T middle, T coarse) {
    /** Three values by corner: 0 fine, 1 middle, 2 coarse. */
    static <T> LowMidHigh<T> of(IntFunction<T> corner) {
        return new LowMidHigh<>(corner.apply(0), corner.apply(1), corner.apply(2));
    }

    T get(int corner) {
        return corner == 0 ? fine : corner == 1 ? middle : coarse;
    }

    <U> LowMidHigh<U> map(Function<T, U> change) {
        return of(corner -> change.apply(get(corner)));
    }

    Band band(ToDoubleFunction<T> measure) {
        double a = measure.applyAsDouble(fine);
        double b = measure.applyAsDouble(middle);
        double c = measure.applyAsDouble(coarse);
        return new Band(Math.min(a, Math.min(b, c)), b, Math.max(a, Math.max(b, c)));
    }
}
