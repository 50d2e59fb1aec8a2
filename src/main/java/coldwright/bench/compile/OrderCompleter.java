package coldwright.bench.compile;

import coldwright.bench.confine.SnippetClassFile;
import coldwright.bench.remote.CompiledClass;
import coldwright.bench.remote.Order;

import jdk.jshell.ExpressionSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.VarSnippet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Completes a statement's orders. JShell asks only for classes that it believes the other side
 * lacks. But steps are removed and rerun after a fresh start, so each statement must bring every
 * class that those below it don't.
 */
final class OrderCompleter {
    private static final String PREFIX = "REPL.$JShell$";

    private final RecordingExecutionControl recorder;
    private final Map<String, CompiledClass> defined = new HashMap<>();

    OrderCompleter(RecordingExecutionControl recorder, List<CompiledStep> below) {
        this.recorder = recorder;
        for (CompiledStep step : below) {
            for (CompiledClass code : step.classes()) {
                defined.put(code.name(), code);
            }
        }
        recorder.takeOrders();
    }

    static boolean isSnippet(String className) {
        return className.startsWith(PREFIX);
    }

    /** The statement that JShell has just evaluated. */
    CompiledStatement statement(StatementSplitter.StatementSource piece, List<Snippet> parts) {
        List<Order> orders = new ArrayList<>();
        String holder = "";
        for (Order order : recorder.takeOrders()) {
            order.definition().ifPresent(code -> define(code, orders));
            if (order instanceof Order.Invoke invoke) {
                holder = invoke.className();
                bring(holder, orders);
                orders.add(invoke);
            }
        }
        return new CompiledStatement(
                piece.start(), piece.source(), orders, type(parts), declared(parts, holder));
    }

    private void define(CompiledClass code, List<Order> orders) {
        CompiledClass before = defined.put(code.name(), code);
        if (before == null) {
            orders.add(new Order.Define(code));
        } else if (!before.equals(code)) {
            orders.add(new Order.Redefine(code));
        }
        SnippetClassFile.of(code).snippetClasses().forEach(name -> bring(name, orders));
    }

    /** Defines a class and all classes it refers to, unless already defined. */
    private void bring(String className, List<Order> orders) {
        CompiledClass code = recorder.known(className);
        if (code != null && !defined.containsKey(className)) {
            define(code, orders);
        }
    }

    /** Whether the orders match the existing definitions. */
    boolean agreesWith(List<Order> orders) {
        return orders.stream()
                .flatMap(order -> order.definition().stream())
                .allMatch(code -> code.equals(defined.get(code.name())));
    }

    private static Optional<String> type(List<Snippet> parts) {
        if (parts.size() != 1) {
            return Optional.empty();
        }
        Snippet part = parts.get(0);
        if (part instanceof VarSnippet value
                && part.subKind() == Snippet.SubKind.TEMP_VAR_EXPRESSION_SUBKIND) {
            return Optional.of(value.typeName());
        }
        if (part instanceof ExpressionSnippet expression
                && part.subKind() != Snippet.SubKind.ASSIGNMENT_SUBKIND) {
            return Optional.of(expression.typeName());
        }
        return Optional.empty();
    }

    private static Optional<CompiledStatement.DeclaredVariable> declared(
            List<Snippet> parts, String holder) {
        if (parts.size() == 1
                && parts.get(0) instanceof VarSnippet variable
                && variable.subKind() == Snippet.SubKind.VAR_DECLARATION_WITH_INITIALIZER_SUBKIND) {
            return Optional.of(
                    new CompiledStatement.DeclaredVariable(
                            variable.name(), variable.typeName(), holder));
        }
        return Optional.empty();
    }
}
