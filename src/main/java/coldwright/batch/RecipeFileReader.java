package coldwright.batch;

import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Shelf;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Reads a batch file: {@code key: value} lines, then a table that begins with {@code
 * ingredient,grams}. Lines that begin with {@code #} are remarks. The format stands in {@code
 * docs/batch-file.md}.
 */
public final class RecipeFileReader {
    /** Most ingredients that a batch may list. */
    public static final int MOST_ROWS = 200;

    private static final List<String> COLUMNS =
            List.of("ingredient", "grams", "min", "max", "fixed");

    private final String file;
    private final RecipeHeadReader head;

    private RecipeFileReader(String file) {
        this.file = file;
        this.head = new RecipeHeadReader(file);
    }

    /**
     * Reads a batch.
     *
     * @param file the file's name, for messages
     * @param text what is in it
     * @return the batch
     * @throws BatchFileException at the first thing that is wrong, in one sentence
     */
    public static RecipeFile read(String file, String text) throws BatchFileException {
        return new RecipeFileReader(file).read(text);
    }

    private RecipeFile read(String text) throws BatchFileException {
        String[] lines = text.split("\\R", -1);
        int table = 0;
        while (table < lines.length && !isTableHead(lines[table])) {
            String line = lines[table].strip();
            if (!line.isEmpty() && !line.startsWith("#")) {
                head.read(table + 1, line);
            }
            table++;
        }
        if (table == lines.length) {
            throw new BatchFileException(
                    file,
                    0,
                    text.isBlank()
                            ? "the file is empty; it needs a table that begins with the line ingredient,grams"
                            : "the table is missing; after the head write the line ingredient,grams and then one ingredient a line");
        }
        List<RecipeRow> rows = rows(lines, table);
        return new RecipeFile(
                file,
                head.name.isEmpty() ? file : head.name,
                head.method,
                head.bath,
                head.freezerC,
                head.airPercent,
                head.stored,
                head.targets,
                head.totalG,
                rows);
    }

    private static boolean isTableHead(String line) {
        String first = line.split("[,;\t]", -1)[0].replace("\"", "").strip();
        return first.equalsIgnoreCase("ingredient");
    }

    private List<RecipeRow> rows(String[] lines, int table) throws BatchFileException {
        if (lines[table].indexOf(';') >= 0 || lines[table].indexOf('\t') >= 0) {
            throw new BatchFileException(
                    file,
                    table + 1,
                    "the table is not parted by commas; write it as ingredient,grams");
        }
        String body = String.join("\n", List.of(lines).subList(table, lines.length));
        CSVFormat format =
                CSVFormat.DEFAULT
                        .builder()
                        .setCommentMarker('#')
                        .setIgnoreSurroundingSpaces(true)
                        .setIgnoreEmptyLines(true)
                        .get();
        List<RecipeRow> rows = new ArrayList<>();
        List<String> columns = null;
        try (CSVParser parser = format.parse(new StringReader(body))) {
            for (CSVRecord row : parser) {
                int line = table + Math.toIntExact(parser.getCurrentLineNumber());
                if (columns == null) {
                    columns = columns(table + 1, row);
                } else if (rows.size() == MOST_ROWS) {
                    throw new BatchFileException(
                            file,
                            line,
                            "the table has more than %d ingredients; a batch may list at most that many"
                                    .formatted(MOST_ROWS));
                } else {
                    rows.add(row(Math.min(line, lines.length), columns, row));
                }
            }
        } catch (UncheckedIOException | IOException e) {
            throw new BatchFileException(
                    file,
                    table + 1,
                    "the table can't be read; look for a quote that is not closed");
        }
        if (rows.isEmpty()) {
            throw new BatchFileException(
                    file,
                    table + 1,
                    "the table lists nothing; write one ingredient a line below it");
        }
        return rows;
    }

    private List<String> columns(int line, CSVRecord titles) throws BatchFileException {
        List<String> columns = new ArrayList<>();
        for (String title : titles) {
            String column = title.strip().toLowerCase(Locale.ROOT);
            if (!COLUMNS.contains(column) || columns.contains(column)) {
                throw new BatchFileException(
                        file,
                        line,
                        "the table has a column \"%s\"; the columns are %s, each once"
                                .formatted(
                                        RecipeHeadReader.shortened(title),
                                        String.join(", ", COLUMNS)));
            }
            columns.add(column);
        }
        return columns;
    }

    private RecipeRow row(int line, List<String> columns, CSVRecord record)
            throws BatchFileException {
        if (record.size() > columns.size()) {
            throw new BatchFileException(
                    file,
                    line,
                    "this line has %d values and the table %d columns; write decimals with a point, and put a name that holds a comma in quotes"
                            .formatted(record.size(), columns.size()));
        }
        try {
            Ingredient ingredient = ingredient(record.get(0));
            OptionalDouble grams = value(columns, record, "grams");
            OptionalDouble fixed = value(columns, record, "fixed");
            OptionalDouble amount = fixed.isPresent() ? fixed : grams;
            double leastG = fixed.orElse(value(columns, record, "min").orElse(0));
            double mostG =
                    fixed.orElse(value(columns, record, "max").orElse(Double.POSITIVE_INFINITY));
            if (mostG < leastG) {
                throw new IllegalArgumentException(
                        "the most of %s is below its least; swap min and max"
                                .formatted(ingredient.name()));
            }
            return new RecipeRow(line, ingredient, amount, leastG, mostG);
        } catch (IllegalArgumentException e) {
            throw new BatchFileException(file, line, e.getMessage());
        }
    }

    private Ingredient ingredient(String name) {
        if (name.isBlank()) {
            throw new IllegalArgumentException(
                    "this line names no ingredient; write its name before the comma");
        }
        for (Map.Entry<String, Ingredient> own : head.own.entrySet()) {
            if (own.getKey().equals(name.strip().toLowerCase(Locale.ROOT))) {
                return own.getValue();
            }
        }
        return Shelf.find(name.strip());
    }

    private static OptionalDouble value(List<String> columns, CSVRecord record, String column) {
        int index = columns.indexOf(column);
        if (index < 0 || index >= record.size() || record.get(index).isBlank()) {
            return OptionalDouble.empty();
        }
        String what = record.get(0).strip() + (column.equals("grams") ? "" : " (" + column + ")");
        return OptionalDouble.of(TypedQuantity.of(what, record.get(index)).grams());
    }
}
