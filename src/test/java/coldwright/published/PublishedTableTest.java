package coldwright.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import java.util.List;

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
    void citationEndsBeforeTheColumns() {
        String citation = PublishedTable.read("choi-okos-1986-values").citation();
        assertTrue(citation.endsWith("the polynomials of the components."), citation);
    }

    @Test
    void aDoubtfulRowNeitherFitsNorJudges() {
        PublishedTable table = PublishedTable.read("telis-2007-fructose-viscosity");
        assertEquals(0, table.fits().size());
        assertEquals(6, table.checks().size());
        assertEquals(8, table.rows().size());
    }

    @Test
    void everyTableOpensWithItsCitationAndNamesItsColumns() {
        assertTrue(PublishedTable.names().size() > 30, "an empty folder would pass");
        for (String name : PublishedTable.names()) {
            PublishedTable table = PublishedTable.read(name);
            assertTrue(
                    table.header().stream().skip(1).anyMatch(line -> line.startsWith("columns:")),
                    name + ".csv has no line \"# columns:\" after its citation");
            assertFalse(table.citation().isBlank(), name);
            assertNotNull(table.kind(), name);
            assertFalse(
                    table.header().stream()
                            .anyMatch(line -> line.matches(".*project.s (science )?notes.*")),
                    name + ".csv cites notes that no reader can open");
            for (PublishedTable.Row row : table.rows()) {
                assertTrue(
                        List.of("fit", "check", "doubtful")
                                .contains(row.values().getOrDefault("use", "check")),
                        row::toString);
            }
        }
    }

    @Test
    void aTableWithoutItsKindIsRefused() {
        PublishedTable without =
                new PublishedTable("without", List.of("somebody 1900", "columns: a"), List.of());
        assertEquals(
                "without.csv has no line \"# kind: …\"",
                assertThrows(IllegalStateException.class, without::kind).getMessage());
        PublishedTable odd =
                new PublishedTable("odd", List.of("somebody 1900", "kind: rumour"), List.of());
        assertThrows(IllegalArgumentException.class, odd::kind);
        assertEquals(Kind.MEASUREMENT, TABLE.kind());
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
