package coldwright.bench.remote;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;

/**
 * A process' link to the program that started it: its standard input and output. Ends the process
 * when the program is gone, whatever else it is doing.
 *
 * @param <Q> what the program sends
 * @param <A> what this process sends
 */
public final class ProgramLink<Q, A> {
    private static final int PROGRAM_GONE = 96;

    private final RecordWire<A> replies;
    private final Path folder;
    private final DataOutputStream out =
            new DataOutputStream(
                    new BufferedOutputStream(new FileOutputStream(FileDescriptor.out), 1 << 16));
    private final BlockingQueue<Q> received = new LinkedBlockingQueue<>();

    /** Takes over the standard streams. The folder is deleted when the program is gone. */
    public ProgramLink(RecordWire<Q> requests, RecordWire<A> replies, Path folder) {
        this.replies = replies;
        this.folder = folder;
        DataInputStream in = new DataInputStream(new BufferedInputStream(System.in, 1 << 16));
        System.setIn(InputStream.nullInputStream());
        System.setOut(System.err);
        daemon("program-link", () -> receive(requests, in));
    }

    static void daemon(String name, Runnable task) {
        Thread thread = new Thread(task, name);
        thread.setDaemon(true);
        thread.setPriority(Thread.MAX_PRIORITY);
        thread.start();
    }

    private void receive(RecordWire<Q> requests, DataInputStream in) {
        try {
            while (true) {
                received.add(requests.read(in));
            }
        } catch (IOException e) {
            // the stream has ended
        } finally {
            end();
        }
    }

    /** Waits for the program's next message. */
    public Q take() throws InterruptedException {
        return received.take();
    }

    /** Whether another message has come. */
    public boolean moreCame() {
        return !received.isEmpty();
    }

    /** Sends a message, from any thread. */
    public synchronized void send(A message) throws IOException {
        replies.write(message, out);
        out.flush();
    }

    /** The program is gone: deletes the folder and ends the process. */
    void end() {
        try {
            BenchFolder.delete(folder);
        } finally {
            Runtime.getRuntime().halt(PROGRAM_GONE);
        }
    }
}
