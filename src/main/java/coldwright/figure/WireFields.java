package coldwright.figure;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Texts, counts and rows of numbers on the wire, each with its limit. */
final class WireFields {
    /** The longest text in bytes of UTF-8. */
    static final int MOST_BYTES_OF_TEXT = 16_384;

    private static final int NUMBERS_AT_ONCE = 1_024;

    private WireFields() {}

    static void writeText(String what, String text, DataOutput out) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        writeCount("bytes in a " + what, bytes.length, MOST_BYTES_OF_TEXT, out);
        out.write(bytes);
    }

    static String readText(String what, DataInput in) throws IOException {
        byte[] bytes = new byte[readCount("bytes in a " + what, MOST_BYTES_OF_TEXT, in)];
        in.readFully(bytes);
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException e) {
            throw new IOException("the figure has a %s that is not UTF-8".formatted(what), e);
        }
    }

    static void writeCount(String what, int count, int most, DataOutput out) throws IOException {
        hold(what, count, most);
        out.writeInt(count);
    }

    static int readCount(String what, int most, DataInput in) throws IOException {
        return hold(what, in.readInt(), most);
    }

    private static int hold(String what, int count, int most) throws IOException {
        if (count < 0) {
            throw new IOException("the figure counts %d %s, less than none".formatted(count, what));
        }
        if (count > most) {
            throw new IOException(
                    "the figure has %d %s; at most %d are shown".formatted(count, what, most));
        }
        return count;
    }

    static void writeNumbers(NumberColumn numbers, DataOutput out) throws IOException {
        byte[] bytes = new byte[Double.BYTES * Math.min(numbers.size(), NUMBERS_AT_ONCE)];
        for (int from = 0; from < numbers.size(); from += NUMBERS_AT_ONCE) {
            int count = Math.min(NUMBERS_AT_ONCE, numbers.size() - from);
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            for (int i = 0; i < count; i++) {
                buffer.putDouble(numbers.at(from + i));
            }
            out.write(bytes, 0, Double.BYTES * count);
        }
    }

    /** What is wrong with it, in one line though a name in it may have several. */
    static IOException refusal(IllegalArgumentException wrong) {
        return new IOException(wrong.getMessage().replaceAll("\\s+", " "), wrong);
    }

    /** Grows with what arrives, so that a false count can't take memory. */
    static NumberColumn readNumbers(int size, DataInput in) throws IOException {
        double[] values = new double[Math.min(size, NUMBERS_AT_ONCE)];
        byte[] bytes = new byte[Double.BYTES * values.length];
        for (int from = 0; from < size; from += NUMBERS_AT_ONCE) {
            int count = Math.min(NUMBERS_AT_ONCE, size - from);
            if (from + count > values.length) {
                values = Arrays.copyOf(values, (int) Math.min(size, 2L * (from + count)));
            }
            in.readFully(bytes, 0, Double.BYTES * count);
            ByteBuffer.wrap(bytes).asDoubleBuffer().get(values, from, count);
        }
        return NumberColumn.of(values);
    }
}
