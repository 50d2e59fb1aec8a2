package coldwright.bench.remote;

import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** Sends frames, each whole, from whatever thread. */
final class FrameWriter {
    private final DataOutputStream out;

    FrameWriter(OutputStream out) {
        this.out = new DataOutputStream(out);
    }

    synchronized void send(Frame.Kind kind, byte[] bytes, int length) throws IOException {
        out.writeInt(Frame.OPENING);
        out.writeByte(kind.ordinal());
        out.writeInt(length);
        out.write(bytes, 0, length);
        out.flush();
    }
}
