package coldwright.bench.compile;

import coldwright.bench.remote.CompiledClass;
import coldwright.bench.remote.Order;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A compiled snippet: the orders that run it, any number of times. Equal only to itself.
 *
 * @param text the snippet's text
 * @param statements its statements, in order
 * @param refused the names that a confined snippet may not use; empty if it may run confined
 * @param hasNoSideEffects whether discarding its classes undoes all its effects; what a confined
 *     snippet may name leaves no threads, settings or files
 * @param repeatable whether its statements can run again in place, as if for the first time; false
 *     if they might change anything but their own variables
 */
public record CompiledStep(
        String text,
        List<CompiledStatement> statements,
        List<CompileProblem> refused,
        boolean hasNoSideEffects,
        boolean repeatable) {
    /** Makes defensive copies. */
    public CompiledStep {
        statements = List.copyOf(statements);
        refused = List.copyOf(refused);
    }

    /** A step that is compiled after others. */
    static CompiledStep of(
            String text,
            List<CompiledStatement> statements,
            List<CompileProblem> refused,
            List<CompiledStep> above) {
        CompiledStep step = new CompiledStep(text, statements, refused, false, false);
        List<CompiledClass> before = above.stream().flatMap(one -> one.classes().stream()).toList();
        boolean quiet = refused.isEmpty() && !RerunAnalysis.catchesErrors(step.classes());
        boolean repeatable =
                quiet
                        && step.redefinesNothing()
                        && above.stream().allMatch(CompiledStep::redefinesNothing)
                        && RerunAnalysis.judge(step.classes(), before);
        return new CompiledStep(text, statements, refused, quiet, repeatable);
    }

    /**
     * This step with the dial positions of a snippet.
     *
     * @return how to run it without compiling; empty if the snippet differs, or a position isn't a
     *     valid value of its variable
     */
    public Optional<StepRun> with(SnippetSource snippet) {
        if (!snippet.compiledText().equals(text)) {
            return snippet.text().equals(text)
                    ? Optional.of(new StepRun(this, Map.of(), text))
                    : Optional.empty();
        }
        Map<Integer, Order.Assign> numbers = new HashMap<>();
        for (Map.Entry<Integer, Double> dial : snippet.values().entrySet()) {
            int statement = statementAt(dial.getKey());
            Optional<Order.Assign> assign =
                    statement < 0
                            ? Optional.empty()
                            : statements.get(statement).assigned(dial.getValue());
            if (assign.isEmpty()) {
                return Optional.empty();
            }
            numbers.put(statement, assign.get());
        }
        return Optional.of(new StepRun(this, numbers, snippet.text()));
    }

    private int statementAt(int place) {
        int at = statements.size() - 1;
        while (at >= 0 && statements.get(at).start() > place) {
            at--;
        }
        return at;
    }

    private boolean redefinesNothing() {
        return statements.stream()
                .flatMap(statement -> statement.orders().stream())
                .noneMatch(Order.Redefine.class::isInstance);
    }

    /** The binary names of the classes it defines, with dots. */
    public List<String> classNames() {
        return classes().stream().map(CompiledClass::name).toList();
    }

    List<Order> orders(boolean tell, Map<Integer, Order.Assign> numbers) {
        List<Order> orders = new ArrayList<>();
        int telling = tell ? lastExpression() : -1;
        for (int i = 0; i < statements.size(); i++) {
            for (Order order : statements.get(i).orders()) {
                if (order instanceof Order.Invoke invoke) {
                    Order instead = numbers.get(i);
                    orders.add(
                            instead != null
                                    ? instead
                                    : new Order.Invoke(invoke.className(), i == telling));
                } else {
                    orders.add(order);
                }
            }
        }
        return orders;
    }

    /** The type of the last expression; empty if there is none. */
    public Optional<String> type() {
        int last = lastExpression();
        return last < 0 ? Optional.empty() : statements.get(last).type();
    }

    /** The classes it defines, in order. */
    public List<CompiledClass> classes() {
        return statements.stream()
                .flatMap(statement -> statement.orders().stream())
                .flatMap(order -> order.definition().stream())
                .toList();
    }

    private int lastExpression() {
        int last = statements.size() - 1;
        while (last >= 0 && statements.get(last).type().isEmpty()) {
            last--;
        }
        return last;
    }

    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }
}
