package coldwright.figure.wire;

import java.io.DataInput;
import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Reads untrusted data. A count is compared with its limit before anything after it is read, and
 * memory grows only as data arrive, so that a false count can't exhaust it.
 */
public final class WireReader {
    private static final int BYTES_AT_ONCE = 8_192;

    private final WireLimits limits;
    private final DataInput in;

    /** Reads a part of a message. */
    public interface Part<T> {
        T read() throws IOException;
    }

    public WireReader(WireLimits limits, DataInput in) {
        this.limits = limits;
        this.in = in;
    }

    /**
     * Reads a whole message; the part throws an {@link IllegalArgumentException} to reject it.
     *
     * @throws IOException if the stream fails; malformed, in one line, if it ends early or is
     *     rejected
     */
    public <T> T whole(Part<T> message) throws IOException {
        try {
            return message.read();
        } catch (EOFException e) {
            throw new MalformedWireException(
                    "the %s breaks off before its end".formatted(limits.subject()));
        } catch (IllegalArgumentException e) {
            throw new MalformedWireException(e.getMessage().replaceAll("\\s+", " "));
        }
    }

    /** Reads a code from 0 to {@code kinds} − 1. */
    public int code(String what, int kinds) throws IOException {
        int code = in.readUnsignedByte();
        if (code >= kinds) {
            throw new MalformedWireException(
                    "the %s has %s, number %d".formatted(limits.subject(), what, code));
        }
        return code;
    }

    public int whole() throws IOException {
        return in.readInt();
    }

    public double number() throws IOException {
        return in.readDouble();
    }

    /** Reads a count, {@code most} at most. */
    public int count(String what, int most) throws IOException {
        return limits.checked(what, in.readInt(), most);
    }

    public String text(String what) throws IOException {
        byte[] bytes = bytes("bytes in a " + what, limits.mostTextBytes());
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException e) {
            throw new MalformedWireException(
                    "the %s has a %s that is not UTF-8".formatted(limits.subject(), what));
        }
    }

    /** Reads bytes, preceded by their count. */
    public byte[] bytes(String what, int most) throws IOException {
        return bytes(count(what, most));
    }

    private byte[] bytes(long count) throws IOException {
        byte[] bytes = new byte[(int) Math.min(count, BYTES_AT_ONCE)];
        in.readFully(bytes);
        while (bytes.length < count) {
            int from = bytes.length;
            bytes = Arrays.copyOf(bytes, (int) Math.min(count, 2L * from));
            in.readFully(bytes, from, bytes.length - from);
        }
        return bytes;
    }

    /** Reads a list, preceded by its count. */
    public <T> List<T> list(String what, int most, Part<T> part) throws IOException {
        int count = count(what, most);
        List<T> list = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            list.add(part.read());
        }
        return list;
    }

    /** Reads {@code size} doubles. */
    public double[] numbers(int size) throws IOException {
        byte[] bytes = bytes((long) Double.BYTES * size);
        double[] numbers = new double[size];
        ByteBuffer.wrap(bytes).asDoubleBuffer().get(numbers);
        return numbers;
    }
}
