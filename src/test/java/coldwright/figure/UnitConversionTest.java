package coldwright.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.OptionalDouble;

/** Figures in other units. */
final class UnitConversionTest {
    private static final double ROUNDING = 1e-12;
    private static final UnitConversion ABROAD = new UnitConversion(true, true);

    @Test
    void fixedPointsOfTheScalesAgree() {
        assertEquals(32, ABROAD.value(0, "°C"), ROUNDING);
        assertEquals(212, ABROAD.value(100, "°C"), ROUNDING);
        assertEquals(-40, ABROAD.value(-40, "°C"), ROUNDING);
        assertEquals(1.8, ABROAD.value(1, "K"), ROUNDING, "a difference has no zero to shift");
        assertEquals(16, ABROAD.value(453.59237, "g"), ROUNDING, "one pound");
        assertEquals(7, ABROAD.value(7, "%"), ROUNDING);
    }

    @Test
    void everythingThatStandsOnAnAxisMovesWithIt() {
        double[] xs = {-20, 0};
        Figure figure =
                Figure.of("ice")
                        .x("temperature", "°C")
                        .xBetween(-20, 0)
                        .y("sugar", "g")
                        .line("line", xs, new double[] {0, OUNCE})
                        .points("points", xs, new double[] {OUNCE, 0})
                        .band("band", xs, x -> 0, x -> OUNCE)
                        .markX("freezer", -18)
                        .markY("much", 2 * OUNCE);
        Figure shown = ABROAD.of(figure);
        assertEquals("temperature, °F", shown.x().caption());
        assertEquals("sugar, oz", shown.y().caption());
        assertEquals(OptionalDouble.of(-4), shown.x().from());
        assertEquals(NumberColumn.of(-4, 32), ((Series.Curve) shown.series().get(0)).x());
        assertEquals(NumberColumn.of(0, 1), ((Series.Curve) shown.series().get(0)).y());
        assertEquals(NumberColumn.of(1, 0), ((Series.Dots) shown.series().get(1)).y());
        assertEquals(NumberColumn.of(1, 1), ((Series.Band) shown.series().get(2)).high());
        assertEquals(-0.4, shown.marks().get(0).at(), ROUNDING);
        assertEquals(2, shown.marks().get(1).at(), ROUNDING);
    }

    @Test
    void barsKeepTheirWords() {
        Figure bars =
                Figure.of("bars")
                        .y("weight", "g")
                        .bars("b", List.of("a", "b"), new double[] {OUNCE, 0});
        assertEquals(
                new Series.Bars("b", List.of("a", "b"), NumberColumn.of(1, 0)),
                ABROAD.of(bars).series().get(0));
    }

    @Test
    void whatNeedsNoExchangeIsTheSame() {
        Figure figure = Figure.of("f").x("time", "min").y("ice", "%");
        assertSame(figure, ABROAD.of(figure));
        Figure cold = Figure.of("f").x("t", "°C");
        assertSame(cold, UnitConversion.AS_IT_IS.of(cold));
    }

    private static final double OUNCE = UnitConversion.OUNCE_G;
}
