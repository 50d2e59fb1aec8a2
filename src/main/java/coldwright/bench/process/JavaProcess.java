package coldwright.bench.process;

import coldwright.bench.remote.BenchFolder;
import coldwright.bench.remote.RecordWire;
import coldwright.figure.wire.MalformedWireException;

import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;

/**
 * A Java process of the program's own, linked by its standard input and output. Can be killed from
 * any thread.
 *
 * @param <Q> what the program sends
 * @param <A> what the process sends
 */
public class JavaProcess<Q, A> implements AutoCloseable {
    private static final int END_SECONDS = 2;

    private final boolean walled;
    private final Path folder;
    private final Process process;
    private final RecordWire<Q> requests;
    private final RecordWire<A> replies;
    private final DataInputStream in;
    private final DataOutputStream out;
    private volatile boolean answered;
    private volatile boolean forged;

    /**
     * Starts a process.
     *
     * @param walled whether the operating system confines it too
     * @throws IOException if it can't be started
     */
    public JavaProcess(
            LaunchSettings launch, RecordWire<Q> requests, RecordWire<A> replies, boolean walled)
            throws IOException {
        this.walled = walled;
        this.requests = requests;
        this.replies = replies;
        folder = BenchFolder.create();
        try {
            process = launch.start(folder, walled);
        } catch (IOException e) {
            BenchFolder.delete(folder);
            throw e;
        }
        in = new DataInputStream(process.getInputStream());
        out = new DataOutputStream(new BufferedOutputStream(process.getOutputStream(), 1 << 16));
    }

    /**
     * Sends a message, from any thread.
     *
     * @throws IOException if the process is gone
     */
    public final synchronized void send(Q message) throws IOException {
        requests.write(message, out);
        out.flush();
    }

    /**
     * Waits for a message. A malformed one kills the process.
     *
     * @throws IOException if the process is gone or sends malformed data
     */
    public final A receive() throws IOException {
        try {
            A reply = replies.read(in);
            answered = true;
            return reply;
        } catch (MalformedWireException e) {
            throw forgery(e);
        }
    }

    /** Kills the process because of malformed data. */
    final MalformedWireException forgery(MalformedWireException e) {
        forged = true;
        kill();
        return e;
    }

    /** Kills the process at once. May be called more than once. */
    public final void kill() {
        if (walled && !answered) {
            // bubblewrap, killed before it has set itself up, would leave a process behind: the
            // end of its input ends what it starts
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            try {
                process.getOutputStream().close();
            } catch (IOException e) {
                // already ended
            }
        } else {
            process.toHandle().destroyForcibly(); // unlike the process, it leaves streams open
        }
    }

    /** Whether the process is alive. */
    public final boolean alive() {
        return process.isAlive();
    }

    /** Whether it sent malformed data. */
    public final boolean forged() {
        return forged;
    }

    /**
     * Waits briefly for the process to end.
     *
     * @return its exit status; empty if it is still alive
     */
    public final OptionalInt exitStatus() {
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
    public final Duration processorTime() {
        ProcessHandle java =
                walled
                        ? process.children().findFirst().orElse(process.toHandle())
                        : process.toHandle();
        return java.info().totalCpuDuration().orElse(Duration.ZERO);
    }

    /** Whether the operating system confines it too. */
    final boolean walled() {
        return walled;
    }

    /** Kills the process and deletes its folder. */
    @Override
    public final void close() {
        kill();
        exitStatus();
        BenchFolder.delete(folder);
    }
}
