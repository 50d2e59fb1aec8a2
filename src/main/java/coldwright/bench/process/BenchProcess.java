package coldwright.bench.process;

import coldwright.bench.remote.BenchFolder;
import coldwright.bench.remote.CompiledClass;
import coldwright.bench.remote.ExecutionReply;
import coldwright.bench.remote.Order;
import coldwright.bench.remote.OrderBatch;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.net.Socket;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;

/** A process in which snippets run. Give orders from one thread; it can be killed from any. */
public final class BenchProcess implements AutoCloseable {
    private static final int END_SECONDS = 2;

    private final Process process;
    private final Path folder;
    private final DebugConnection debugConnection;
    private final Socket ordersSocket;
    private final Socket framesSocket;
    private final DataInputStream answers;
    private final DataOutputStream orders;
    private final FrameReader frames;
    private int batches;

    BenchProcess(
            Process process,
            Path folder,
            DebugConnection debugConnection,
            Socket orders,
            Socket frames,
            int mostFrameBytes)
            throws IOException {
        this.process = process;
        this.folder = folder;
        this.debugConnection = debugConnection;
        this.ordersSocket = orders;
        this.framesSocket = frames;
        this.answers = new DataInputStream(new BufferedInputStream(orders.getInputStream()));
        this.orders =
                new DataOutputStream(new BufferedOutputStream(orders.getOutputStream(), 1 << 16));
        this.frames = new FrameReader(frames.getInputStream(), mostFrameBytes, this::kill);
    }

    /** Waits until it is warm. */
    void awaitReady() throws IOException {
        ExecutionReply.read(answers);
        frames.startBatch();
    }

    /**
     * Executes orders and waits for the reply.
     *
     * @param listener receives text and figures meanwhile, on another thread
     * @return the reply, after all output has been delivered
     * @throws IOException if the process is gone or sends malformed data
     */
    public ExecutionReply execute(List<Order> wanted, FrameListener listener) throws IOException {
        batches++;
        OrderBatch batch = new OrderBatch(batches, wanted);
        frames.listenTo(batches, listener);
        batch.write(orders);
        orders.flush();
        ExecutionReply answer = ExecutionReply.read(answers);
        if (!frames.awaitEnd(END_SECONDS)) {
            throw new IOException("the bench did not end its batch");
        }
        return answer;
    }

    /**
     * Replaces the method bodies of a loaded class.
     *
     * @param code the class with its new bodies
     * @return false if the class hasn't been used yet, so that it can simply be defined again
     * @throws IOException if it can't be done
     */
    public boolean redefine(CompiledClass code) throws IOException {
        return debugConnection.redefine(code);
    }

    /** Throws a stop into the running snippet. Returns at once; the snippet may not end. */
    public void stop() {
        debugConnection.stop();
    }

    /** Kills the process at once. May be called from any thread, more than once. */
    public void kill() {
        process.destroyForcibly();
    }

    /** Whether the process is alive. */
    public boolean alive() {
        return process.isAlive();
    }

    /** Whether the figure stream contained forged data. */
    public boolean forged() {
        return frames.forged();
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
        return process.toHandle().info().totalCpuDuration().orElse(Duration.ZERO);
    }

    /** The operating system's process ID. */
    public long pid() {
        return process.pid();
    }

    /** Kills the process and deletes its folder. */
    @Override
    public void close() {
        kill();
        debugConnection.close();
        close(ordersSocket);
        close(framesSocket);
        exitStatus();
        BenchFolder.delete(folder);
    }

    private static void close(Socket socket) {
        try {
            socket.close();
        } catch (IOException e) {
            // already closed
        }
    }
}
