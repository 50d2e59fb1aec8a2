package coldwright.science.crystal;

import coldwright.science.Band;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** The same thing three times: for the finest, the middle and the coarsest outcome of a band. */
record Corners<T>(T fine, T middle, T coarse) {
    <U> Corners<U> map(Function<T, U> change) {
        return new Corners<>(change.apply(fine), change.apply(middle), change.apply(coarse));
    }

    /**
     * Changes all three at the same time, as far as there are processors. The thread that asks does
     * what no other takes up, so it waits for nobody who is busy with something else.
     */
    <U> Corners<U> mapAtOnce(Function<T, U> change) {
        List<U> changed = Stream.of(fine, middle, coarse).parallel().map(change).toList();
        return new Corners<>(changed.get(0), changed.get(1), changed.get(2));
    }

    Band band(ToDoubleFunction<T> measure) {
        double a = measure.applyAsDouble(fine);
        double b = measure.applyAsDouble(middle);
        double c = measure.applyAsDouble(coarse);
        return new Band(Math.min(a, Math.min(b, c)), b, Math.max(a, Math.max(b, c)));
    }
}
