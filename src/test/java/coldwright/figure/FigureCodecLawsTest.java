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

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

class FigureCodecLawsTest {
    private static final int PLENTY = 100_000;

    /** A refused stream may cost no more than its own size many times over. */
    private static final long MOST_BYTES_TAKEN = 2_000_000;

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void aFigureComesBackAsItWas(@ForAll("figures") Figure figure) throws IOException {
        assertEquals(figure, FigureCodecTest.read(FigureCodecTest.written(figure), PLENTY));
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void randomBytesOnlyEverGiveARefusal(@ForAll byte[] bytes) {
        refusedOrRead(bytes);
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void aFigureWithSomeBytesChangedIsReadOrRefused(
            @ForAll("figures") Figure figure, @ForAll Random random) throws IOException {
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

    @Provide
    Arbitrary<Figure> figures() {
        Arbitrary<List<Series>> mixed =
                Arbitraries.oneOf(curves(), dots(), bands())
                        .list()
                        .ofMaxSize(5)
                        .uniqueElements(Series::name);
        Arbitrary<List<Series>> barred =
                bars().list().ofMinSize(1).ofMaxSize(3).uniqueElements(Series::name);
        Arbitrary<Mark> marks =
                Combinators.combine(texts(), Arbitraries.of(Mark.Across.values()), values())
                        .as(Mark::new);
        return Combinators.combine(
                        texts(),
                        axes(),
                        axes(),
                        Arbitraries.oneOf(mixed, barred),
                        marks.list().ofMaxSize(3),
                        texts(),
                        texts().list().ofMaxSize(3))
                .as(Figure::new);
    }

    private static Arbitrary<Axis> axes() {
        Arbitrary<Axis> free = Combinators.combine(texts(), texts()).as(Axis::of);
        Arbitrary<Axis> fixed =
                Combinators.combine(
                                free,
                                Arbitraries.doubles().between(-1e6, 1e6),
                                Arbitraries.doubles().between(0.01, 1e6))
                        .as((axis, from, width) -> axis.between(from, from + width));
        return Arbitraries.oneOf(free, fixed);
    }

    private static Arbitrary<Series> curves() {
        return Combinators.combine(texts(), pairs())
                .as((name, p) -> new Series.Curve(name, column(p, 0), column(p, 1)));
    }

    private static Arbitrary<Series> dots() {
        return Combinators.combine(texts(), pairs())
                .as((name, p) -> new Series.Dots(name, column(p, 0), column(p, 1)));
    }

    private static Arbitrary<Series> bands() {
        return Combinators.combine(texts(), pairs())
                .as((name, p) -> new Series.Band(name, column(p, 0), column(p, 1), column(p, 2)));
    }

    private static Arbitrary<Series> bars() {
        return Combinators.combine(texts(), texts().list().ofMaxSize(5), Arbitraries.randoms())
                .as(
                        (name, words, random) ->
                                new Series.Bars(
                                        name,
                                        words,
                                        Numbers.of(random.doubles(words.size()).toArray())));
    }

    private static Arbitrary<List<List<Double>>> pairs() {
        return values().list().ofSize(3).list().ofMaxSize(30);
    }

    private static Numbers column(List<List<Double>> rows, int which) {
        List<Double> column = new ArrayList<>();
        rows.forEach(row -> column.add(row.get(which)));
        return Numbers.of(column.stream().mapToDouble(Double::doubleValue).toArray());
    }

    private static Arbitrary<Double> values() {
        return Arbitraries.oneOf(
                Arbitraries.doubles(),
                Arbitraries.of(
                        Double.NaN,
                        Double.POSITIVE_INFINITY,
                        Double.NEGATIVE_INFINITY,
                        -0.0,
                        Double.MIN_VALUE));
    }

    /** Any text that is Unicode: half a surrogate pair has no UTF-8. */
    private static Arbitrary<String> texts() {
        return Arbitraries.oneOf(
                Arbitraries.strings().excludeChars(surrogates()).ofMaxLength(20),
                Arbitraries.of("", "°C", "−18", "🍨 ice", "糖", "a\nb"));
    }

    private static char[] surrogates() {
        char[] all = new char[Character.MAX_SURROGATE - Character.MIN_SURROGATE + 1];
        for (int i = 0; i < all.length; i++) {
            all[i] = (char) (Character.MIN_SURROGATE + i);
        }
        return all;
    }
}
