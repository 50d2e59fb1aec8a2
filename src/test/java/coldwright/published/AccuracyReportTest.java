package coldwright.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.published.PublishedTable.Row;
import coldwright.science.Band;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.opentest4j.AssertionFailedError;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

class AccuracyReportTest {
    private static final Tolerance HALF = Tolerance.of(0.5, "made up");
    private static final PublishedTable TABLE = PublishedTable.read("drebushchak-2017-eutectics");

    @TempDir Path folder;

    private List<Comparison> written() throws IOException {
        Path file = folder.resolve(AccuracyReportTest.class.getName() + ".tsv");
        return Files.readAllLines(file).stream().map(Comparison::read).toList();
    }

    private Row row(String use) {
        return TABLE.rows().stream()
                .filter(row -> row.text("use").equals(use))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aLineComesBackAsItWas() throws IOException {
        Ledger ledger = Ledger.of(AccuracyReportTest.class, folder);
        Tolerance judged = Tolerance.percent(3, "made up").judgedBy(Goal.BATH);
        ledger.at(row("check"), "here").compare("freezing point, °C", -10, -10.125, judged);
        assertEquals(
                List.of(
                        new Comparison(
                                "published",
                                TABLE.name(),
                                "freezing point",
                                "°C",
                                false,
                                "here",
                                -10,
                                -10,
                                -0.125,
                                judged)),
                written());
    }

    @Test
    void aMissFailsAndIsWrittenDownAllTheSame() throws IOException {
        Ledger.At at = Ledger.of(AccuracyReportTest.class, folder).at(row("check"), "here");
        AssertionFailedError error =
                assertThrows(AssertionFailedError.class, () -> at.compare("ice, %", 50, 51, HALF));
        assertTrue(error.getMessage().contains("here: ice is 1.0 % off"), error.getMessage());
        assertThrows(AssertionFailedError.class, () -> at.compare("ice, %", 50, Double.NaN, HALF));
        assertEquals(2, written().size());
    }

    @Test
    void aRangeIsMissedByTheGap() throws IOException {
        Ledger.At at = Ledger.of(AccuracyReportTest.class, folder).at(row("check"), "here");
        Band published = new Band(20, 27, 35);
        at.compare("size, µm", published, new Band(30, 40, 50), HALF);
        at.compare("size, µm", published, Band.exactly(35.25), HALF);
        at.compare("size, µm", published, Band.exactly(19.75), HALF);
        assertEquals(List.of(0.0, 0.25, -0.25), written().stream().map(Comparison::error).toList());
    }

    @Test
    void fittedRowsAreCountedApartAndTheLargestCheckIsNamed() throws IOException {
        Ledger ledger = Ledger.of(AccuracyReportTest.class, folder);
        ledger.at(row("fit"), "fitted").compare("freezing point, °C", -21, -21.4, HALF);
        ledger.at(row("check"), "small").compare("freezing point, °C", -10, -10.1, HALF);
        ledger.at(row("check"), "large").compare("freezing point, °C", -11, -10.75, HALF);
        String page = new AccuracyReport(written()).page();
        assertTrue(
                page.contains(
                        "| `drebushchak-2017-eutectics` | freezing point | 2 | 1 | −11 °C | −10 °C | 0.25 °C | large | 0.5 °C: made up |"),
                page);
        assertTrue(page.contains("- `drebushchak-2017-eutectics`: Eutectics of ice"), page);
    }

    @Test
    void goalsAreHeldAgainstChecksOnly() throws IOException {
        Ledger ledger = Ledger.of(AccuracyReportTest.class, folder);
        Tolerance wide = Tolerance.of(1, "the source is rough").judgedBy(Goal.BATH);
        ledger.at(row("fit"), "fitted").compare("bath, °C", -21, -21.9, wide);
        ledger.at(row("check"), "near").compare("bath, °C", -21, -21.1, wide);
        assertTrue(
                new AccuracyReport(written())
                        .page()
                        .contains(
                                "| the bath against the phase diagram | 0.2 °C | 1 | 0.1 °C | `drebushchak-2017-eutectics`, near | met |"));
        ledger.at(row("check"), "far").compare("bath, °C", -21, -21.5, wide);
        assertTrue(
                new AccuracyReport(written())
                        .page()
                        .contains("far | **missed** by 1 of 2: the source is rough |"));
    }

    @Test
    void aPageWithHolesIsNotWritten() throws IOException {
        Ledger ledger = Ledger.of(AccuracyReportTest.class, folder);
        ledger.at(row("check"), "here").compare("freezing point, °C", -10, -10, HALF);
        Path page = folder.resolve("page.md");
        IllegalStateException error =
                assertThrows(
                        IllegalStateException.class,
                        () ->
                                AccuracyReport.main(
                                        new String[] {folder.toString(), page.toString()}));
        assertTrue(error.getMessage().startsWith("no figures of "), error.getMessage());
        assertTrue(Files.notExists(page));
    }
}
