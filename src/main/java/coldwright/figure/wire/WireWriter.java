package coldwright.figure.wire;

import java.io.DataOutput;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** Writes the data that {@link WireReader} reads, within the same limits. */
public final class WireWriter {
    private final WireLimits limits;
    private final DataOutput out;

    /** Writes an element of a list. */
    public interface Part<T> {
        void write(T part) throws IOException;
    }

    public WireWriter(WireLimits limits, DataOutput out) {
        this.limits = limits;
        this.out = out;
    }

    /** Writes a code from 0 to 255. */
    public void code(int code) throws IOException {
        out.writeByte(code);
    }

    public void whole(int number) throws IOException {
        out.writeInt(number);
    }

    public void number(double number) throws IOException {
        out.writeDouble(number);
    }

    /** Writes a count, {@code most} at most. */
    public void count(String what, int count, int most) throws IOException {
        out.writeInt(limits.checked(what, count, most));
    }

    public void text(String what, String text) throws IOException {
        bytes("bytes in a " + what, text.getBytes(StandardCharsets.UTF_8), limits.mostTextBytes());
    }

    /** Writes bytes, preceded by their count. */
    public void bytes(String what, byte[] bytes, int most) throws IOException {
        count(what, bytes.length, most);
        out.write(bytes);
    }

    /** Writes a list, preceded by its count. */
    public <T> void list(String what, List<T> list, int most, Part<T> part) throws IOException {
        count(what, list.size(), most);
        for (T one : list) {
            part.write(one);
        }
    }

    /** Writes doubles without their count. */
    public void numbers(int size, IntToDoubleFunction numbers) throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate(Double.BYTES * size);
        IntStream.range(0, size).forEach(i -> bytes.putDouble(numbers.applyAsDouble(i)));
        out.write(bytes.array());
    }
}
