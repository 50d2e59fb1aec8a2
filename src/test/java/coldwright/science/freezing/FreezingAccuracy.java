package coldwright.science.freezing;

import coldwright.published.PublishedTable;
import coldwright.published.PublishedTable.Deviation;
import coldwright.published.PublishedTable.Row;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * How far this package's freezing points are from the published ones, table by table and solute by
 * solute: for the tests, and for whoever writes the documentation.
 */
final class FreezingAccuracy {
    /** Below this depression an error is judged in °C, above it in per cent. */
    static final double SMALL_C = 2;

    private FreezingAccuracy() {}

    /**
     * One line of the reckoning.
     *
     * @param table which table
     * @param solute which solute
     * @param fromC least depression compared, °C
     * @param toC greatest depression compared, °C
     * @param checks rows compared
     * @param worstSmallC largest error under 2 °C of depression, °C
     * @param worstLargePercent largest error above, % of the depression
     * @param worstLargeC largest error above, °C
     */
    record Line(
            String table,
            Solute solute,
            double fromC,
            double toC,
            int checks,
            double worstSmallC,
            double worstLargePercent,
            double worstLargeC) {
        @Override
        public String toString() {
            return "%-30s %-19s %5.2f to %5.2f °C, %2d checks: %.3f °C; %.2f %% (%.2f °C)"
                    .formatted(
                            table,
                            solute.spoken(),
                            fromC,
                            toC,
                            checks,
                            worstSmallC,
                            worstLargePercent,
                            worstLargeC);
        }
    }

    /** Every table of single solutes, fitted rows left out. */
    static List<Line> all() {
        List<Line> lines = new ArrayList<>();
        for (String name :
                List.of(
                        "rumble-2021-freezing-points",
                        "melinder-2010-freezing-points",
                        "forsythe-1956-electrolytes")) {
            PublishedTable table = PublishedTable.read(name);
            for (Solute solute : Solute.values()) {
                List<Row> rows =
                        table.checks().stream()
                                .filter(row -> row.text("solute").equals(solute.name()))
                                .toList();
                if (!rows.isEmpty()) {
                    lines.add(line(name, solute, rows));
                }
            }
        }
        return lines;
    }

    /** The depression that a row publishes, °C. */
    static double publishedC(Row row) {
        return row.values().containsKey("depressionC")
                ? row.number("depressionC")
                : -row.number("freezingPointC");
    }

    /** The depression that the model gives for a row, °C. */
    static double computedC(Row row) {
        Solute solute = Solute.valueOf(row.text("solute"));
        double soluteG;
        double waterG;
        if (row.values().containsKey("molality")) {
            waterG = 1000;
            soluteG = row.number("molality") * solute.molarMassGPerMol();
        } else {
            soluteG = row.number("massPercent");
            waterG = 100 - soluteG;
        }
        return -Solution.inWater(waterG).with(soluteG, solute).freezingPointC();
    }

    private static Line line(String table, Solute solute, List<Row> rows) {
        return new Line(
                table,
                solute,
                rows.stream().mapToDouble(FreezingAccuracy::publishedC).min().orElseThrow(),
                rows.stream().mapToDouble(FreezingAccuracy::publishedC).max().orElseThrow(),
                rows.size(),
                worst(rows, row -> publishedC(row) < SMALL_C, false),
                worst(rows, row -> publishedC(row) >= SMALL_C, true),
                worst(rows, row -> publishedC(row) >= SMALL_C, false));
    }

    private static double worst(List<Row> rows, Predicate<Row> which, boolean percent) {
        return rows.stream()
                .filter(which)
                .map(row -> new Deviation(row, publishedC(row), computedC(row)))
                .mapToDouble(d -> Math.abs(percent ? d.errorPercent() : d.error()))
                .max()
                .orElse(0);
    }
}
