package coldwright.desk.batch.model;

import coldwright.batch.BatchFileException;
import coldwright.batch.RecipeFile;
import coldwright.batch.RecipeFileReader;
import coldwright.batch.RecipeRow;
import coldwright.science.mix.Ingredient;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A recipe and its story as a batch file, and back. Lines that are unfinished or wrong stand as
 * remarks, so that the file can be read at any time and nothing that was typed is lost.
 */
public final class RecipeFileText {
    private static final String TYPED = "# typed: ";
    private static final String PLACE = "# batch: ";
    private static final String FOUND = "# found: ";
    private static final String TAKEN = "# taken: ";
    private static final String WHY = "# made for: ";

    private RecipeFileText() {}

    /**
     * What a file holds.
     *
     * @param recipe the recipe
     * @param lineage where it stood in its row
     */
    public record LoadedRecipe(Recipe recipe, BatchLineage lineage) {}

    /**
     * Only what is to be reckoned.
     *
     * @param recipe the recipe
     * @return a batch file
     */
    public static String of(Recipe recipe) {
        return text(recipe, "");
    }

    /**
     * All that is to be kept.
     *
     * @param recipe the recipe
     * @param batchLineage where it stands in its row
     * @return a batch file
     */
    public static String of(Recipe recipe, BatchLineage batchLineage) {
        StringBuilder remarks = new StringBuilder();
        remarks.append(PLACE)
                .append(batchLineage.number())
                .append(" after ")
                .append(batchLineage.after());
        remarks.append('\n');
        batchLineage.found().forEach(one -> remarks.append(FOUND).append(plain(one)).append('\n'));
        if (!batchLineage.why().isEmpty()) {
            remarks.append(WHY).append(plain(batchLineage.why())).append('\n');
        }
        batchLineage.taken().forEach(one -> remarks.append(TAKEN).append(plain(one)).append('\n'));
        Map<String, Ingredient> own = recipe.ownByName();
        for (RecipeLine line : recipe.lines()) {
            if (left(line, own) && !(line.amount() + line.name()).isBlank()) {
                remarks.append(TYPED)
                        .append(plain(line.amount()))
                        .append(" | ")
                        .append(plain(line.name()))
                        .append('\n');
            }
        }
        return text(recipe, remarks.toString());
    }

    private static boolean left(RecipeLine line, Map<String, Ingredient> own) {
        return line.unfinished() || line.fault(own).isPresent();
    }

    private static String text(Recipe recipe, String remarks) {
        StringBuilder text = new StringBuilder(remarks);
        if (!recipe.name().isBlank()) {
            text.append("name: ").append(plain(recipe.name())).append('\n');
        }
        text.append(recipe.means().head());
        recipe.own().forEach(one -> text.append("own: ").append(one).append('\n'));
        recipe.others().forEach(one -> text.append(one).append('\n'));
        boolean bound = recipe.lines().stream().anyMatch(line -> !bounds(line).equals(",,"));
        text.append(bound ? "\ningredient,grams,min,max\n" : "\ningredient,grams\n");
        Map<String, Ingredient> own = recipe.ownByName();
        for (RecipeLine line : recipe.lines()) {
            if (!left(line, own)) {
                text.append(quoted(line.name().strip()))
                        .append(',')
                        .append(exact(line.grams(own)))
                        .append(bound ? bounds(line) : "")
                        .append('\n');
            }
        }
        return text.toString();
    }

    private static String bounds(RecipeLine line) {
        return "," + line.leastG() + "," + line.mostG();
    }

    private static String exact(double massG) {
        return new java.math.BigDecimal(massG)
                .setScale(6, java.math.RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String quoted(String name) {
        boolean needs = name.contains(",") || name.contains("\"") || name.startsWith("#");
        return needs ? "\"" + name.replace("\"", "\"\"") + "\"" : name;
    }

    private static String plain(String text) {
        return text.replaceAll("[\\r\\n]+", " ").strip();
    }

    /**
     * Reads a batch file.
     *
     * @param file the file's name, for messages
     * @param text what is in it
     * @return the recipe, with its story if it has one
     * @throws BatchFileException at the first thing that is wrong, in one sentence
     */
    public static LoadedRecipe read(String file, String text) throws BatchFileException {
        List<RecipeLine> waiting = new ArrayList<>();
        List<String> own = new ArrayList<>();
        List<String> others = new ArrayList<>();
        List<String> found = new ArrayList<>();
        List<String> taken = new ArrayList<>();
        int[] place = {0, 0};
        String why = "";
        for (String raw : text.split("\\R", -1)) {
            String line = raw.strip();
            String key = line.toLowerCase(Locale.ROOT);
            if (key.startsWith("own:")) {
                own.add(line.substring(4).strip());
            } else if (key.startsWith("target:") || key.startsWith("total:")) {
                others.add(line);
            } else if (line.startsWith(FOUND)) {
                found.add(line.substring(FOUND.length()));
            } else if (line.startsWith(TAKEN)) {
                taken.add(line.substring(TAKEN.length()));
            } else if (line.startsWith(WHY)) {
                why = line.substring(WHY.length());
            } else if (line.startsWith(TYPED.strip()) && line.indexOf('|') > 0) {
                String typed = line.substring(TYPED.strip().length());
                int bar = typed.indexOf('|');
                waiting.add(
                        new RecipeLine(
                                typed.substring(0, bar).strip(), typed.substring(bar + 1).strip()));
            } else if (line.matches("# batch: [0-9]{1,6} after [0-9]{1,6}")) {
                String[] words = line.split(" ", -1);
                place = new int[] {Integer.parseInt(words[2]), Integer.parseInt(words[4])};
            }
        }
        Recipe recipe = recipe(file, text, waiting, own, others);
        return new LoadedRecipe(recipe, new BatchLineage(place[0], place[1], found, why, taken));
    }

    private static Recipe recipe(
            String file,
            String text,
            List<RecipeLine> waiting,
            List<String> own,
            List<String> others)
            throws BatchFileException {
        boolean bare = text.strip().endsWith("ingredient,grams") && !waiting.isEmpty();
        RecipeFile batch = RecipeFileReader.read(file, bare ? text.strip() + "\nwater,0" : text);
        List<RecipeLine> lines = new ArrayList<>();
        if (!bare) {
            batch.rows().forEach(row -> lines.add(line(row)));
        }
        lines.addAll(waiting);
        return new Recipe(batch.name(), means(batch), own, others, lines);
    }

    private static RecipeLine line(RecipeRow row) {
        return new RecipeLine(
                row.massG().isPresent() ? exact(row.massG().getAsDouble()) + " g" : "",
                row.ingredient().name(),
                row.leastG() > 0 ? exact(row.leastG()) : "",
                Double.isFinite(row.mostG()) ? exact(row.mostG()) : "");
    }

    private static FreezingSetup means(RecipeFile batch) {
        return new FreezingSetup(
                batch.method(),
                batch.bath().map(bathSetup -> TypedAmount.number(bathSetup.iceG())).orElse(""),
                batch.bath().map(bathSetup -> TypedAmount.number(bathSetup.saltG())).orElse(""),
                TypedAmount.number(batch.freezerC()),
                TypedAmount.number(batch.airPercent()),
                batch.stored().map(StorageSetup::of).orElse(StorageSetup.UNSPECIFIED));
    }
}
