package coldwright.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;

class DrawingCodecLawsTest {
    private static final int PLENTY = 100_000;

    /** A refused stream may cost no more than its own size many times over. */
    private static final long MOST_BYTES_TAKEN = 2_000_000;

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void aDrawingComesBackAsItWas(@ForAll("drawings") Drawing drawing) throws IOException {
        assertEquals(drawing, read(written(drawing), PLENTY));
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void aDrawingThatBreaksOffIsRefused(@ForAll("drawings") Drawing drawing, @ForAll Random random)
            throws IOException {
        byte[] bytes = written(drawing);
        byte[] part = java.util.Arrays.copyOf(bytes, random.nextInt(bytes.length));
        assertFalse(isRead(part, PLENTY));
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void aDrawingWithSomeBytesChangedIsReadOrRefused(
            @ForAll("drawings") Drawing drawing, @ForAll Random random) throws IOException {
        byte[] bytes = written(drawing);
        for (int i = 0; i < 1 + random.nextInt(4); i++) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt();
        }
        costsLittle(bytes);
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void randomBytesOnlyEverGiveARefusal(@ForAll byte[] bytes) {
        costsLittle(bytes);
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void aDrawingOfMorePointsThanAllowedIsRefused(@ForAll("drawings") Drawing drawing)
            throws IOException {
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

    @Provide
    Arbitrary<Drawing> drawings() {
        Arbitrary<Drawing.Field> fields =
                Combinators.combine(lengths(), lengths(), texts()).as(Drawing.Field::new);
        Arbitrary<Optional<Drawing.Warmth>> warmths =
                Combinators.combine(values(), lengths())
                        .as((from, wide) -> new Drawing.Warmth(from, from + wide))
                        .optional();
        Arbitrary<Tint.Role> grounds =
                Arbitraries.of(Tint.Role.values()).filter(role -> role != Tint.Role.WARMTH);
        return Combinators.combine(
                        fields, warmths, grounds, moments(), texts(), texts().list().ofMaxSize(3))
                .as(
                        (field, warmth, ground, moments, text, sources) ->
                                new Drawing(
                                        text,
                                        field,
                                        new Drawing.Bar(field.width() / 4, text),
                                        ground,
                                        warmth,
                                        moments,
                                        text,
                                        sources));
    }

    private static Arbitrary<List<Drawing.Moment>> moments() {
        return Combinators.combine(values(), texts(), texts(), pieces().list().ofMaxSize(6))
                .as(Drawing.Moment::new)
                .list()
                .ofMaxSize(5)
                .map(
                        some -> {
                            List<Drawing.Moment> sorted = new ArrayList<>(some);
                            sorted.sort(Comparator.comparingDouble(Drawing.Moment::time));
                            return sorted;
                        });
    }

    private static Arbitrary<Piece> pieces() {
        Arbitrary<Piece> discs =
                Combinators.combine(values(), values(), lengths(), tints()).as(Piece.Disc::new);
        Arbitrary<Piece> outlines =
                Combinators.combine(
                                values().array(double[].class).ofMinSize(3).ofMaxSize(9), tints())
                        .as((xs, tint) -> new Piece.Outline(Numbers.of(xs), Numbers.of(xs), tint));
        Arbitrary<Piece> bands =
                Combinators.combine(values(), lengths(), tints())
                        .as((from, wide, tint) -> new Piece.Band(from, from + wide, tint, tint));
        Arbitrary<Piece> labels =
                Combinators.combine(values(), values(), texts()).as(Piece.Label::new);
        return Arbitraries.oneOf(discs, outlines, bands, labels);
    }

    private static Arbitrary<Tint> tints() {
        return Combinators.combine(Arbitraries.of(Tint.Role.values()), values())
                .as((role, t) -> role == Tint.Role.WARMTH ? Tint.warmth(t) : Tint.of(role));
    }

    private static Arbitrary<Double> values() {
        return Arbitraries.doubles().between(-1e6, 1e6);
    }

    private static Arbitrary<Double> lengths() {
        return Arbitraries.doubles().between(0.01, 1e4);
    }

    private static Arbitrary<String> texts() {
        return Arbitraries.strings().withChars("abc °µ–·é\u2009").ofMaxLength(20);
    }
}
