package coldwright.bench.process;

import coldwright.bench.remote.BenchMain;
import coldwright.bench.remote.CompiledClass;

import com.sun.jdi.Bootstrap;
import com.sun.jdi.ClassType;
import com.sun.jdi.InvalidTypeException;
import com.sun.jdi.ObjectReference;
import com.sun.jdi.ReferenceType;
import com.sun.jdi.ThreadReference;
import com.sun.jdi.VMDisconnectedException;
import com.sun.jdi.VirtualMachine;
import com.sun.jdi.connect.Connector;
import com.sun.jdi.connect.IllegalConnectorArgumentsException;
import com.sun.jdi.connect.ListeningConnector;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The debug interface to a bench's process: stops snippets and replaces class bodies. */
final class DebugConnection implements AutoCloseable {
    private static final String EXECUTOR_CLASS = "coldwright.bench.remote.OrderExecutor";

    private final ListeningConnector connector;
    private final Map<String, Connector.Argument> arguments;
    private final String address;
    private volatile VirtualMachine vm;

    private DebugConnection(
            ListeningConnector connector,
            Map<String, Connector.Argument> arguments,
            String address) {
        this.connector = connector;
        this.arguments = arguments;
        this.address = address;
    }

    /** Listens on a free loopback port. */
    static DebugConnection listen() throws IOException {
        ListeningConnector connector =
                Bootstrap.virtualMachineManager().listeningConnectors().stream()
                        .filter(one -> one.name().equals("com.sun.jdi.SocketListen"))
                        .findFirst()
                        .orElseThrow(() -> new IOException("this Java has no debug interface"));
        Map<String, Connector.Argument> arguments = new HashMap<>(connector.defaultArguments());
        arguments.get("localAddress").setValue("127.0.0.1");
        arguments.get("port").setValue("0");
        arguments.get("timeout").setValue(Integer.toString(BenchLauncher.PATIENCE_MS));
        try {
            String address = connector.startListening(arguments);
            return new DebugConnection(connector, arguments, address);
        } catch (IllegalConnectorArgumentsException e) {
            throw new IOException("the debug interface can't listen", e);
        }
    }

    /** The address it listens on: host and port. */
    String address() {
        return "127.0.0.1:" + address.substring(address.lastIndexOf(':') + 1);
    }

    /** Waits for the process to connect. */
    void accept() throws IOException {
        try {
            vm = connector.accept(arguments);
        } catch (IllegalConnectorArgumentsException e) {
            throw new IOException("the debug interface can't accept", e);
        } finally {
            stopListening();
        }
    }

    /** Stops waiting for the process. */
    void stopListening() {
        try {
            connector.stopListening(arguments);
        } catch (IOException | IllegalConnectorArgumentsException e) {
            // wasn't listening any more
        }
    }

    /** Throws a stop into the snippets' thread. */
    void stop() {
        try {
            ClassType bench = (ClassType) vm.classesByName(BenchMain.class.getName()).get(0);
            ObjectReference stop = (ObjectReference) bench.getValue(bench.fieldByName("STOP"));
            for (ThreadReference thread : vm.allThreads()) {
                if (thread.name().equals(BenchMain.THREAD)) {
                    thread.stop(stop);
                    return;
                }
            }
        } catch (InvalidTypeException | RuntimeException e) {
            // the process is killed soon after in any case
        }
    }

    /** Replaces class bodies; false if the class isn't loaded. */
    boolean redefine(CompiledClass code) throws IOException {
        try {
            Optional<ReferenceType> type = inUse(code.name());
            if (type.isEmpty()) {
                return false;
            }
            vm.redefineClasses(Map.of(type.get(), code.bytes()));
            return true;
        } catch (VMDisconnectedException e) {
            throw new IOException("the bench is gone", e);
        } catch (UnsupportedOperationException | LinkageError e) {
            throw new IOException("the bodies of " + code.name() + " can't be exchanged", e);
        }
    }

    private Optional<ReferenceType> inUse(String name) {
        ClassType obedience = (ClassType) vm.classesByName(EXECUTOR_CLASS).get(0);
        ObjectReference loader =
                (ObjectReference) obedience.getValue(obedience.fieldByName("current"));
        for (ReferenceType type : vm.classesByName(name)) {
            if (loader.equals(type.classLoader())) {
                return Optional.of(type);
            }
        }
        return Optional.empty();
    }

    @Override
    public void close() {
        VirtualMachine open = vm;
        if (open != null) {
            try {
                open.dispose();
            } catch (RuntimeException e) {
                // already disconnected
            }
        }
    }
}
