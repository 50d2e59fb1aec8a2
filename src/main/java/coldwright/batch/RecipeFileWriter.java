package coldwright.batch;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/**
 * Writes a recipe and its lineage as a recipe file. What is unfinished or wrong becomes a comment
 * in its place, so that the file can be read at any time and nothing that was typed is lost.
 */
public final class RecipeFileWriter {
    private final StringBuilder text = new StringBuilder();

    private RecipeFileWriter() {}

    /**
     * The recipe alone.
     *
     * @param recipe the recipe
     * @return a recipe file
     */
    public static String text(Recipe recipe) {
        return new RecipeFileWriter().recipe(recipe);
    }

    /**
     * All that is to be kept.
     *
     * @param recipe the recipe
     * @param lineage where it stands in its row
     * @return a recipe file
     */
    public static String text(Recipe recipe, BatchLineage lineage) {
        RecipeFileWriter writer = new RecipeFileWriter();
        lineage.comments().forEach(writer::line);
        return writer.recipe(recipe);
    }

    private String recipe(Recipe recipe) {
        if (!recipe.name().isBlank()) {
            line("name: " + recipe.name());
        }
        setup(recipe.setup());
        recipe.own().forEach(one -> line("own: " + one.text()));
        recipe.goals().forEach(one -> line("target: " + one.text()));
        if (!recipe.totalG().isBlank()) {
            line("total: " + recipe.totalG().text());
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

    private void setup(FreezingSetup setup) {
        Set<SetupField> written = EnumSet.noneOf(SetupField.class);
        line("method: " + setup.method().name().toLowerCase(Locale.ROOT));
        if (setup.has(SetupField.ICE, SetupField.SALT)) {
            line(
                    "bath: ice %s, salt %s"
                            .formatted(
                                    typed(setup, SetupField.ICE, written),
                                    typed(setup, SetupField.SALT, written)));
        }
        if (setup.has(SetupField.FREEZER)) {
            line("freezer: " + typed(setup, SetupField.FREEZER, written));
        }
        if (setup.has(SetupField.AIR)) {
            line("air: " + typed(setup, SetupField.AIR, written));
        }
        if (setup.has(SetupField.DAYS)) {
            String stored = "stored: " + typed(setup, SetupField.DAYS, written);
            if (setup.has(SetupField.SWING)) {
                stored += ", swinging " + typed(setup, SetupField.SWING, written);
            }
            if (setup.has(SetupField.WARM, SetupField.WARM_FOR)) {
                stored +=
                        ", warmed to %s for %s"
                                .formatted(
                                        typed(setup, SetupField.WARM, written),
                                        typed(setup, SetupField.WARM_FOR, written));
            }
            line(stored);
        }
        setup.fields().keySet().stream()
                .filter(field -> !written.contains(field))
                .forEach(
                        field ->
                                line(
                                        RecipeFileReader.UNFINISHED
                                                + field.key()
                                                + " = "
                                                + setup.text(field)));
    }

    private static String typed(FreezingSetup setup, SetupField field, Set<SetupField> written) {
        written.add(field);
        return field.withUnit(setup.text(field));
    }

    /** As typed where it is weighed; spoons and cups by their grams. */
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
