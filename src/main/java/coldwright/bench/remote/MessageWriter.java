package coldwright.bench.remote;

import java.io.BufferedOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** Sends whole messages to the program, from any thread. */
final class MessageWriter {
    private final DataOutputStream out;

    MessageWriter(OutputStream out) {
        this.out = new DataOutputStream(new BufferedOutputStream(out, 1 << 16));
    }

    synchronized void send(BenchMessage message) throws IOException {
        BenchMessage.wire(Integer.MAX_VALUE).write(message, out);
        out.flush();
    }
}
