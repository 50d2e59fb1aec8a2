package coldwright.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

class FigureCodecTest {
    private static final int PLENTY = 100_000;

    private static final Figure OF_EVERY_KIND =
            Figure.of("Zucker · Eis − 糖 🍨")
                    .x("sucrose", "% by mass")
                    .y("temperature", "°C")
                    .xBetween(0, 40)
                    .line(
                            "gaps",
                            new double[] {0, 1, 2},
                            new double[] {Double.NaN, 1 / 0.0, -1 / 0.0})
                    .line("long", 0, 40, Math::sin)
                    .points(
                            "measured",
                            new double[] {-0.0, Double.MIN_VALUE},
                            new double[] {1e308, 2})
                    .band("open", new double[] {0, 1}, w -> w - 1, w -> w + 1)
                    .markX("eutectic", 23.3)
                    .markY("freezer", -18)
                    .text("falls")
                    .source("Lantern Lane, first evening");

    @Test
    void aFigureComesBackAsItWas() throws IOException {
        assertEquals(OF_EVERY_KIND, read(written(OF_EVERY_KIND), PLENTY));
        Figure bars = Figure.of("").bars("parts", List.of("", "süß"), new double[] {1, Double.NaN});
        assertEquals(bars, read(written(bars), PLENTY));
        Figure map =
                Figure.of("map")
                        .heatMap("h", new double[] {1, 2}, new double[] {3, 4}, Math::hypot);
        assertEquals(map, read(written(map), PLENTY));
        Figure bins = Figure.of("bins").histogram("b", new double[] {1, 2, 5}, 3);
        assertEquals(bins, read(written(bins), PLENTY));
        Figure boxes = Figure.of("boxes").boxPlot("b", new double[] {1, 2, 5});
        assertEquals(boxes, read(written(boxes), PLENTY));
        Figure halfFixed =
                new Figure(
                        "half",
                        new Axis("a", "", java.util.OptionalDouble.of(1), Axis.BLANK.to()),
                        new Axis("b", "", Axis.BLANK.from(), java.util.OptionalDouble.of(2)),
                        List.of(),
                        List.of(),
                        "",
                        List.of());
        assertEquals(halfFixed, read(written(halfFixed), PLENTY));
    }

