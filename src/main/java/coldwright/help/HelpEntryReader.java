package coldwright.help;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Reads the rows written by the build: one entry per row, columns separated by tabs. */
final class HelpEntryReader {
    private static final int COLUMNS = 9;
    private static final Pattern LINE_END = Pattern.compile("\\\\n");

    private HelpEntryReader() {}

    /**
     * A row.
     *
     * @param bare whether a snippet may use the name without its owner
     */
    record Row(HelpEntry entry, boolean bare) {}

    /**
     * Reads rows.
     *
     * @param text lines; empty lines and those that begin with {@code # } are ignored
     * @return the rows, in order
     * @throws IllegalArgumentException if a line has the wrong number of columns
     */
    static List<Row> read(String text) {
        List<Row> rows = new ArrayList<>();
        for (String line : text.split("\n")) {
            if (!line.isBlank() && !line.startsWith("# ")) {
                rows.add(row(line));
            }
        }
        return rows;
    }

    private static Row row(String line) {
        String[] columns = line.split("\t", -1);
        if (columns.length != COLUMNS) {
            throw new IllegalArgumentException(
                    "the help row \"%s\" has %d columns; it must have %d: build the index again"
                            .formatted(line, columns.length, COLUMNS));
        }
        HelpEntry entry =
                new HelpEntry(
                        columns[0],
                        columns[1],
                        HelpEntry.Kind.valueOf(columns[2].toUpperCase(Locale.ROOT)),
                        columns[3],
                        columns[4],
                        columns[5],
                        lines(columns[6]),
                        columns[7]);
        return new Row(entry, columns[8].equals("bare"));
    }

    private static List<String> lines(String column) {
        if (column.isEmpty()) {
            return List.of();
        }
        return column.contains("\\n") ? List.of(LINE_END.split(column)) : List.of(column);
    }
}
