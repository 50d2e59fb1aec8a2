package coldwright.published;

import coldwright.science.Band;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A published table under {@code src/test/resources/published/}: header lines that open with {@code
 * #} (the first is the citation; {@code # kind:} says what it is worth as a check, {@link Kind}),
 * then a line of column names, then rows.
 *
 * <p>A column {@code use} says {@code fit} where a row set a constant and {@code check} where it
 * only judges; without that column every row is a check, and a row marked otherwise is neither.
 *
 * <pre>{@code
 * for (Row row : PublishedTable.read("crc-102-freezing-points").checks()) {
 *     row.number("depressionC");
 * }
 * }</pre>
 */
public record PublishedTable(String name, List<String> header, List<Row> rows) {
    private static final String FOLDER = "/published/";
    private static final String KIND = "kind:";

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

    /** What the table is worth as a check. */
    public Kind kind() {
        return header.stream()
                .filter(line -> line.startsWith(KIND))
                .map(line -> line.substring(KIND.length()).strip().toUpperCase(Locale.ROOT))
                .map(Kind::valueOf)
                .findFirst()
                .orElseThrow(
                        () -> new IllegalStateException(name + ".csv has no line \"# kind: …\""));
    }

    /** The header lines before those of kind and columns: author, year, title, table. */
    public String citation() {
        return header.stream()
                .takeWhile(line -> !line.startsWith(KIND) && !line.startsWith("columns:"))
                .collect(Collectors.joining(" "));
    }

    /** The names of all tables in the folder. */
    public static Set<String> names() {
        URL folder = PublishedTable.class.getResource(FOLDER);
        if (folder == null) {
            throw new IllegalStateException("no folder " + FOLDER);
        }
        try (Stream<Path> files = Files.list(Path.of(folder.toURI()))) {
            return files.map(file -> file.getFileName().toString())
                    .filter(file -> file.endsWith(".csv"))
                    .map(file -> file.substring(0, file.length() - ".csv".length()))
                    .collect(Collectors.toCollection(TreeSet::new));
        } catch (IOException | URISyntaxException e) {
            throw new IllegalStateException("the folder " + folder + " cannot be listed", e);
        }
    }

    /** Rows that judge: those marked {@code check} or not marked at all. */
    public List<Row> checks() {
        return rows.stream().filter(Row::judges).toList();
    }

    /** Rows that set a constant. */
    public List<Row> fits() {
        return rows.stream().filter(Row::fitted).toList();
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

        /** The range between two columns, its middle half way. */
        public Band between(String low, String high) {
            double least = number(low);
            double most = number(high);
            return new Band(least, (least + most) / 2, most);
        }

        /** Whether this row is to be compared. */
        boolean judges() {
            return "check".equals(values.getOrDefault("use", "check"));
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
