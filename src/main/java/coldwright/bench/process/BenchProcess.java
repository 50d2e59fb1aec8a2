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
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;

/** One process in which snippets run. Orders are given from one thread; ending it from any. */
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
     * Has orders obeyed and waits for the answer.
     *
     * @param wanted the orders
     * @param listener hears of text and figures meanwhile, on another thread
     * @return the answer; everything printed and drawn has been heard by then
     * @throws IOException if the process is gone or talks nonsense
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
     * Exchanges the bodies of a class in use.
     *
     * @param code the class with its new bodies
     * @return false if the class has not been used yet, so that it may just be defined anew
     * @throws IOException if it can't be done
     */
    public boolean redefine(CompiledClass code) throws IOException {
        return debugConnection.redefine(code);
    }

    /** Throws a stop into what runs; returns at once, with no promise that it ends. */
    public void stop() {
        debugConnection.stop();
    }

    /** Ends the process at once. May be called from any thread, more than once. */
    public void kill() {
        process.destroyForcibly();
    }

    /**
     * Whether it lives.
     *
     * @return false once it has ended
     */
    public boolean alive() {
        return process.isAlive();
    }

    /**
     * What came that no honest bench sends.
     *
     * @return true if the figure stream carried something forged
     */
    public boolean forged() {
        return frames.forged();
    }

    /**
     * How the process ended, waiting a moment for its end.
     *
     * @return its exit status; empty if it lives on
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

    /**
     * The process' number.
     *
     * @return as the operating system counts
     */
    public long pid() {
        return process.pid();
    }

    /** Ends the process and deletes its folder. */
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
            // closed already
        }
    }
}
