package coldwright.bench.compile;

import coldwright.bench.remote.ClassCode;
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
 * Makes a statement's orders whole. JShell asks only for what it believes the other side lacks; but
 * steps are taken away and run again after a fresh start, so each statement must bring every class
 * that those below it don't.
 */
final class OrderBook {
    private static final String PREFIX = "REPL.$JShell$";

    private final Recorder recorder;
    private final Map<String, ClassCode> defined = new HashMap<>();

    OrderBook(Recorder recorder, List<CompiledStep> below) {
        this.recorder = recorder;
        for (CompiledStep step : below) {
            for (ClassCode code : step.classes()) {
                defined.put(code.name(), code);
            }
        }
        recorder.takeOrders();
    }

    static boolean isSnippet(String className) {
        return className.startsWith(PREFIX);
    }

    /** The statement that JShell has just evaluated. */
    Statement statement(Pieces.Piece piece, List<Snippet> parts) {
        List<Order> orders = new ArrayList<>();
        String holder = "";
        for (Order order : recorder.takeOrders()) {
            if (order instanceof Order.Define define) {
                define(define.code(), orders);
            } else if (order instanceof Order.Redefine redefine) {
                define(redefine.code(), orders);
            } else if (order instanceof Order.Invoke invoke) {
                holder = invoke.className();
                bring(holder, orders);
                orders.add(invoke);
            } else {
                throw new AssertionError(order);
            }
        }
        return new Statement(
                piece.start(), piece.source(), orders, type(parts), declared(parts, holder));
    }

    private void define(ClassCode code, List<Order> orders) {
        ClassCode before = defined.put(code.name(), code);
        if (before == null) {
            orders.add(new Order.Define(code));
        } else if (!before.equals(code)) {
            orders.add(new Order.Redefine(code));
        }
        ClassFile.of(code).snippetClasses().forEach(name -> bring(name, orders));
    }

    /** Defines a class, and all that it names, where that has not been done. */
    private void bring(String className, List<Order> orders) {
        ClassCode code = recorder.known(className);
        if (code != null && !defined.containsKey(className)) {
            define(code, orders);
        }
    }

    /** Whether what JShell asked for is what stands already. */
    boolean agreesWith(List<Order> orders) {
        for (Order order : orders) {
            if (order instanceof Order.Define define
                    && !define.code().equals(defined.get(define.code().name()))) {
                return false;
            }
            if (order instanceof Order.Redefine redefine
                    && !redefine.code().equals(defined.get(redefine.code().name()))) {
                return false;
            }
        }
        return true;
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

    private static Optional<Statement.Declared> declared(List<Snippet> parts, String holder) {
        if (parts.size() == 1
                && parts.get(0) instanceof VarSnippet variable
                && variable.subKind() == Snippet.SubKind.VAR_DECLARATION_WITH_INITIALIZER_SUBKIND) {
            return Optional.of(
                    new Statement.Declared(variable.name(), variable.typeName(), holder));
        }
        return Optional.empty();
    }
}
