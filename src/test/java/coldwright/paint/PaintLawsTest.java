package coldwright.paint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Figure;
import coldwright.figure.Numbers;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;

class PaintLawsTest {
    /** A double carries some 16 digits; a few are lost between values and pixels. */
    private static final double LOST_DIGITS = 1e-9;

    @Property(tries = 100)
    void anythingCanBeDrawn(
            @ForAll("values") List<Double> xs,
            @ForAll("values") List<Double> ys,
            @ForAll @IntRange(min = 40, max = 500) int width,
            @ForAll @IntRange(min = 40, max = 400) int height,
            @ForAll @DoubleRange(min = 0.5, max = 2) double scale,
            @ForAll @DoubleRange(min = 6, max = 30) double type) {
        int size = Math.min(xs.size(), ys.size());
        double[] x = xs.stream().mapToDouble(v -> v).limit(size).toArray();
        double[] y = ys.stream().mapToDouble(v -> v).limit(size).toArray();
        Figure figure =
                Figure.of("Any figure, also one with a title that is longer than its sheet")
                        .x("x", "%")
                        .y("y", "°C")
                        .line("line", x, y)
                        .points("points", y, x)
                        .band("band", x, v -> v - 1, v -> v * 2)
                        .markX("mark", size > 0 ? x[0] : 0)
                        .markY("mark", size > 0 ? y[0] : 0);
        Sheet sheet = Sheet.of(width, height).withScale(scale).withType(type);
        Figure earlier = figure.line("earlier", y, x);
        Plate plate = ChartPainter.paint(figure, Optional.of(earlier), sheet);
        assertEquals(sheet.widthPx(), plate.picture().widthPx());
    }

    @Property(tries = 40)
    void anyBarsCanBeDrawn(
            @ForAll("values") List<Double> values,
            @ForAll @IntRange(min = 40, max = 500) int width) {
        List<String> words = values.stream().map(v -> "a word " + v).toList();
        double[] heights = values.stream().mapToDouble(v -> v).toArray();
        ChartPainter.paint(Figure.of("Bars").bars("b", words, heights), Sheet.of(width, 200));
    }

    @Property
    void pixelsLeadBackToValues(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double from,
            @ForAll @DoubleRange(min = 0.01, max = 1e6) double wide,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        Plot plot =
                new Plot(
                        new Plot.Area(31, 17, 500, 300),
                        new Span(from, from + wide),
                        new Span(-wide, from + 2e6));
        double x = from + share * wide;
        double y = -wide + share * plot.y().width();
        assertEquals(x, plot.xAt(plot.xPx(x)), LOST_DIGITS * (Math.abs(from) + wide));
        assertEquals(y, plot.yAt(plot.yPx(y)), LOST_DIGITS * 1e7);
        assertTrue(plot.yPx(y) <= plot.area().bottom() + 1e-6);
        assertTrue(plot.area().holds(plot.xPx(from + wide / 2), plot.yPx(0)));
    }

    @Property
    void ticksAreRoundFewAndWithinTheAxis(
            @ForAll @DoubleRange(min = -1e9, max = 1e9) double from,
            @ForAll @DoubleRange(min = -9, max = 12) double power,
            @ForAll @IntRange(min = 2, max = 12) int most) {
        Span span = Span.around(from, from + Math.pow(10, power));
        Ticks ticks = Ticks.on(span, most);
        assertTrue(ticks.count() <= most + 1, ticks.count() + " ticks");
        double leading = ticks.step() / Math.pow(10, Math.floor(Math.log10(ticks.step()) + 1e-9));
        assertTrue(
                Math.abs(leading - Math.rint(leading)) < 1e-6
                        && List.of(1L, 2L, 5L, 10L).contains(Math.round(leading)),
                "step " + ticks.step());
        for (int i = 0; i < ticks.count(); i++) {
            assertTrue(ticks.value(i) >= span.from() - ticks.step() * 1e-3);
            assertTrue(ticks.value(i) <= span.to() + ticks.step() * 1e-3);
        }
        Ticks out = Ticks.letOut(span, most);
        assertTrue(out.span().from() <= span.from() + out.step() * 1e-3);
        assertTrue(out.span().to() >= span.to() - out.step() * 1e-3);
    }

    @Property(tries = 200)
    void noTwoTicksReadTheSame(
            @ForAll @DoubleRange(min = -1e4, max = 1e4) double from,
            @ForAll @DoubleRange(min = -3, max = 9) double power) {
        List<String> labels = Ticks.on(Span.around(from, from + Math.pow(10, power)), 8).labels();
        assertEquals(labels.size(), new HashSet<>(labels).size(), labels.toString());
    }

    @Property(tries = 20)
    void aTrailKeepsOnlyWhatCanBeSeen(@ForAll Random random) {
        double[] xs = Numbers.spaced(0, 1, 100_000).toArray();
        double[] ys = random.doubles(xs.length, -5, 6).toArray();
        Plot plot = new Plot(new Plot.Area(0, 0, 300, 200), new Span(0, 1), new Span(0, 1));
        Path2D path = Trail.through(Numbers.of(xs), Numbers.of(ys), plot);
        int points = 0;
        double[] at = new double[6];
        for (PathIterator way = path.getPathIterator(null); !way.isDone(); way.next()) {
            way.currentSegment(at);
            points++;
            assertTrue(at[1] >= -41 && at[1] <= 241, "y " + at[1]);
        }
        assertTrue(points < 300 * 4 * 4 * 2 && points > 300 * 4, points + " points");
    }

    @Provide
    Arbitrary<List<Double>> values() {
        Arbitrary<Double> value =
                Arbitraries.frequencyOf(
                        net.jqwik.api.Tuple.of(6, Arbitraries.doubles().between(-100, 100)),
                        net.jqwik.api.Tuple.of(2, Arbitraries.doubles()),
                        net.jqwik.api.Tuple.of(
                                1,
                                Arbitraries.of(
                                        Double.NaN,
                                        Double.POSITIVE_INFINITY,
                                        Double.NEGATIVE_INFINITY,
                                        Double.MAX_VALUE,
                                        -Double.MAX_VALUE,
                                        Double.MIN_VALUE,
                                        0.0)));
        return value.list().ofMaxSize(30);
    }
}
