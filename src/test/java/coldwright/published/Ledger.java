package coldwright.published;

import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.published.PublishedTable.Row;
import coldwright.science.Band;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Asserts that computed values lie near published ones, and writes each comparison down, so that
 * {@link AccuracyReport} can say afterwards how near.
 *
 * <pre>{@code
 * private static final Ledger LEDGER = Ledger.of(PublishedBathTest.class);
 * ...
 * LEDGER.at(row, "23 % at −20 °C").compare("density, kg/m³", 1192.6, computed, POLYNOMIAL);
 * }</pre>
 *
 * <p>A comparison that {@link KnownDeviation} lists must miss its tolerance by just what is listed.
 *
 * <p>The figures go to {@code target/accuracy}, one file for each test class; the first comparison
 * of a run begins the file anew.
 */
public final class Ledger {
    /** Where the figures go. */
    static final Path FOLDER =
            Path.of(System.getProperty("coldwright.accuracy", "target/accuracy"));

    private static final Pattern HYPHEN = Pattern.compile("-(?=[0-9])");

    private final String room;
    private final Path file;
    private boolean begun;

    private Ledger(String room, Path file) {
        this.room = room;
        this.file = file;
    }

    /**
     * The ledger of a test class; the last word of its package names the room of the report.
     *
     * @param test the test class
     * @return its ledger, empty
     */
    public static Ledger of(Class<?> test) {
        return of(test, FOLDER);
    }

    static Ledger of(Class<?> test, Path folder) {
        String place = test.getPackageName();
        return new Ledger(
                place.substring(place.lastIndexOf('.') + 1),
                folder.resolve(test.getName() + ".tsv"));
    }

    /**
     * Turns to a row.
     *
     * @param row the row of a published table
     * @param where which one, in few words
     * @return where to compare
     */
    public At at(Row row, String where) {
        return new At(row, HYPHEN.matcher(where).replaceAll("−"));
    }

    /** A row to be compared with. */
    public final class At {
        private final Row row;
        private final String where;

        private At(Row row, String where) {
            this.row = row;
            this.where = where;
        }

        /**
         * Compares a value.
         *
         * @param quantity what, and after a comma its unit: {@code density, kg/m³}
         * @param published as printed
         * @param computed by the program
         * @param tolerance how far apart they may be
         */
        public void compare(
                String quantity, double published, double computed, Tolerance tolerance) {
            note(quantity, Band.exactly(published), computed - published, tolerance);
        }

        /**
         * Compares a value with a published range, or a computed band with one: the error is the
         * gap between the two, zero where they meet.
         *
         * @param quantity what, and after a comma its unit
         * @param published lowest and highest as printed
         * @param computed by the program
         * @param tolerance how far apart they may be
         */
        public void compare(String quantity, Band published, Band computed, Tolerance tolerance) {
            double above = computed.low() - published.high();
            double below = computed.high() - published.low();
            double gap = above > 0 ? above : Math.min(0, below);
            note(quantity, published, gap, tolerance);
        }

        private void note(String quantity, Band published, double error, Tolerance tolerance) {
            int comma = quantity.lastIndexOf(", ");
            Comparison made =
                    new Comparison(
                            room,
                            row.table(),
                            comma < 0 ? quantity : quantity.substring(0, comma),
                            comma < 0 ? "" : quantity.substring(comma + 2),
                            row.fitted(),
                            where,
                            published.low(),
                            published.high(),
                            error,
                            tolerance);
            write(made.line());
            KnownDeviation.of(made)
                    .ifPresentOrElse(known -> pinned(made, known), () -> within(made));
        }
    }

    private static void within(Comparison made) {
        assertTrue(
                made.within(),
                () ->
                        "%s, %s: %s is %s off and may be %s (%s); signed, in its unit: %s"
                                .formatted(
                                        made.table(),
                                        made.where(),
                                        made.quantity(),
                                        made.measured() + " " + made.measuredUnit(),
                                        made.tolerance().size(),
                                        made.tolerance().reason(),
                                        made.error()));
    }

    private static void pinned(Comparison made, KnownDeviation known) {
        assertTrue(
                !made.within() && known.pins(made.error()),
                () ->
                        "%s, %s: %s was off by %s and is off by %s; change known-deviations.csv if that is meant"
                                .formatted(
                                        made.table(),
                                        made.where(),
                                        made.quantity(),
                                        known.off(),
                                        made.error()));
    }

    private synchronized void write(String line) {
        try {
            if (!begun) {
                Files.createDirectories(file.getParent());
                Files.write(file, List.of());
                begun = true;
            }
            Files.write(file, List.of(line), StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
