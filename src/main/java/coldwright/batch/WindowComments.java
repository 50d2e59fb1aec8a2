package coldwright.batch;

import coldwright.text.DisplayText;

import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a window writes into a recipe file as comments: where the batch stands in its row, and what
 * is unfinished, so that the file can be read at any time and nothing that was typed is lost.
 */
final class WindowComments {
    /** Begins a line, or a field before the table, that is unfinished or wrong. */
    static final String UNFINISHED = "# unfinished: ";

    /** The last column of a line whose amount a balance must keep. */
    static final String FIXED = "fixed";

    private static final String NAMED = " = ";

    /** Began an unfinished line in older files: {@code amount | name}, at the head of the file. */
    private static final String TYPED = "# typed:";

    private BatchLineage lineage = BatchLineage.NONE;
    private final NavigableMap<Integer, RecipeLine> inTable = new TreeMap<>();
    private final NavigableMap<Integer, RecipeLine> older = new TreeMap<>();
    private final Map<SetupField, Integer> fields = new EnumMap<>(SetupField.class);
    private final Map<SetupField, String> texts = new EnumMap<>(SetupField.class);

    static String of(SetupField field, String text) {
        return UNFINISHED + field.key() + NAMED + text;
    }

    /** Takes a comment; most say nothing. */
    void read(int line, String comment, boolean isInTable) {
        if (comment.startsWith(UNFINISHED)) {
            String typed = comment.substring(UNFINISHED.length());
            int named = typed.indexOf(NAMED);
            Optional<SetupField> field =
                    isInTable || named < 0
                            ? Optional.empty()
                            : SetupField.ofKey(typed.substring(0, named));
            if (field.isPresent()) {
                fields.put(field.get(), line);
                texts.put(field.get(), typed.substring(named + NAMED.length()).strip());
            } else {
                inTable.put(line, unfinished(typed));
            }
        } else if (comment.startsWith(TYPED) && comment.indexOf('|') > 0) {
            String typed = comment.substring(TYPED.length());
            int bar = typed.indexOf('|');
            older.put(
                    line,
                    new RecipeLine(
                            typed.substring(0, bar).strip(), typed.substring(bar + 1).strip()));
        } else {
            lineage = lineage.with(comment);
        }
    }

    /** A line of the table as typed, whatever it is. */
    private static RecipeLine unfinished(String typed) {
        try (CSVParser parser = RecipeFileReader.FORMAT.parse(new StringReader(typed))) {
            List<String> cells = new ArrayList<>();
            for (CSVRecord row : parser) {
                row.forEach(cells::add);
            }
            cells.addAll(List.of("", "", "", "", ""));
            return new RecipeLine(cells.get(1), cells.get(0))
                    .bound(cells.get(2), cells.get(3), cells.get(4).equals(FIXED));
        } catch (UncheckedIOException | IOException e) {
            return new RecipeLine("", typed);
        }
    }

    /** Whether a window wrote the file, which may list nothing yet. */
    boolean byWindow() {
        return lineage.number() > 0 || !inTable.isEmpty() || !older.isEmpty();
    }

    /** The file of this head and these lines of a table, with what the comments add. */
    RecipeFile file(String file, RecipeHeadReader head, NavigableMap<Integer, RecipeLine> table) {
        NavigableMap<Integer, RecipeLine> ordered = new TreeMap<>(table);
        ordered.putAll(inTable);
        List<Integer> places = new ArrayList<>(ordered.keySet());
        List<RecipeLine> lines = new ArrayList<>(ordered.values());
        places.addAll(older.keySet());
        lines.addAll(older.values());
        FreezingSetup setup = head.setup;
        for (Map.Entry<SetupField, String> one : texts.entrySet()) {
            setup = setup.with(one.getKey(), one.getValue());
        }
        Recipe recipe =
                new Recipe(
                        head.name.isEmpty() ? file : head.name,
                        setup,
                        List.copyOf(head.own.values()),
                        head.goals,
                        head.totalG,
                        lines);
        List<RecipeFile.Unfinished> left = new ArrayList<>();
        fields.forEach((field, line) -> left.add(unfinished(line, field, recipe.setup())));
        for (int i = 0; i < lines.size(); i++) {
            RecipeLine line = recipe.lines().get(i);
            if (!line.counts()) {
                left.add(unfinished(places.get(i), line, table.containsKey(places.get(i))));
            }
        }
        return new RecipeFile(file, recipe, lineage, left);
    }

    private static RecipeFile.Unfinished unfinished(
            int line, SetupField field, FreezingSetup setup) {
        String fault = setup.fields().get(field) == null ? "" : setup.fields().get(field).fault();
        return fault.isEmpty()
                ? new RecipeFile.Unfinished(
                        line,
                        "\"%s\" is unfinished and left out. A bath needs ice and salt; storage needs days, and warming both temperature and hours."
                                .formatted(field.key() + NAMED + setup.text(field)),
                        RecipeFile.Prevents.NOTHING)
                : new RecipeFile.Unfinished(line, fault, RecipeFile.Prevents.EVERYTHING);
    }

    private static RecipeFile.Unfinished unfinished(int at, RecipeLine line, boolean stated) {
        if (stated) {
            return new RecipeFile.Unfinished(
                    at,
                    "%s has no amount; write its grams after a comma"
                            .formatted(line.ingredient().value().orElseThrow().name()),
                    RecipeFile.Prevents.ANALYSIS);
        }
        String typed = (line.amount().text() + " " + line.name()).strip();
        String words =
                line.fault()
                        .map(fault -> " and left out. " + DisplayText.sentence(fault))
                        .orElse(
                                line.ingredient().isBlank()
                                        ? " and left out. Write the name of its ingredient."
                                        : ". Write its grams.");
        return new RecipeFile.Unfinished(
                at,
                "\"%s\" is unfinished%s".formatted(RecipeHeadReader.shortened(typed), words),
                RecipeFile.Prevents.NOTHING);
    }
}
