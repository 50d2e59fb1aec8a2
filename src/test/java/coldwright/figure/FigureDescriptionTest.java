package coldwright.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;

import java.util.List;

class FigureDescriptionTest {
    private static final Figure BLANK =
            Figure.of("Sugar against ice").x("sugar", "%").y("freezing point", "°C");

    private static final String HEAD = "Sugar against ice. Freezing point (°C) against sugar (%). ";

    @Test
    void aLineThatFalls() {
        assertEquals(
                HEAD + "sucrose: falls from 0 to −3.4 °C as sugar rises from 0 to 40 %.",
                FigureDescription.describe(BLANK.line("sucrose", 0, 40, w -> -3.4 * w * w / 1600)));
    }

    @Test
    void aLineThatLevelsOff() {
        assertEquals(
                HEAD
                        + "a: rises from 0 to 5 °C as sugar rises from 0 to 100 %,"
                        + " levelling off from about 30 %.",
                FigureDescription.describe(
                        BLANK.line("a", 0, 100, w -> 5 * (1 - Math.exp(-w / 10)))));
    }

    @Test
    void aLineThatTurns() {
        assertEquals(
                HEAD
                        + "hill: rises from 0 to 4 °C at 10 %, then falls to 0 °C"
                        + " as sugar rises from 0 to 20 %.",
                FigureDescription.describe(
                        BLANK.line("hill", NumberColumn.spaced(0, 20, 21).toArray(), hill())));
        assertEquals(
                HEAD + "wave: goes up and down between −1 and 1 °C as sugar rises from 0 to 40 %.",
                FigureDescription.describe(BLANK.line("wave", 0, 40, Math::sin)));
    }

    private static double[] hill() {
        return NumberColumn.spaced(0, 20, 21).map(x -> x * (20 - x) / 25).toArray();
    }

    @Test
    void aLevelLineAndOneWithGaps() {
        assertEquals(
                HEAD + "level: stays at 5 °C as sugar rises from 0 to 40 %.",
                FigureDescription.describe(BLANK.line("level", 0, 40, w -> 5)));
        assertEquals(
                HEAD + "a: rises from 1 to 4 °C as sugar rises from 0 to 3 %, with gaps.",
                FigureDescription.describe(
                        BLANK.line(
                                "a",
                                new double[] {0, 1, 2, 3},
                                new double[] {1, 0.0 / 0, 1 / 0.0, 4})));
    }

    @Test
    void linesThatCross() {
        String text =
                FigureDescription.describe(
                        BLANK.line("up", 0, 40, w -> w / 10).line("down", 0, 40, w -> 2 - w / 10));
        assertEquals(
                HEAD
                        + "up: rises from 0 to 4 °C as sugar rises from 0 to 40 %."
                        + " down: falls from 2 to −2 °C as sugar rises from 0 to 40 %."
                        + " up and down cross at 10 %, 1 °C.",
                text);
    }

    @Test
    void linesThatDoNotCross() {
        String text =
                FigureDescription.describe(
                        BLANK.line("glucose", 0, 40, w -> -w / 5)
                                .line("sucrose", 0, 40, w -> -w / 9));
        assertEquals(
                "sucrose is never below glucose.",
                text.substring(text.indexOf("sucrose is never")));
    }

    @Test
    void pointsBandsBarsAndMarks() {
        assertEquals(
                HEAD + "measured: 3 points, from 0 to 40 %, between −4 and 0 °C.",
                FigureDescription.describe(
                        BLANK.points(
                                "measured", new double[] {0, 20, 40}, new double[] {0, -2, -4})));
        assertEquals(
                HEAD + "open: a band, from −1–1 °C at 0 % to 1–3 °C at 40 %.",
                FigureDescription.describe(
                        BLANK.band(
                                "open", new double[] {0, 40}, w -> w / 20 - 1, w -> w / 20 + 1)));
        assertEquals(
                "Solids. Total solids (% by mass). solids: sorbet 31.2, caramel 41.9 % by mass."
                        + " Marked: least at 30 % by mass.",
                FigureDescription.describe(
                        Figure.of("Solids")
                                .y("total solids", "% by mass")
                                .bars(
                                        "solids",
                                        List.of("sorbet", "caramel"),
                                        new double[] {31.2, 41.9})
                                .markY("least", 30)));
    }

    @Test
    void theAuthorsOwnWordsGoFirst() {
        assertEquals("My words.", FigureDescription.describe(BLANK.text("My words.")));
    }

    @Test
    void nothingDrawnNoPointsNothingFinite() {
        assertEquals(HEAD + "Nothing is drawn yet.", FigureDescription.describe(BLANK));
        assertEquals(
                HEAD + "none: no points.",
                FigureDescription.describe(BLANK.line("none", 0, 1, w -> 0.0 / 0)));
        assertEquals(
                HEAD + "one: −2 °C at 5 %.",
                FigureDescription.describe(BLANK.line("one", new double[] {5}, new double[] {-2})));
    }

    @Test
    void theMinusSignIsARealOne() {
        assertFalse(FigureDescription.describe(BLANK.line("a", -40, 0, w -> w)).contains("-"));
    }
}
