package coldwright.paint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Figure;

import org.junit.jupiter.api.Test;

import java.util.List;

class TextPlotTest {
    private static final int WIDTH = 60;

    private static final Figure RISING =
            Figure.of("Toasting")
                    .x("time", "min")
                    .y("heat", "°C")
                    .line("oats", 0, 10, t -> 20 + 10 * t)
                    .points("measured", new double[] {0, 10}, new double[] {120, 20})
                    .markX("turn", 5);

    @Test
    void aCurveRunsFromCornerToCorner() {
        List<String> lines = TextPlot.of(RISING, WIDTH, false);
        assertEquals("heat, °C", lines.get(0));
        assertTrue(lines.get(1).startsWith("120 │b"), lines.get(1));
        assertTrue(lines.get(1).endsWith("a"), lines.get(1));
        assertTrue(lines.get(14).startsWith(" 20 │a"), lines.get(14));
        assertTrue(lines.get(14).endsWith("b"), lines.get(14));
        assertEquals(12, lines.stream().filter(line -> line.contains("┊")).count(), "the mark");
        assertTrue(lines.contains("     a  oats"), lines.toString());
        assertTrue(lines.stream().allMatch(line -> line.length() <= WIDTH), lines.toString());
    }

    @Test
    void plainPlotsKeepToAscii() {
        for (String line : TextPlot.of(RISING, WIDTH, true).subList(1, 16)) {
            assertTrue(line.chars().allMatch(c -> c < 128), line);
        }
    }

    @Test
    void barsLieLevelWithTheirValues() {
        Figure bars =
                Figure.of("Trays")
                        .y("oats", "g")
                        .bars("oats", List.of("one", "three"), new double[] {150, 450});
        List<String> lines = TextPlot.of(bars, WIDTH, false);
        long one = lines.get(1).chars().filter(c -> c == '█').count();
        long three = lines.get(2).chars().filter(c -> c == '█').count();
        assertEquals(3.0, (double) three / one, 0.25, "a third as long, to half a block");
        assertTrue(lines.get(1).startsWith("  one █"), lines.get(1));
        assertTrue(lines.get(1).endsWith("█ 150"), lines.get(1));
    }

    @Test
    void whatIsNoNumberIsLeftOut() {
        double[] odd = {1, Double.NaN, Double.POSITIVE_INFINITY, 2};
        assertTrue(TextPlot.of(Figure.of("odd").line("l", odd, odd), WIDTH, false).size() > 10);
        assertEquals(List.of(), TextPlot.of(Figure.of("none"), WIDTH, false));
    }
}
