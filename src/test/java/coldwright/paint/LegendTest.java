package coldwright.paint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Figure;

import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Optional;

class LegendTest {
    private static final Figure TWO =
            Figure.of("t")
                    .y("freezing point", "°C")
                    .line("sucrose", 0, 1, x -> x)
                    .line("glucose", 0, 1, x -> 2 * x);

    @Test
    void theEarlierTraceIsNamedOnceAndLast() {
        assertEquals(
                List.of("sucrose", "glucose", "earlier"),
                names(TWO, Optional.of(TWO.line("third", 0, 1, x -> 3))));
    }

    @Test
    void aNameThatSaysNothingNewIsLeftOut() {
        Figure one = Figure.of("t").y("freezing point", "°C");
        assertEquals(List.of(), names(one.line("Freezing point", 0, 1, x -> x), Optional.empty()));
        assertEquals(List.of(), names(one.line("", 0, 1, x -> x), Optional.empty()));
        assertEquals(
                List.of("with rum"), names(one.line("with rum", 0, 1, x -> x), Optional.empty()));
    }

    @Test
    void theLegendCoversNoData() {
        Figure many = Figure.of("many").x("x", "").y("y", "");
        for (int i = 0; i < 20; i++) {
            double at = i;
            many = many.line("series number " + i, 0, 1, x -> at);
        }
        for (int width = 100; width <= 1600; width += 300) {
            Layout layout =
                    Layout.of(many, Optional.empty(), Sheet.of(width, 400), Optional.empty());
            for (Legend.Placed sample : layout.samples()) {
                assertTrue(sample.y() < layout.plot().area().top(), "at width " + width);
            }
        }
    }

    @Test
    void linesOfTextDoNotOverlapNorLeaveTheSheet() {
        for (Sheet sheet : List.of(Sheet.of(400, 300), Sheet.of(800, 500), Sheet.of(1600, 1000))) {
            Layout layout =
                    Layout.of(TWO.x("sugar", "%"), Optional.empty(), sheet, Optional.empty());
            for (Line line : layout.lines()) {
                double right = line.x() + line.type().width(line.text());
                assertTrue(line.x() >= 0 && right <= sheet.width(), line.text());
                assertTrue(line.y() > 0 && line.y() < sheet.height(), line.text());
                for (Line other : layout.lines()) {
                    boolean apart =
                            other.equals(line)
                                    || Math.abs(other.y() - line.y()) >= line.type().size() * 0.9
                                    || other.x() >= right
                                    || other.x() + other.type().width(other.text()) <= line.x();
                    assertTrue(apart, line.text() + " meets " + other.text());
                }
            }
        }
    }

    private static List<String> names(Figure figure, Optional<Figure> earlier) {
        return Legend.of(figure, earlier, Type.of(13), Ground.LIGHT).entries().stream()
                .map(Legend.Entry::name)
                .toList();
    }
}
