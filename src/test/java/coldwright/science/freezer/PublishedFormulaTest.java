package coldwright.science.freezer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import coldwright.science.freezer.FreezingFormula.Form;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Plank's and Pham's formulas against examples worked elsewhere. */
class PublishedFormulaTest {
    private static final double ROUNDING_HOURS = 0.01;

    @ParameterizedTest
    @CsvFileSource(resources = "/published/plank-worked.csv")
    void plank(ArgumentsAccessor row) {
        double seconds =
                FreezingFormula.of(Form.valueOf(row.getString(0)), row.getDouble(1))
                        .matter(row.getDouble(2), row.getDouble(3))
                        .conduction(row.getDouble(4), row.getDouble(5))
                        .between(row.getDouble(6), row.getDouble(7))
                        .plankSeconds();
        assertEquals(row.getDouble(8), seconds, row.getDouble(9));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/pham-worked.csv")
    void pham(ArgumentsAccessor row) {
        double frozen = row.getDouble(4);
        double seconds =
                FreezingFormula.of(Form.SLAB, row.getDouble(0))
                        .matter(frozen, row.getDouble(5))
                        .conduction(row.getDouble(2), row.getDouble(1))
                        .heatCapacities(
                                row.getDouble(6) * row.getDouble(3) / frozen, row.getDouble(7))
                        .between(-1, row.getDouble(10))
                        .fromTo(row.getDouble(8), row.getDouble(9))
                        .phamSeconds();
        assertEquals(row.getDouble(11), seconds / 3600, ROUNDING_HOURS);
    }

    @Test
    void refusesAirThatCannotFreezeIt() {
        Exception e =
                assertThrows(
                        IllegalArgumentException.class,
                        () -> FreezingFormula.of(Form.SLAB, 50).between(-2, 4));
        assertEquals("airC is 4 °C; it must be below the freezing point of −2 °C", e.getMessage());
    }
}
