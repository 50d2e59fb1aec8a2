package coldwright.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;

class DrawingCodecLawsTest {
    private static final int PLENTY = 100_000;

    /** A refused stream may cost no more than its own size many times over. */
    private static final long MOST_BYTES_TAKEN = 2_000_000;

    @Cases(300)
    void aDrawingComesBackAsItWas(Draw draw) throws IOException {
        Drawing drawing = draw.one(DrawingCodecLawsTest::drawings);
        assertEquals(drawing, read(written(drawing), PLENTY));
    }

    @Cases(200)
    void aDrawingThatBreaksOffIsRefused(Draw draw) throws IOException {
        Drawing drawing = draw.one(DrawingCodecLawsTest::drawings);
        Random random = draw.anyRandom();
        byte[] bytes = written(drawing);
        byte[] part = java.util.Arrays.copyOf(bytes, random.nextInt(bytes.length));
        assertFalse(isRead(part, PLENTY));
    }

    @Cases(300)
    void aDrawingWithSomeBytesChangedIsReadOrRefused(Draw draw) throws IOException {
        Drawing drawing = draw.one(DrawingCodecLawsTest::drawings);
        Random random = draw.anyRandom();
        byte[] bytes = written(drawing);
        for (int i = 0; i < 1 + random.nextInt(4); i++) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt();
        }
        costsLittle(bytes);
    }

    @Cases(300)
    void randomBytesOnlyEverGiveARefusal(Draw draw) {
        byte[] bytes = draw.bytes(255);
        costsLittle(bytes);
    }

    @Cases(100)
    void aDrawingOfMorePointsThanAllowedIsRefused(Draw draw) throws IOException {
        Drawing drawing = draw.one(DrawingCodecLawsTest::drawings);
        if (drawing.size() > 0) {
            assertFalse(isRead(written(drawing), (int) drawing.size() - 1));
        }
        assertTrue(isRead(written(drawing), (int) drawing.size()));
    }

    private static void costsLittle(byte[] bytes) {
        var threads =
                (com.sun.management.ThreadMXBean)
                        java.lang.management.ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().getId();
        isRead(bytes, Integer.MAX_VALUE); // what classes take when first used is not the reader's
        long before = threads.getThreadAllocatedBytes(id);
        isRead(bytes, Integer.MAX_VALUE);
        assertTrue(threads.getThreadAllocatedBytes(id) - before < MOST_BYTES_TAKEN);
    }

    private static boolean isRead(byte[] bytes, int limit) {
        try {
            read(bytes, limit);
            return true;
        } catch (IOException e) {
            assertFalse(e.getMessage().isBlank());
            assertFalse(e.getMessage().contains("\n"));
            return false;
        }
    }

    private static Exhibit read(byte[] bytes, int limit) throws IOException {
        return ExhibitCodec.read(new DataInputStream(new ByteArrayInputStream(bytes)), limit);
    }

    private static byte[] written(Exhibit exhibit) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ExhibitCodec.write(exhibit, new DataOutputStream(bytes));
        return bytes.toByteArray();
    }

    private static Drawing drawings(Draw draw) {
        Drawing.Field field = new Drawing.Field(length(draw), length(draw), text(draw));
        Optional<Drawing.TemperatureScale> warmth = Optional.empty();
        if (draw.anyBoolean()) {
            double from = value(draw);
            warmth = Optional.of(new Drawing.TemperatureScale(from, from + length(draw)));
        }
        List<Tint.Role> grounds =
                Stream.of(Tint.Role.values()).filter(role -> role != Tint.Role.WARMTH).toList();
        String text = text(draw);
        return new Drawing(
                text,
                field,
                new Drawing.ScaleBar(field.width() / 4, text),
                draw.oneOf(grounds),
                warmth,
                moments(draw),
                text,
                draw.listOf(0, 3, DrawingCodecLawsTest::text));
    }

    private static List<Drawing.Moment> moments(Draw draw) {
        return draw
                .<Drawing.Moment>listOf(
                        0,
                        5,
                        d ->
                                new Drawing.Moment(
                                        value(d),
                                        text(d),
                                        text(d),
                                        d.listOf(0, 6, DrawingCodecLawsTest::piece)))
                .stream()
                .sorted(Comparator.comparingDouble(Drawing.Moment::time))
                .toList();
    }

    private static Piece piece(Draw draw) {
        return draw.from(
                d -> new Piece.Disc(value(d), value(d), length(d), tint(d)),
                d -> {
                    List<Double> drawn = d.listOf(3, 9, DrawingCodecLawsTest::value);
                    NumberColumn xs = NumberColumn.of(drawn.stream().mapToDouble(x -> x).toArray());
                    return new Piece.Outline(xs, xs, tint(d));
                },
                d -> {
                    double from = value(d);
                    Tint tint = tint(d);
                    return new Piece.Band(from, from + length(d), tint, tint);
                },
                d -> new Piece.Label(value(d), value(d), text(d)));
    }

    private static Tint tint(Draw draw) {
        Tint.Role role = draw.oneOf(Tint.Role.values());
        return role == Tint.Role.WARMTH ? Tint.warmth(value(draw)) : Tint.of(role);
    }

    private static double value(Draw draw) {
        return draw.doubleIn(-1e6, 1e6);
    }

    private static double length(Draw draw) {
        return draw.doubleIn(0.01, 1e4);
    }

    private static String text(Draw draw) {
        List<String> characters = draw.listOf(0, 20, d -> d.oneOf("abc °µ–·é\u2009".split("")));
        return String.join("", characters);
    }
}
