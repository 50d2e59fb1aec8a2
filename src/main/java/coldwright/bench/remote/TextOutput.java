package coldwright.bench.remote;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Arrays;

/**
 * {@code System.out} and {@code System.err} of the bench's process, sent as messages. Text beyond
 * the limit is dropped here, so that endless output costs the program nothing.
 */
final class TextOutput extends OutputStream {
    private static final int PART = 8192;
    private static final int MOST_BYTES_OF_A_CHARACTER = 4;

    private final ProgramLink<OrderBatch, BenchMessage> program;
    private final byte[] buffer = new byte[PART];
    private int buffered;
    private long left;
    private boolean cut = true;

    TextOutput(ProgramLink<OrderBatch, BenchMessage> program) {
        this.program = program;
    }

    /** Accepts up to this many characters from now on. */
    synchronized void open(int characters) {
        buffered = 0;
        cut = false;
        left = (long) characters * MOST_BYTES_OF_A_CHARACTER;
    }

    /** Sends the buffered text. */
    @Override
    public synchronized void flush() throws IOException {
        if (buffered > 0) {
            program.send(new BenchMessage.Printed(Arrays.copyOf(buffer, buffered)));
            buffered = 0;
        }
    }

    /** Sends the buffered text and accepts no more. */
    synchronized void shut() throws IOException {
        flush();
        left = 0;
        cut = true;
    }

    @Override
    public synchronized void write(int b) throws IOException {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public synchronized void write(byte[] bytes, int from, int length) throws IOException {
        int taken = (int) Math.min(length, left);
        int done = 0;
        while (done < taken) {
            if (buffered == PART) {
                flush();
            }
            int part = Math.min(PART - buffered, taken - done);
            System.arraycopy(bytes, from + done, buffer, buffered, part);
            buffered += part;
            done += part;
        }
        left -= taken;
        if (taken < length && !cut) {
            cut = true;
            flush();
            program.send(new BenchMessage.Cut());
        }
    }
}
