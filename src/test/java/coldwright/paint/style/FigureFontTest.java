package coldwright.paint.style;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import java.util.List;

class FigureFontTest {
    private static final FigureFont TYPE = FigureFont.of(13);

    @Test
    void allFiguresAreOfOneWidth() {
        for (char digit = '0'; digit <= '9'; digit++) {
            assertEquals(TYPE.width("0"), TYPE.width("" + digit), 1e-6);
        }
    }

    @Test
    void aLongTitleIsBrokenBetweenWords() {
        List<String> lines = TYPE.wrapped("how far each sugar lowers the freezing point", 120, 9);
        assertTrue(lines.size() > 1);
        assertEquals("how far each sugar lowers the freezing point", String.join(" ", lines));
        lines.forEach(line -> assertTrue(TYPE.width(line) <= 120, line));
    }

    @Test
    void whatDoesNotFitIsCutWithASign() {
        List<String> lines = TYPE.wrapped("how far each sugar lowers the freezing point", 120, 2);
        assertEquals(2, lines.size());
        assertTrue(lines.get(1).endsWith("…"), lines.get(1));
        lines.forEach(line -> assertTrue(TYPE.width(line) <= 120, line));
        assertTrue(TYPE.width(TYPE.cut("Donaudampfschifffahrtsgesellschaft", 60)) <= 60);
    }

    @Test
    void signsOfTheTradeCanBeSet() {
        assertEquals(
                -1, TYPE.font().canDisplayUpTo("−18 °C · µm Δ ½ ² ³ ⁻⁹ × ≤ – “” ß é → ≈ …\u2009"));
    }

    @Test
    void controlCodesAreNotSet() {
        assertEquals("a b c ", FigureFont.shown("a\nb\u0000c\uD800"));
        assertEquals("−18 °C 🍨", FigureFont.shown("−18 °C 🍨"));
    }
}
