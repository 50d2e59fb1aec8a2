package coldwright.science.freezer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import coldwright.published.FromTable;
import coldwright.published.Ledger;
import coldwright.published.PublishedTable.Row;
import coldwright.published.Tolerance;
import coldwright.science.Band;
import coldwright.science.freezer.FreezingFormula.Form;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

import java.util.Locale;

/** Plank's and Pham's formulas against examples worked elsewhere. */
class PublishedFormulaTest {
    private static final Ledger LEDGER = Ledger.of(PublishedFormulaTest.class);
    private static final Tolerance NODE = Tolerance.of(0, "stands in the program");
    private static final Tolerance ROUNDED_HOURS = Tolerance.of(0.01, "printed to 0.01 h");

    @ParameterizedTest
    @FromTable("plank-worked")
    void plank(Row row) {
        Form form = Form.valueOf(row.text("form"));
        double seconds =
                FreezingFormula.of(form, row.number("size_mm"))
                        .matter(row.number("density_kg_per_m3"), row.number("latent_j_per_g"))
                        .conduction(row.number("conductivity"), row.number("film"))
                        .between(row.number("freezes_c"), row.number("air_c"))
                        .plankSeconds();
        LEDGER.at(row, form.name().toLowerCase(Locale.ROOT) + " " + row.text("size_mm") + " mm")
                .compare(
                        "Plank's freezing time, s",
                        row.number("seconds"),
                        seconds,
                        Tolerance.of(row.number("rounding_s"), "rounding of the example"));
    }

    @ParameterizedTest
    @FromTable("pham-worked")
    void pham(Row row) {
        double seconds =
                FreezingFormula.of(Form.SLAB, row.number("size_mm"))
                        .matter(row.number("density_frozen"), row.number("latent"))
                        .conduction(row.number("conductivity"), row.number("film"))
                        .between(-1, row.number("air_c"))
                        .phamSeconds(
                                new FreezingFormula.Ends(
                                        row.number("start_c"),
                                        row.number("density_unfrozen"),
                                        row.number("cp_liquid"),
                                        row.number("end_c"),
                                        row.number("cp_solid")));
        LEDGER.at(row, "slab " + row.text("size_mm") + " mm")
                .compare(
                        "Pham's freezing time, h",
                        row.number("hours"),
                        seconds / 3600,
                        ROUNDED_HOURS);
    }

    @ParameterizedTest
    @FromTable("memory-films")
    void films(Row row) {
        Film film = Film.valueOf(row.text("film"));
        Band found =
                new Band(
                        film.coefficientWPerM2K(Reading.SLOW),
                        film.coefficientWPerM2K(Reading.LIKELY),
                        film.coefficientWPerM2K(Reading.FAST));
        assertEquals(row.number("low"), found.low());
        assertEquals(row.number("high"), found.high());
        LEDGER.at(row, film.words())
                .compare("film, W/(m²·K)", row.between("low", "high"), found, NODE);
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