    @Test
    void twoFiguresFollowEachOtherOnOneStream() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        ExhibitCodec.write(OF_EVERY_KIND, out);
        ExhibitCodec.write(Figure.of("second"), out);
        DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes.toByteArray()));
        assertEquals(OF_EVERY_KIND, ExhibitCodec.read(in, PLENTY));
        assertEquals("second", ExhibitCodec.read(in, PLENTY).title());
    }

    @Test
    void theLimitCountsThePointsOfAllSeriesTogether() throws IOException {
        Figure figure =
                Figure.of("two").line("a", 0, 1, w -> w).line("b", 0, 1, w -> w); // 400 points
        assertEquals(figure, read(written(figure), 400));
        assertEquals("the figure has 200 points; at most 199 are shown", refusal(figure, 399));
    }

    @Test
    void everyEarlyEndIsToldInTheSameSentence() throws IOException {
        byte[] whole = written(OF_EVERY_KIND);
        for (int length = 0; length < whole.length; length++) {
            byte[] part = java.util.Arrays.copyOf(whole, length);
            assertEquals(
                    "the figure breaks off before its end",
                    assertThrows(IOException.class, () -> read(part, PLENTY)).getMessage());
        }
    }

    @Test
    void whatIsNoFigureIsRefused() {
        byte[] hello = "hello".getBytes(java.nio.charset.StandardCharsets.UTF_8);
        assertEquals(
                "the figure has an unknown kind of figure, number 104",
                assertThrows(IOException.class, () -> read(hello, 9)).getMessage());
    }

    @Test
    void hostileLengthsAreRefusedBeforeTheyTakeMemory() {
        assertEquals(
                "the figure counts -1 bytes in a title, less than none", refusal("\0", 0xFFFFFFFF));
        assertEquals(
                "the figure has 2147483647 bytes in a title; at most 16384 are shown",
                refusal("\0", Integer.MAX_VALUE));
        // A count within the limit, but with nothing behind it, must not be believed either.
        String toTheSeries = "\0" + "\0".repeat(4 + 10 + 10) + "\0\0\0\1" + "\0" + "\0\0\0\0";
        long before = allocatedBytes();
        assertEquals(
                "the figure breaks off before its end",
                refusal(toTheSeries, Integer.MAX_VALUE - 8));
        assertTrue(allocatedBytes() - before < 1_000_000);
    }

    @Test
    void whatCouldNotBeReadIsNotWritten() {
        Figure many = Figure.of("many");
        for (int i = 0; i <= ExhibitCodec.MOST.get("series"); i++) {
            many = many.points("p" + i, new double[0], new double[0]);
        }
        Figure tooMany = many;
        assertEquals(
                "the figure has 65 series; at most 64 are shown",
                assertThrows(IOException.class, () -> written(tooMany)).getMessage());
        Figure wordy = Figure.of("ß".repeat(8_193));
        assertEquals(
                "the figure has 16386 bytes in a title; at most 16384 are shown",
                assertThrows(IOException.class, () -> written(wordy)).getMessage());
    }

    @Test
    void namesTwiceAndMixedKindsAreRefusedAsBadData() throws IOException {
        Figure twins =
                Figure.of("t")
                        .points("aa", new double[0], new double[0])
                        .points("ab", new double[0], new double[0]);
        byte[] bytes = written(twins);
        for (int i = 0; i + 1 < bytes.length; i++) {
            if (bytes[i] == 'a' && bytes[i + 1] == 'b') {
                bytes[i + 1] = 'a';
            }
        }
        assertEquals(
                "the figure \"t\" has two series called \"aa\"; each needs a name of its own",
                assertThrows(IOException.class, () -> read(bytes, PLENTY)).getMessage());
    }

    private static long allocatedBytes() {
        return ((com.sun.management.ThreadMXBean)
                        java.lang.management.ManagementFactory.getThreadMXBean())
                .getThreadAllocatedBytes(Thread.currentThread().getId());
    }

    private static String refusal(Figure figure, int limit) throws IOException {
        byte[] bytes = written(figure);
        return assertThrows(IOException.class, () -> read(bytes, limit)).getMessage();
    }

    private static String refusal(String opening, int count) {
        byte[] bytes =
                java.nio.ByteBuffer.allocate(opening.length() + 4)
                        .put(opening.getBytes(java.nio.charset.StandardCharsets.ISO_8859_1))
                        .putInt(count)
                        .array();
        return assertThrows(IOException.class, () -> read(bytes, Integer.MAX_VALUE)).getMessage();
    }

    static byte[] written(Figure figure) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ExhibitCodec.write(figure, new DataOutputStream(bytes));
        return bytes.toByteArray();
    }

    static Exhibit read(byte[] bytes, int pointLimit) throws IOException {
        DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes));
        return ExhibitCodec.read(in, pointLimit);
    }

    @Test
    void aRefusalIsOneLineThoughANameHasTwo() throws IOException {
        byte[] bytes = written(Figure.of("t").x("ti\nme", "s").xBetween(1, 2));
        int at = indexOf(bytes, ByteBuffer.allocate(8).putDouble(2).array());
        bytes[at] = (byte) 0xc0;
        assertEquals(
                "the axis \"ti me\" runs from 1.0 to -2.0; its first end must be the lower one",
                assertThrows(IOException.class, () -> read(bytes, 10)).getMessage());
    }

    private static int indexOf(byte[] bytes, byte[] sought) {
        return IntStream.range(0, bytes.length - sought.length)
                .filter(
                        at ->
                                Arrays.equals(
                                        bytes, at, at + sought.length, sought, 0, sought.length))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyKindOfSeriesIsCovered() {
        assertEquals(7, Series.class.getPermittedSubclasses().length);
        assertTrue(
                Collections.disjoint(
                        List.of(Series.Bars.class),
                        OF_EVERY_KIND.series().stream().map(Object::getClass).toList()));
    }
}
