package coldwright.bench.process;

import coldwright.bench.remote.WireFrame;
import coldwright.figure.wire.MalformedWireException;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.util.concurrent.TimeUnit;

/** Reads frames on its own thread and passes them to the listener of their batch. */
final class FrameReader {
    /** Ignores frames between two batches. */
    private static final FrameListener NOBODY = new FrameListener() {};

    private final DataInputStream in;
    private final int mostBytes;
    private final Runnable onForged;
    private int awaited;
    private int ended;
    private boolean over;
    private boolean forged;
    private FrameListener listener = NOBODY;

    FrameReader(InputStream in, int mostBytes, Runnable onForged) {
        this.in = new DataInputStream(new BufferedInputStream(in, 1 << 16));
        this.mostBytes = mostBytes;
        this.onForged = onForged;
    }

    void startBatch() {
        Thread thread = new Thread(this::readAll, "bench-frames");
        thread.setDaemon(true);
        thread.start();
    }

    synchronized void listenTo(int batch, FrameListener to) {
        awaited = batch;
        listener = to;
    }

    /** Waits until all frames of the batch have been read. */
    synchronized boolean awaitEnd(int seconds) {
        long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
        try {
            while (ended != awaited && !over) {
                long leftMs = TimeUnit.NANOSECONDS.toMillis(deadline - System.nanoTime());
                if (leftMs <= 0) {
                    break;
                }
                wait(leftMs);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return ended == awaited;
    }

    synchronized boolean forged() {
        return forged;
    }

    private void readAll() {
        try {
            while (true) {
                hear(WireFrame.read(in, mostBytes));
            }
        } catch (MalformedWireException e) {
            finish(true);
            onForged.run();
        } catch (IOException e) {
            finish(false);
        }
    }

    private synchronized void finish(boolean wasForged) {
        forged |= wasForged;
        over = true;
        notifyAll();
    }

    private void hear(WireFrame frame) throws IOException {
        FrameListener to;
        synchronized (this) {
            to = listener;
        }
        switch (frame.kind()) {
            case PRINTED:
                to.printed(frame.load());
                break;
            case CUT:
                to.cut();
                break;
            case FIGURE:
                to.onFigure(frame.load());
                break;
            case END:
                end(frame.load());
                break;
            default:
                throw new AssertionError(frame.kind());
        }
    }

    private synchronized void end(byte[] load) throws IOException {
        if (load.length != Integer.BYTES) {
            throw new MalformedWireException("an end without a number");
        }
        ended = ByteBuffer.wrap(load).getInt();
        if (ended == awaited) {
            listener = NOBODY;
            notifyAll();
        }
    }
}
