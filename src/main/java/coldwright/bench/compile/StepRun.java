package coldwright.bench.compile;

import coldwright.bench.remote.Order;

import java.util.List;
import java.util.Map;

/**
 * A compiled step with the numbers it is to run with.
 *
 * @param step the step
 * @param numbers variables to set instead of running their declarations, by statement
 * @param text the snippet as it is written, with these numbers
 */
public record StepRun(CompiledStep step, Map<Integer, Order.Assign> numbers, String text) {
    /** Copies what is given. */
    public StepRun {
        numbers = Map.copyOf(numbers);
    }

    /**
     * What runs it.
     *
     * @param tell whether the value of its last expression is wanted
     * @return the orders
     */
    public List<Order> orders(boolean tell) {
        return step.orders(tell, numbers);
    }

    /**
     * What runs it again where its classes are known already.
     *
     * @param tell whether the value of its last expression is wanted
     * @return the orders
     */
    public List<Order> ordersAgain(boolean tell) {
        return orders(tell).stream().filter(order -> !(order instanceof Order.Define)).toList();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof StepRun that && step == that.step && numbers.equals(that.numbers);
    }

    @Override
    public int hashCode() {
        return 31 * System.identityHashCode(step) + numbers.hashCode();
    }
}
