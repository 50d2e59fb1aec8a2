package coldwright.published;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where the program lies outside what a source allows, and is known to: listed in {@code
 * known-deviations.csv}, pinned by the test that compares it, printed in the report.
 *
 * @param table the published table
 * @param quantity what was compared
 * @param where which row
 * @param off computed − published, in the unit of the quantity: a regression value of this program
 * @param why what is known of it
 */
record KnownDeviation(String table, String quantity, String where, double off, String why) {
    /** How far the error may move before the list must be changed, of the error. */
    private static final double PINNED = 0.01;

    private static final Map<List<String>, KnownDeviation> ALL = read();

    /** The one that a comparison was listed as. */
    static Optional<KnownDeviation> of(Comparison made) {
        return Optional.ofNullable(ALL.get(List.of(made.table(), made.quantity(), made.where())));
    }

    /** All that are listed. */
    static List<KnownDeviation> all() {
        return List.copyOf(ALL.values());
    }

    /** Whether an error is still the one that was listed. */
    boolean pins(double error) {
        return Math.abs(error - off) <= PINNED * Math.abs(off);
    }

    private static Map<List<String>, KnownDeviation> read() {
        try (InputStream in = KnownDeviation.class.getResourceAsStream("/known-deviations.csv")) {
            CSVFormat format =
                    CSVFormat.DEFAULT
                            .builder()
                            .setCommentMarker('#')
                            .setHeader()
                            .setSkipHeaderRecord(true)
                            .get();
            Map<List<String>, KnownDeviation> all = new LinkedHashMap<>();
            for (CSVRecord row : format.parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
                KnownDeviation one =
                        new KnownDeviation(
                                row.get("table"),
                                row.get("quantity"),
                                row.get("where"),
                                Double.parseDouble(row.get("off")),
                                row.get("why"));
                all.put(List.of(one.table, one.quantity, one.where), one);
            }
            return all;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
