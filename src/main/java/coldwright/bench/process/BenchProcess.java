package coldwright.bench.process;

import coldwright.bench.remote.BenchFolder;
import coldwright.bench.remote.BenchMessage;
import coldwright.bench.remote.Order;
import coldwright.bench.remote.OrderBatch;
import coldwright.bench.remote.RecordWire;
import coldwright.figure.wire.MalformedWireException;

import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/** A process in which snippets run. Give orders from one thread; it can be killed from any. */
public final class BenchProcess implements AutoCloseable {
    private static final int END_SECONDS = 2;
    private static final int START_SECONDS = 20;
    private static final int BYTES_OF_A_POINT = 40;
    private static final int BYTES_BESIDE_POINTS = 4 << 20;

    private final Path folder;
    private final Process process;
    private final DataInputStream in;
    private final DataOutputStream out;
    private final RecordWire<BenchMessage> messages;
    private volatile boolean forged;

    /** Receives the output of a batch. */
    public interface OutputListener {
        /**
         * Text was printed, a figure was drawn, or a limit was exceeded.
         *
         * @throws MalformedWireException if a figure is malformed: then the process is killed
         */
        void accept(BenchMessage output) throws IOException;
    }

    /**
     * Starts a process.
     *
     * @throws IOException if it can't be started
     */
    BenchProcess(LaunchSettings launch) throws IOException {
        folder = BenchFolder.create();
        try {
            process = launch.start(folder);
        } catch (IOException e) {
            BenchFolder.delete(folder);
            throw e;
        }
        in = new DataInputStream(process.getInputStream());
        out = new DataOutputStream(new BufferedOutputStream(process.getOutputStream(), 1 << 16));
        messages = BenchMessage.wire(launch.pointLimit() * BYTES_OF_A_POINT + BYTES_BESIDE_POINTS);
    }

    /**
     * Waits until it is warm.
     *
     * @throws IOException if it ends instead, or takes too long
     */
    void awaitReady() throws IOException {
        CompletableFuture<BenchMessage.Reply> ready = new CompletableFuture<>();
        ready.orTimeout(START_SECONDS, TimeUnit.SECONDS)
                .whenComplete(
                        (reply, failure) -> {
                            if (failure != null) {
                                kill();
                            }
                        });
        try {
            ready.complete(reply(output -> {}));
        } catch (EOFException e) {
            OptionalInt status = exitStatus();
            throw new IOException(
                    "its process ended at once (exit status %s)"
                            .formatted(status.isPresent() ? status.getAsInt() : "unknown"),
                    e);
        }
    }

    /**
     * Executes orders and waits for the reply.
     *
     * @param listener receives text and figures meanwhile, on this thread
     * @throws IOException if the process is gone or sends malformed data
     */
    public BenchMessage.Reply execute(List<Order> orders, OutputListener listener)
            throws IOException {
        OrderBatch.WIRE.write(new OrderBatch(orders), out);
        out.flush();
        return reply(listener);
    }

    private BenchMessage.Reply reply(OutputListener listener) throws IOException {
        try {
            while (true) {
                BenchMessage message = messages.read(in);
                if (message instanceof BenchMessage.Reply reply) {
                    return reply;
                }
                listener.accept(message);
            }
        } catch (MalformedWireException e) {
            forged = true;
            kill();
            throw e;
        }
    }

    /** Kills the process at once. May be called from any thread, more than once. */
    public void kill() {
        process.toHandle().destroyForcibly(); // unlike the process, it leaves the streams open
    }

    /** Whether the process is alive. */
    public boolean alive() {
        return process.isAlive();
    }

    /** Whether it sent forged data. */
    public boolean forged() {
        return forged;
    }

    /**
     * Waits briefly for the process to end.
     *
     * @return its exit status; empty if it is still alive
     */
    public OptionalInt exitStatus() {
        try {
            if (process.waitFor(END_SECONDS, TimeUnit.SECONDS)) {
                return OptionalInt.of(process.exitValue());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return OptionalInt.empty();
    }

    /** Processor time that it has used; zero where the system doesn't say. */
    public Duration processorTime() {
        return process.info().totalCpuDuration().orElse(Duration.ZERO);
    }

    /** The operating system's process ID. */
    public long pid() {
        return process.pid();
    }

    /** Kills the process and deletes its folder. */
    @Override
    public void close() {
        process.destroyForcibly();
        exitStatus();
        BenchFolder.delete(folder);
    }
}
