package coldwright.bench.process;

import coldwright.bench.remote.BenchMessage;
import coldwright.bench.remote.Order;
import coldwright.bench.remote.OrderBatch;
import coldwright.figure.wire.MalformedWireException;

import java.io.EOFException;
import java.io.IOException;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/** A process in which snippets run. Give orders from one thread. */
public final class BenchProcess extends JavaProcess<OrderBatch, BenchMessage> {
    private static final int START_SECONDS = 20;
    private static final int BYTES_OF_A_POINT = 40;
    private static final int BYTES_BESIDE_POINTS = 4 << 20;

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
     * @param pointLimit maximum points of a figure
     * @param walled whether the operating system confines it too
     * @throws IOException if it can't be started
     */
    BenchProcess(LaunchSettings launch, int pointLimit, boolean walled) throws IOException {
        super(
                launch,
                OrderBatch.WIRE,
                BenchMessage.wire(pointLimit * BYTES_OF_A_POINT + BYTES_BESIDE_POINTS),
                walled);
    }

    /** Whether snippets with these rights may run in it. */
    public boolean suits(boolean confined) {
        return walled() == (confined && SystemWall.isAtHand());
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
        send(new OrderBatch(orders));
        return reply(listener);
    }

    private BenchMessage.Reply reply(OutputListener listener) throws IOException {
        try {
            while (true) {
                BenchMessage message = receive();
                if (message instanceof BenchMessage.Reply reply) {
                    return reply;
                }
                listener.accept(message);
            }
        } catch (MalformedWireException e) {
            throw forgery(e);
        }
    }
}
