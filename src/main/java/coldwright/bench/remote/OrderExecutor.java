package coldwright.bench.remote;

import coldwright.figure.Exhibit;

import java.io.IOException;
import java.lang.instrument.ClassDefinition;
import java.lang.instrument.Instrumentation;
import java.lang.instrument.UnmodifiableClassException;
import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.List;
import java.util.Optional;

/** Executes batches, one order after another, on the calling thread. */
final class OrderExecutor {
    /** Name of the static no-argument method that a statement is compiled into. */
    private static final String STATEMENT = "do_it$";

    private final TextOutput printed;
    private final FigureOutput figures;
    private final Instrumentation instrumentation;
    private SnippetClassLoader current = new SnippetClassLoader();

    OrderExecutor(TextOutput printed, FigureOutput figures, Instrumentation instrumentation) {
        this.printed = printed;
        this.figures = figures;
        this.instrumentation = instrumentation;
    }

    BenchMessage.Reply execute(OrderBatch batch) throws IOException {
        figures.open(0);
        BenchMessage.Reply answer = executeAll(batch.orders());
        printed.shut();
        return answer;
    }

    private BenchMessage.Reply executeAll(List<Order> orders) {
        Optional<ValueText> value = Optional.empty();
        for (int i = 0; i < orders.size(); i++) {
            try {
                Optional<ValueText> told = execute(orders.get(i));
                value = told.isPresent() ? told : value;
            } catch (InvocationTargetException e) {
                return new BenchMessage.Failed(i, ThrownException.chain(e.getCause()));
            } catch (Throwable e) {
                return new BenchMessage.Failed(i, ThrownException.chain(e));
            }
        }
        return new BenchMessage.Done(value);
    }

    private Optional<ValueText> execute(Order order)
            throws ReflectiveOperationException, UnmodifiableClassException {
        if (order instanceof Order.Fresh) {
            current = new SnippetClassLoader();
        } else if (order instanceof Order.Listen listen) {
            printed.open(listen.printedLimit());
            figures.open(listen.figureLimit());
        } else if (order instanceof Order.Define define) {
            current.add(define.code());
        } else if (order instanceof Order.Redefine redefine) {
            redefine(redefine.code());
        } else if (order instanceof Order.Invoke invoke) {
            Object value = invoke(invoke.className());
            if (invoke.wantsValue()) {
                if (value instanceof Exhibit exhibit) {
                    figures.showUnlessShown(exhibit);
                }
                return Optional.of(ValueText.of(value));
            }
        } else if (order instanceof Order.Assign assign) {
            set(assign);
        } else {
            throw new AssertionError(order);
        }
        return Optional.empty();
    }

    private void redefine(CompiledClass code)
            throws ClassNotFoundException, UnmodifiableClassException {
        Optional<Class<?>> loaded = current.loaded(code.name());
        if (loaded.isPresent()) {
            instrumentation.redefineClasses(new ClassDefinition(loaded.get(), code.bytes()));
        } else {
            current.add(code);
        }
    }

    private Object invoke(String className) throws ReflectiveOperationException {
        Method statement = Class.forName(className, true, current).getDeclaredMethod(STATEMENT);
        statement.setAccessible(true);
        return statement.invoke(null);
    }

    private void set(Order.Assign assign) throws ReflectiveOperationException {
        Class<?> holder = Class.forName(assign.className(), true, current);
        Field field = holder.getDeclaredField(assign.variable());
        field.setAccessible(true);
        Class<?> type = field.getType();
        if (type == double.class) {
            field.setDouble(null, assign.value());
        } else if (type == float.class) {
            field.setFloat(null, (float) assign.value());
        } else if (type == long.class) {
            field.setLong(null, (long) assign.value());
        } else if (type == int.class) {
            field.setInt(null, (int) assign.value());
        } else {
            throw new IllegalArgumentException(
                    "%s is a %s; only a number can be set"
                            .formatted(assign.variable(), type.getSimpleName()));
        }
    }
}
