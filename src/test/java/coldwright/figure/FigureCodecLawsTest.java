package coldwright.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;

import java.io.IOException;
import java.util.List;
import java.util.Random;

class FigureCodecLawsTest {
    private static final int PLENTY = 100_000;

    /** A refused stream may cost no more than its own size many times over. */
    private static final long MOST_BYTES_TAKEN = 2_000_000;

    @Cases(300)
    void aFigureComesBackAsItWas(Draw draw) throws IOException {
        Figure figure = draw.one(FigureCodecLawsTest::figures);
        assertEquals(figure, FigureCodecTest.read(FigureCodecTest.written(figure), PLENTY));
    }

    @Cases(300)
    void randomBytesOnlyEverGiveARefusal(Draw draw) {
        byte[] bytes = draw.bytes(255);
        refusedOrRead(bytes);
    }

    @Cases(300)
    void aFigureWithSomeBytesChangedIsReadOrRefused(Draw draw) throws IOException {
        Figure figure = draw.one(FigureCodecLawsTest::figures);
        Random random = draw.anyRandom();
        byte[] bytes = FigureCodecTest.written(figure);
        for (int i = 0; i < 1 + random.nextInt(4); i++) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt();
        }
        refusedOrRead(bytes);
    }

    private static void refusedOrRead(byte[] bytes) {
        var threads =
                (com.sun.management.ThreadMXBean)
                        java.lang.management.ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().getId();
        readOrRefuse(bytes); // what the classes themselves take when first used is not the reader's
        long before = threads.getThreadAllocatedBytes(id);
        readOrRefuse(bytes);
        assertTrue(threads.getThreadAllocatedBytes(id) - before < MOST_BYTES_TAKEN);
    }

    private static void readOrRefuse(byte[] bytes) {
        try {
            FigureCodecTest.read(bytes, Integer.MAX_VALUE);
        } catch (IOException e) {
            assertFalse(e.getMessage().isBlank());
            assertFalse(e.getMessage().contains("\n"));
        }
    }

    private static Figure figures(Draw draw) {
        List<Series> series =
                draw.anyBoolean()
                        ? draw.unlike(0, 5, Series::name, FigureCodecLawsTest::lines)
                        : draw.unlike(1, 3, Series::name, FigureCodecLawsTest::bars);
        return new Figure(
                text(draw),
                axis(draw),
                axis(draw),
                series,
                draw.listOf(
                        0,
                        3,
                        d ->
                                new ReferenceLine(
                                        text(d), d.oneOf(ReferenceLine.Across.values()), value(d))),
                text(draw),
                draw.listOf(0, 3, FigureCodecLawsTest::text));
    }

    private static Axis axis(Draw draw) {
        Axis free = Axis.of(text(draw), text(draw));
        if (draw.anyBoolean()) {
            return free;
        }
        double from = draw.doubleIn(-1e6, 1e6);
        return free.between(from, from + draw.doubleIn(0.01, 1e6));
    }

    private static Series lines(Draw draw) {
        String name = text(draw);
        int size = draw.intIn(0, 30);
        return draw.from(
                d -> new Series.Curve(name, numbers(size, d), numbers(size, d)),
                d -> new Series.Dots(name, numbers(size, d), numbers(size, d)),
                d -> new Series.Band(name, numbers(size, d), numbers(size, d), numbers(size, d)));
    }

    private static Series bars(Draw draw) {
        List<String> words = draw.listOf(0, 5, FigureCodecLawsTest::text);
        double[] heights = words.stream().mapToDouble(word -> draw.doubleIn(0, 1)).toArray();
        return new Series.Bars(text(draw), words, NumberColumn.of(heights));
    }

    private static NumberColumn numbers(int size, Draw draw) {
        List<Double> drawn = draw.listOf(size, size, FigureCodecLawsTest::value);
        return NumberColumn.of(drawn.stream().mapToDouble(x -> x).toArray());
    }

    private static double value(Draw draw) {
        return draw.from(
                Draw::finiteDouble,
                d ->
                        d.oneOf(
                                Double.NaN,
                                Double.POSITIVE_INFINITY,
                                Double.NEGATIVE_INFINITY,
                                -0.0,
                                Double.MIN_VALUE));
    }

    /** Any text that is Unicode: half a surrogate pair has no UTF-8. */
    private static String text(Draw draw) {
        return draw.from(d -> d.text(20), d -> d.oneOf("", "°C", "−18", "🍨 ice", "糖", "a\nb"));
    }
}
