package coldwright.bench.remote;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

/** Text on the wire: a length, then UTF-8; refused if longer than any honest one. */
final class WireText {
    /** Longest text in bytes that is taken from the other side. */
    static final int MOST_BYTES = 1 << 20;

    private WireText() {}

    static void write(String text, DataOutput out) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        if (bytes.length > MOST_BYTES) {
            throw new IOException("a text of " + bytes.length + " bytes is too long for the wire");
        }
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    static String read(DataInput in) throws IOException {
        int length = in.readInt();
        if (length < 0 || length > MOST_BYTES) {
            throw new IOException("a text of " + length + " bytes is too long for the wire");
        }
        byte[] bytes = new byte[length];
        in.readFully(bytes);
        return new String(bytes, StandardCharsets.UTF_8);
    }
}
