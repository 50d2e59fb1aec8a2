package coldwright.bench.compile;

import coldwright.bench.confine.SnippetClassFile;
import coldwright.bench.remote.CompiledClass;
import coldwright.bench.remote.Order;

import jdk.jshell.execution.DirectExecutionControl;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * An execution engine that executes nothing: it records JShell's requests as orders for later. So a
 * snippet is compiled as a whole before any of it runs, and reruns without compiling.
 */
final class RecordingExecutionControl extends DirectExecutionControl
        implements ExecutionControlProvider {
    private final Map<String, CompiledClass> known = new HashMap<>();
    private List<Order> orders = new ArrayList<>();
    private UserException pending;

    RecordingExecutionControl() {
        super(null); // nothing is loaded here
    }

    /** The orders recorded since the last call. */
    List<Order> takeOrders() {
        List<Order> taken = orders;
        orders = new ArrayList<>();
        return taken;
    }

    /** The latest code of a class that JShell requested; null if it hasn't. */
    CompiledClass known(String className) {
        return known.get(className);
    }

    /** Makes the next statement appear to throw this, so that JShell translates its stack trace. */
    void throwNext(UserException exception) {
        pending = exception;
    }

    @Override
    public String name() {
        return "recorder";
    }

    @Override
    public ExecutionControl generate(ExecutionEnv env, Map<String, String> parameters) {
        return this;
    }

    @Override
    public void load(ClassBytecodes[] classes) {
        for (ClassBytecodes one : classes) {
            CompiledClass code = new CompiledClass(one.name(), one.bytecodes());
            known.put(code.name(), code);
            orders.add(new Order.Define(code));
        }
    }

    @Override
    public void redefine(ClassBytecodes[] classes) throws ClassInstallException {
        for (ClassBytecodes one : classes) {
            CompiledClass code = new CompiledClass(one.name(), one.bytecodes());
            CompiledClass before = known.get(code.name());
            if (before == null
                    || !SnippetClassFile.of(before).sameShapeAs(SnippetClassFile.of(code))) {
                throw new ClassInstallException(
                        code.name() + " has another shape", new boolean[classes.length]);
            }
        }
        for (ClassBytecodes one : classes) {
            CompiledClass code = new CompiledClass(one.name(), one.bytecodes());
            known.put(code.name(), code);
            orders.add(new Order.Redefine(code));
        }
    }

    @Override
    public String invoke(String className, String methodName) throws UserException {
        if (pending != null) {
            UserException thrown = pending;
            pending = null;
            throw thrown;
        }
        orders.add(new Order.Invoke(className, false));
        return "";
    }

    @Override
    public String varValue(String className, String variable) {
        return "";
    }
}
