package coldwright.batch;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Writes a recipe and its lineage as a recipe file. Unfinished or wrong entries become comments in
 * their place, so that the file is always readable and nothing typed is lost.
 */
public final class RecipeFileWriter {
    private final StringBuilder text = new StringBuilder();

    private RecipeFileWriter() {}

    /** The text of a recipe file. */
    public static String text(Recipe recipe, BatchLineage lineage) {
        RecipeFileWriter writer = new RecipeFileWriter();
        lineage.comments().forEach(writer::line);
        recipe.notes().lines().forEach(note -> writer.line(RecipeFileReader.NOTE + note));
        return writer.recipe(recipe);
    }

    private String recipe(Recipe recipe) {
        if (!recipe.name().isBlank()) {
            line("name: " + recipe.name());
        }
        intent(recipe.intent());
        setup(recipe.setup());
        recipe.own().forEach(one -> line("own: " + one.text()));
        recipe.goals().forEach(one -> line("target: " + one.text()));
        if (!recipe.total().isBlank()) {
            line("total: " + recipe.total().text());
        }
        boolean fixed = recipe.lines().stream().anyMatch(RecipeLine::fixed);
        boolean bound =
                fixed
                        || recipe.lines().stream()
                                .anyMatch(one -> !one.min().isBlank() || !one.max().isBlank());
        line("");
        line("ingredient,grams" + (bound ? ",min,max" : "") + (fixed ? ",fixed" : ""));
        for (RecipeLine one : recipe.lines()) {
            String grams = one.counts() ? grams(one) : quoted(one.amount().text());
            String row = quoted(one.name()) + "," + (one.fixed() ? "" : grams);
            if (bound) {
                row += "," + quoted(one.min().text()) + "," + quoted(one.max().text());
            }
            row += one.fixed() ? "," + grams : "";
            if (one.counts() || !one.isBlank()) {
                line(one.counts() ? row : RecipeFileReader.UNFINISHED + row);
            }
        }
        return text.toString();
    }

    private void intent(RecipeIntent intent) {
        if (intent.style().value().isPresent()) {
            line("style: " + intent.style().text().strip());
        }
        if (intent.diet().value().isPresent()) {
            line("diet: " + intent.diet().text().strip());
        }
    }

    private void setup(FreezingSetup setup) {
        line("method: " + setup.methodWord());
        Set<SetupField> left = EnumSet.allOf(SetupField.class);
        left.retainAll(setup.fields().keySet());
        String bath = typed("bath: ice %s, salt %s", setup, left, SetupField.ICE, SetupField.SALT);
        String freezer = typed("freezer: %s", setup, left, SetupField.FREEZER);
        String air = typed("air: %s", setup, left, SetupField.AIR);
        String serving = typed("serving: %s", setup, left, SetupField.SERVING);
        String days = typed("stored: %s", setup, left, SetupField.DAYS);
        if (!days.isEmpty()) {
            days += typed(", swinging %s", setup, left, SetupField.SWING);
            days +=
                    typed(
                            ", warmed to %s for %s",
                            setup, left, SetupField.WARM, SetupField.WARM_FOR);
        }
        Stream.of(bath, freezer, air, serving, days)
                .filter(one -> !one.isEmpty())
                .forEach(this::line);
        left.forEach(
                one -> line(RecipeFileReader.UNFINISHED + one.key() + " = " + setup.text(one)));
    }

    /**
     * Formats these fields as typed and removes them from {@code left}; empty if one is empty or
     * wrong.
     */
    private static String typed(
            String form, FreezingSetup setup, Set<SetupField> left, SetupField... fields) {
        if (!setup.has(fields)) {
            return "";
        }
        left.removeAll(List.of(fields));
        return form.formatted(
                Stream.of(fields)
                        .map(one -> one.withUnit(setup.text(one)).replace(',', '.'))
                        .toArray());
    }

    /** Masses as typed; spoons and cups in grams. */
    private static String grams(RecipeLine line) {
        String typed = line.amount().text().strip();
        if (typed.matches("[0-9.]+ *(g|kg|mg)?")) {
            return typed.replaceFirst(" *(?<!k|m)g$", "");
        }
        return exact(line.grams());
    }

    private static String exact(double massG) {
        return new BigDecimal(massG)
                .setScale(6, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String quoted(String text) {
        String cell = plain(text);
        boolean needs = cell.contains(",") || cell.contains("\"") || cell.startsWith("#");
        return needs ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell;
    }

    private static String plain(String text) {
        return text.replaceAll("\\R+", " ").strip();
    }

    private void line(String words) {
        text.append(plain(words)).append('\n');
    }
}
