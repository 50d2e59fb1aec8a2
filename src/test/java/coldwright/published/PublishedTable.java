package coldwright.published;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * A published table under {@code src/test/resources/published/}: header lines that open with {@code
 * #} (the first is the citation), then a line of column names, then rows.
 *
 * <p>A column {@code use} says {@code fit} where a row set a constant and {@code check} where it
 * only judges; without that column every row is a check.
 *
 * <pre>{@code
 * var table = PublishedTable.read("crc-102-sucrose");
 * var worst = table.worst(table.checks(), "depressionC", row -> -brix(row.number("massPercent")));
 * }</pre>
 */
public record PublishedTable(String name, List<String> header, List<Row> rows) {
    private static final String FOLDER = "/published/";

    /** Copies. */
    public PublishedTable {
        header = List.copyOf(header);
        rows = List.copyOf(rows);
    }

    /** Reads {@code published/<name>.csv}. */
    public static PublishedTable read(String name) {
        String text = textOf(name);
        List<String> header = new ArrayList<>();
        text.lines()
                .filter(line -> line.startsWith("#"))
                .forEach(line -> header.add(line.substring(1).strip()));
        if (header.isEmpty()) {
            throw new IllegalStateException(name + ".csv has no # line with its citation");
        }
        CSVFormat format =
                CSVFormat.DEFAULT
                        .builder()
                        .setCommentMarker('#')
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .setIgnoreSurroundingSpaces(true)
                        .setIgnoreEmptyLines(true)
                        .get();
        try {
            List<Row> rows = new ArrayList<>();
            for (CSVRecord record : format.parse(new java.io.StringReader(text))) {
                rows.add(new Row(name, new LinkedHashMap<>(record.toMap())));
            }
            if (rows.isEmpty()) {
                throw new IllegalStateException(name + ".csv has no rows");
            }
            return new PublishedTable(name, header, rows);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The first header line: author, year, title, table. */
    public String citation() {
        return header.get(0);
    }

    /** Rows that judge: all but those marked {@code fit}. */
    public List<Row> checks() {
        return rows.stream().filter(row -> !row.fitted()).toList();
    }

    /** Rows that set a constant. */
    public List<Row> fits() {
        return rows.stream().filter(Row::fitted).toList();
    }

    /** The row of a list where computed − published is largest in size. */
    public Deviation worst(List<Row> among, String column, ToDoubleFunction<Row> computed) {
        Deviation worst = null;
        for (Row row : among) {
            Deviation here = new Deviation(row, row.number(column), computed.applyAsDouble(row));
            if (worst == null
                    || Math.abs(here.error()) > Math.abs(worst.error())
                    || Double.isNaN(here.error())) {
                worst = here;
            }
        }
        if (worst == null) {
            throw new IllegalStateException(name + ".csv has no such rows");
        }
        return worst;
    }

    /** One row, its values by column name. */
    public record Row(String table, Map<String, String> values) {
        /** The text in a column. */
        public String text(String column) {
            String value = values.get(column);
            if (value == null) {
                throw new IllegalStateException(
                        table + ".csv has no column " + column + ", only " + values.keySet());
            }
            return value;
        }

        /** The number in a column. */
        public double number(String column) {
            return Double.parseDouble(text(column));
        }

        /** The number in a column, or another where the column is missing or empty. */
        public double numberOr(String column, double otherwise) {
            String value = values.getOrDefault(column, "");
            return value.isEmpty() ? otherwise : Double.parseDouble(value);
        }

        /** Whether this row set a constant. */
        public boolean fitted() {
            return "fit".equals(values.get("use"));
        }

        @Override
        public String toString() {
            return table + " " + values;
        }
    }

    /** A row, what it says and what was computed. */
    public record Deviation(Row row, double published, double computed) {
        /** Computed − published. */
        public double error() {
            return computed - published;
        }

        /** The error as a share of the published value, %. */
        public double errorPercent() {
            return 100 * error() / Math.abs(published);
        }
    }

    private static String textOf(String name) {
        try (InputStream in = PublishedTable.class.getResourceAsStream(FOLDER + name + ".csv")) {
            if (in == null) {
                throw new IllegalStateException("no table " + FOLDER + name + ".csv");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
