package coldwright.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PublishedTableTest {
    private static final PublishedTable TABLE = PublishedTable.read("drebushchak-2017-eutectics");

    @Test
    void readsCitationColumnsAndUse() {
        assertTrue(TABLE.citation().contains("Thermochim. Acta 647 (2017) 94"), TABLE.citation());
        assertEquals(TABLE.rows().size(), TABLE.fits().size() + TABLE.checks().size());
        assertEquals("SODIUM_CHLORIDE", TABLE.rows().get(0).text("solute"));
        assertEquals(23.3, TABLE.rows().get(0).number("massPercent"));
        assertTrue(TABLE.rows().get(0).fitted());
    }

    @Test
    void findsTheWorstRow() {
        PublishedTable.Deviation worst =
                TABLE.worst(
                        TABLE.rows(),
                        "temperatureC",
                        row -> row.number("temperatureC") - row.number("massPercent") / 100);
        assertEquals("GLYCEROL", worst.row().text("solute"));
        assertEquals(-0.667, worst.error(), 1e-9);
        assertEquals(-100 * 0.667 / 46.5, worst.errorPercent(), 1e-9);
    }

    @Test
    void anErrorThatIsNoNumberIsTheWorst() {
        assertTrue(
                Double.isNaN(
                        TABLE.worst(
                                        TABLE.rows(),
                                        "temperatureC",
                                        row -> row.fitted() ? -21 : Double.NaN)
                                .error()));
    }

    @Test
    void namesWhatIsMissing() {
        assertEquals(
                "no table /published/nowhere.csv",
                assertThrows(IllegalStateException.class, () -> PublishedTable.read("nowhere"))
                        .getMessage());
        assertTrue(
                assertThrows(IllegalStateException.class, () -> TABLE.rows().get(0).text("colour"))
                        .getMessage()
                        .startsWith("drebushchak-2017-eutectics.csv has no column colour"));
    }
}
