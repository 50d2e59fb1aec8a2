package coldwright.batch;

import coldwright.recipe.LineReading;
import coldwright.recipe.PastedRecipe;
import coldwright.text.TextFault;
import coldwright.text.TextFile;
import coldwright.words.Phrase;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads a recipe file: {@code key: value} lines, then a table that begins with {@code
 * ingredient,grams}. Lines that begin with {@code #} are comments, some of them written by a
 * window. {@code docs/batch-file.md} describes the format.
 */
public final class RecipeFileReader {
    /** Marks an unfinished or wrong field or table row. */
    static final String UNFINISHED = "# unfinished: ";

    /** Marks a line of the cook's notes. */
    static final String NOTE = "# note: ";

    /** Marks an unfinished row in older files: {@code amount | name}, at the head of the file. */
    private static final String TYPED = "# typed:";

    /** A long batch has 5,000 bytes. */
    private static final int MOST_BYTES = 1_000_000;

    private static final List<String> COLUMNS =
            List.of("ingredient", "grams", "min", "max", "fixed");

    private final String file;
    private final RecipeHeadReader head;
    private BatchLineage lineage = BatchLineage.NONE;

    /** Lines of the unfinished fields and rows; those of older files come last. */
    private final Map<SetupField, Integer> fields = new EnumMap<>(SetupField.class);

    private final List<String> notes = new ArrayList<>();
    private final Set<Integer> unfinished = new HashSet<>();
    private final Map<Integer, RecipeLine> older = new LinkedHashMap<>();
    private final Map<Integer, RecipeLine> lines = new LinkedHashMap<>();

    private RecipeFileReader(String file) {
        this.file = file;
        this.head = new RecipeHeadReader(file);
    }

    /**
     * Reads a recipe and the comments of a window.
     *
     * @param file the file's name, for messages
     * @throws IllegalArgumentException at the first error
     */
    public static RecipeFile read(String file, String text) {
        Optional<RecipeFile> pasted = pasted(file, text);
        return pasted.isPresent() ? pasted.get() : new RecipeFileReader(file).read(text);
    }

    /**
     * Reads a recipe file on disk.
     *
     * @param shown how messages name the file
     * @throws IllegalArgumentException at the first error
     */
    public static RecipeFile read(Path file, String shown) {
        return read(shown, TextFile.read(file, MOST_BYTES));
    }

    /**
     * Reads a recipe from a stream, such as standard input.
     *
     * @param shown how messages name the stream
     * @throws IllegalArgumentException at the first error
     */
    public static RecipeFile read(InputStream in, String shown) throws IOException {
        byte[] bytes = in.readNBytes(MOST_BYTES + 1);
        if (bytes.length > MOST_BYTES) {
            throw Fault.at(shown, 0, Fault.of("long", MOST_BYTES / 1_000_000));
        }
        return read(shown, TextFile.of(bytes));
    }

    private static RecipeFile read(String shown, TextFile read) {
        if (!read.faults().isEmpty() || read.text().isEmpty()) {
            TextFault first = read.faults().get(0);
            throw Fault.at(shown, first.line(), first.words());
        }
        return read(shown, read.text().get());
    }

    /** A recipe as people write it, without a table; empty if it names fewer than two amounts. */
    private static Optional<RecipeFile> pasted(String file, String text) {
        if (text.lines().anyMatch(RecipeFileReader::isTableHead)) {
            return Optional.empty();
        }
        PastedRecipe read = PastedRecipe.read(text, List.of());
        if (read.lines().stream().filter(line -> !line.parts().isEmpty()).count() < 2) {
            return Optional.empty();
        }
        List<RecipeFile.Unfinished> open = new ArrayList<>();
        List<String> all = text.lines().map(String::strip).toList();
        for (LineReading line : read.lines()) {
            line.why().ifPresent(why -> open.add(open(all.indexOf(line.text()) + 1, line, why)));
        }
        return Optional.of(
                new RecipeFile(file, Recipe.of(read, FreezingSetup.TUB), BatchLineage.NONE, open));
    }

    private static RecipeFile.Unfinished open(int at, LineReading line, Phrase why) {
        List<String> choices = new ArrayList<>();
        line.choices().forEach(choice -> choices.add(choice.label().shown()));
        line.suggestions().forEach(one -> choices.add(one.phrase().shown()));
        return new RecipeFile.Unfinished(
                at,
                Fault.of("unfinished.pasted", line.text(), why, String.join(" / ", choices)),
                RecipeFile.Prevents.NOTHING);
    }

    private RecipeFile read(String text) {
        String[] all = text.split("\\R", -1);
        int table = 0;
        while (table < all.length && !isTableHead(all[table])) {
            String line = all[table].strip();
            table++;
            if (line.startsWith(UNFINISHED)) {
                field(table, line.substring(UNFINISHED.length()).split(" = ", 2));
            } else if (line.startsWith("#")) {
                comment(table, line);
            } else if (!line.isEmpty()) {
                head.read(table, line);
            }
        }
        if (table == all.length) {
            throw fault(0, text.isBlank() ? "file.empty" : "table.missing");
        }
        for (int i = table; i < all.length; i++) {
            if (all[i].startsWith(UNFINISHED)) {
                all[i] = all[i].substring(UNFINISHED.length());
                unfinished.add(i + 1);
            } else if (all[i].startsWith("#")) {
                comment(i + 1, all[i].strip());
            }
        }
        rows(all, table);
        return file();
    }

    private void field(int line, String[] typed) {
        Optional<SetupField> field = SetupField.ofKey(typed[0]);
        if (field.isPresent() && typed.length == 2) {
            head.setup = head.setup.with(field.get(), typed[1]);
            fields.put(field.get(), line);
        }
    }

    private void comment(int line, String comment) {
        int bar = comment.indexOf('|');
        if (comment.startsWith(TYPED) && bar > 0) {
            String amount = comment.substring(TYPED.length(), bar).strip();
            older.put(line, new RecipeLine(amount, comment.substring(bar + 1).strip()));
        } else if (comment.startsWith(NOTE.strip())) {
            notes.add(comment.substring(NOTE.strip().length()).strip());
        } else {
            lineage = lineage.with(comment);
        }
    }

    private RecipeFile file() {
        unfinished.addAll(older.keySet());
        lines.putAll(older);
        Recipe recipe =
                new Recipe(
                        head.name.isEmpty() ? file : head.name,
                        head.setup,
                        head.intent,
                        List.copyOf(head.own.values()),
                        head.goals,
                        head.total,
                        List.copyOf(lines.values()),
                        String.join("\n", notes));
        List<RecipeFile.Unfinished> left = new ArrayList<>();
        fields.forEach((field, at) -> left.add(RecipeFile.Unfinished.of(at, field, head.setup)));
        Iterator<RecipeLine> line = recipe.lines().iterator();
        for (int at : lines.keySet()) {
            RecipeFile.Unfinished.of(at, line.next(), unfinished.contains(at)).ifPresent(left::add);
        }
        return new RecipeFile(file, recipe, lineage, left);
    }

    private IllegalArgumentException fault(int line, String key, Object... values) {
        return Fault.at(file, line, Fault.of(key, values));
    }

    private static boolean isTableHead(String line) {
        String first = line.split("[,;\t]", -1)[0].replace("\"", "").strip();
        return first.equalsIgnoreCase("ingredient");
    }

    private void rows(String[] all, int table) {
        if (all[table].indexOf(';') >= 0 || all[table].indexOf('\t') >= 0) {
            throw fault(table + 1, "table.commas");
        }
        String body = String.join("\n", List.of(all).subList(table, all.length));
        CSVFormat format =
                CSVFormat.DEFAULT
                        .builder()
                        .setCommentMarker('#')
                        .setIgnoreSurroundingSpaces(true)
                        .setIgnoreEmptyLines(true)
                        .get();
        List<String> columns = null;
        try (CSVParser parser = format.parse(new StringReader(body))) {
            for (CSVRecord row : parser) {
                int line = table + Math.toIntExact(parser.getCurrentLineNumber());
                if (columns == null) {
                    columns = columns(table + 1, row);
                } else if (lines.size() == Recipe.MOST_LINES) {
                    throw fault(line, "table.long", Recipe.MOST_LINES);
                } else {
                    int at = Math.min(line, all.length);
                    lines.put(at, row(at, columns, row));
                }
            }
        } catch (UncheckedIOException | IOException e) {
            throw fault(table + 1, "table.unread");
        }
        if (lines.isEmpty() && older.isEmpty() && lineage.number() == 0) {
            throw fault(table + 1, "table.bare");
        }
    }

    private List<String> columns(int line, CSVRecord titles) {
        List<String> columns = new ArrayList<>();
        for (String title : titles) {
            String column = title.strip().toLowerCase(Locale.ROOT);
            if (!COLUMNS.contains(column) || columns.contains(column)) {
                throw fault(line, "column", RecipeHeadReader.shortened(title), COLUMNS);
            }
            columns.add(column);
        }
        return columns;
    }

    private RecipeLine row(int line, List<String> columns, CSVRecord record) {
        if (record.size() > columns.size()) {
            throw fault(line, "row.long", record.size(), columns.size());
        }
        String fixed = cell(columns, record, "fixed");
        String amount = fixed.isEmpty() ? cell(columns, record, "grams") : fixed;
        boolean stated = !unfinished.contains(line);
        boolean bare = stated && amount.matches("[0-9.,]+");
        RecipeLine read =
                new RecipeLine(bare ? amount + " g" : amount, record.get(0))
                        .bound(
                                cell(columns, record, "min"),
                                cell(columns, record, "max"),
                                !fixed.isEmpty())
                        .among(Recipe.byName(head.own.values()));
        if (stated && read.ingredient().isBlank()) {
            throw fault(line, "row.nameless");
        }
        if (stated && read.amount().text().matches("[−-].*")) {
            throw fault(line, "negative", read.name(), "−" + read.amount().text().substring(1));
        }
        if (stated && read.fault().isPresent()) {
            throw Fault.at(file, line, read.fault().get());
        }
        return read;
    }

    private static String cell(List<String> columns, CSVRecord record, String column) {
        int index = columns.indexOf(column);
        return index < 0 || index >= record.size() ? "" : record.get(index).strip();
    }
}
