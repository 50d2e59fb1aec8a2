package coldwright.bench.compile;

import coldwright.bench.remote.Order;

import java.util.List;
import java.util.Map;

/**
 * A compiled step with the numbers to run it with.
 *
 * @param numbers variables to set instead of running their declarations, by statement
 * @param text the snippet as written, with these numbers
 */
public record StepRun(CompiledStep step, Map<Integer, Order.Assign> numbers, String text) {
    /** Makes defensive copies. */
    public StepRun {
        numbers = Map.copyOf(numbers);
    }

    /**
     * The orders that run it.
     *
     * @param tell whether to return the value of its last expression
     */
    public List<Order> orders(boolean tell) {
        return step.orders(tell, numbers);
    }

    /**
     * The orders that rerun it where its classes are already loaded.
     *
     * @param tell whether to return the value of its last expression
     */
    public List<Order> ordersAgain(boolean tell) {
        return orders(tell).stream().filter(order -> !(order instanceof Order.Define)).toList();
    }

    /** A compiled step is itself alone, so its identity is compared. */
    @Override
    @SuppressWarnings("ReferenceEquality")
    public boolean equals(Object other) {
        return other instanceof StepRun that
                && step.equals(that.step)
                && numbers.equals(that.numbers);
    }

    @Override
    public int hashCode() {
        return 31 * step.hashCode() + numbers.hashCode();
    }
}
