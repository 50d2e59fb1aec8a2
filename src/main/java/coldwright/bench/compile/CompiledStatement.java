package coldwright.bench.compile;

import coldwright.bench.remote.Order;

import java.util.List;
import java.util.Optional;

/**
 * A compiled statement of a snippet.
 *
 * @param start where it begins, characters from the snippet's start, comments before it included
 * @param text its text as compiled
 * @param orders orders that run it in the bench's process
 * @param type type of its value if it is an expression that gives one
 * @param declared its variable, if it declares exactly one
 */
public record CompiledStatement(
        int start,
        String text,
        List<Order> orders,
        Optional<String> type,
        Optional<DeclaredVariable> declared) {
    /** Makes defensive copies. */
    public CompiledStatement {
        orders = List.copyOf(orders);
    }

    /**
     * The order that sets its variable instead of running it, if the variable can take the number.
     */
    Optional<Order.Assign> assigned(double value) {
        return declared.filter(variable -> variable.takes(value))
                .map(variable -> new Order.Assign(variable.holder(), variable.name(), value));
    }

    /**
     * A declared variable.
     *
     * @param type its type as written or inferred
     * @param holder the class that contains it
     */
    public record DeclaredVariable(String name, String type, String holder) {
        boolean takes(double value) {
            return type.equals("double")
                    ? Double.isFinite(value)
                    : type.equals("int") && value == (int) value;
        }
    }
}
