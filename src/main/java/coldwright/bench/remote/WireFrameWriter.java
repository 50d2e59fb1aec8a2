package coldwright.bench.remote;

import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** Sends whole frames, from any thread. */
final class WireFrameWriter {
    private final DataOutputStream out;

    WireFrameWriter(OutputStream out) {
        this.out = new DataOutputStream(out);
    }

    synchronized void send(WireFrame.Kind kind, byte[] bytes, int length) throws IOException {
        out.writeInt(WireFrame.OPENING);
        out.writeByte(kind.ordinal());
        out.writeInt(length);
        out.write(bytes, 0, length);
        out.flush();
    }
}
