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
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * Reads a recipe file: {@code key: value} lines, then a table that begins with {@code
 * ingredient,grams}. Lines that begin with {@code #} are comments; some of them a window wrote. The
 * format stands in {@code docs/batch-file.md}.
 */
public final class RecipeFileReader {
    static final CSVFormat FORMAT =
            CSVFormat.DEFAULT
                    .builder()
                    .setCommentMarker('#')
                    .setIgnoreSurroundingSpaces(true)
                    .setIgnoreEmptyLines(true)
                    .get();

    private static final List<String> COLUMNS =
            List.of("ingredient", "grams", "min", "max", "fixed");

    private static final Pattern NUMBER = Pattern.compile("[0-9]+\\.?[0-9]*|\\.[0-9]+");
    private static final Pattern WEIGHED = Pattern.compile("(" + NUMBER + ") *(g|kg|mg)");

    private final String file;
    private final RecipeHeadReader head;
    private final WindowComments comments;

    /** The lines of the recipe by the lines of the file. */
    private final NavigableMap<Integer, RecipeLine> lines = new TreeMap<>();

    private RecipeFileReader(String file) {
        this.file = file;
        this.head = new RecipeHeadReader(file);
        this.comments = new WindowComments();
    }

    /**
     * Reads a recipe.
     *
     * @param file the file's name, for messages
     * @param text what is in it
     * @return the recipe, with what a window noted beside it
     * @throws BatchFileException at the first thing that is wrong, in one sentence
     */
    public static RecipeFile read(String file, String text) throws BatchFileException {
        return new RecipeFileReader(file).read(text);
    }

    private RecipeFile read(String text) throws BatchFileException {
        String[] all = text.split("\\R", -1);
        int table = 0;
        while (table < all.length && !isTableHead(all[table])) {
            String line = all[table].strip();
            if (line.startsWith("#")) {
                comments.read(table + 1, line, false);
            } else if (!line.isEmpty()) {
                head.read(table + 1, line);
            }
            table++;
        }
        if (table == all.length) {
            throw new BatchFileException(
                    file,
                    0,
                    text.isBlank()
                            ? "the file is empty; it needs a table that begins with the line ingredient,grams"
                            : "the table is missing; after the head write the line ingredient,grams and then one ingredient a line");
        }
        for (int i = table; i < all.length; i++) {
            if (all[i].startsWith("#")) {
                comments.read(i + 1, all[i].strip(), true);
            }
        }
        rows(all, table);
        return comments.file(file, head, lines);
    }

    private static boolean isTableHead(String line) {
        String first = line.split("[,;\t]", -1)[0].replace("\"", "").strip();
        return first.equalsIgnoreCase("ingredient");
    }

    private void rows(String[] all, int table) throws BatchFileException {
        if (all[table].indexOf(';') >= 0 || all[table].indexOf('\t') >= 0) {
            throw new BatchFileException(
                    file,
                    table + 1,
                    "the table is not parted by commas; write it as ingredient,grams");
        }
        String body = String.join("\n", List.of(all).subList(table, all.length));
        List<String> columns = null;
        try (CSVParser parser = FORMAT.parse(new StringReader(body))) {
            for (CSVRecord row : parser) {
                int line = table + Math.toIntExact(parser.getCurrentLineNumber());
                if (columns == null) {
                    columns = columns(table + 1, row);
                } else if (lines.size() == Recipe.MOST_LINES) {
                    throw new BatchFileException(
                            file,
                            line,
                            "the table has more than %d ingredients; a batch may list at most that many"
                                    .formatted(Recipe.MOST_LINES));
                } else {
                    int at = Math.min(line, all.length);
                    lines.put(at, row(at, columns, row));
                }
            }
        } catch (UncheckedIOException | IOException e) {
            throw new BatchFileException(
                    file,
                    table + 1,
                    "the table can't be read; look for a quote that is not closed");
        }
        if (lines.isEmpty() && !comments.byWindow()) {
            throw new BatchFileException(
                    file,
                    table + 1,
                    "the table lists nothing; write one ingredient a line below it");
        }
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

    private RecipeLine row(int line, List<String> columns, CSVRecord record)
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
            String grams = weighed(columns, record, "grams");
            String fixed = weighed(columns, record, "fixed");
            weighed(columns, record, "min");
            weighed(columns, record, "max");
            RecipeLine read =
                    new RecipeLine(
                                    Typed.of(fixed.isEmpty() ? grams : fixed, TypedAmount::of),
                                    new Typed<>(record.get(0), Optional.of(ingredient), ""),
                                    Typed.nothing(),
                                    Typed.nothing(),
                                    false)
                            .bound(
                                    cell(columns, record, "min"),
                                    cell(columns, record, "max"),
                                    !fixed.isEmpty());
            if (read.fault().isPresent()) {
                throw new IllegalArgumentException(read.fault().get());
            }
            return read;
        } catch (IllegalArgumentException e) {
            throw new BatchFileException(file, line, e.getMessage());
        }
    }

    private Ingredient ingredient(String name) {
        if (name.isBlank()) {
            throw new IllegalArgumentException(
                    "this line names no ingredient; write its name before the comma");
        }
        Typed<Ingredient> own = head.own.get(name.strip().toLowerCase(Locale.ROOT));
        return own != null ? own.value().orElseThrow() : Shelf.find(name.strip());
    }

    private static String cell(List<String> columns, CSVRecord record, String column) {
        int index = columns.indexOf(column);
        return index < 0 || index >= record.size() ? "" : record.get(index).strip();
    }

    /** An amount as it is typed in a window; refused if it is none that a table may have. */
    private static String weighed(List<String> columns, CSVRecord record, String column) {
        String cell = cell(columns, record, column);
        if (cell.isEmpty()) {
            return "";
        }
        String what = record.get(0).strip() + (column.equals("grams") ? "" : " (" + column + ")");
        double massG = TypedQuantity.of(what, cell).grams();
        if (NUMBER.matcher(cell).matches()) {
            return cell + " g";
        }
        return WEIGHED.matcher(cell).matches() ? cell : RecipeFileWriter.exact(massG) + " g";
    }
}
