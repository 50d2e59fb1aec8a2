package coldwright.science.crystal;

import coldwright.science.Band;

import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** Three values: for the finest, the middle and the coarsest outcome of a band. */
record LowMidHigh<T>(T fine, T middle, T coarse) {
    <U> LowMidHigh<U> map(Function<T, U> change) {
        return new LowMidHigh<>(change.apply(fine), change.apply(middle), change.apply(coarse));
    }

    Band band(ToDoubleFunction<T> measure) {
        double a = measure.applyAsDouble(fine);
        double b = measure.applyAsDouble(middle);
        double c = measure.applyAsDouble(coarse);
        return new Band(Math.min(a, Math.min(b, c)), b, Math.max(a, Math.max(b, c)));
    }
}
