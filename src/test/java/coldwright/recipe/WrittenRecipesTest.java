package coldwright.recipe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.recipe.LineReading.Part;
import coldwright.recipe.LineReading.State;
import coldwright.science.mix.Shelf;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * Sixty recipes in ten habits of writing (American, British and German lists, names before amounts,
 * brackets, run-in sentences, tables, notes, packs, old books), each with what a cook would read;
 * and twelve that were written when the reader could already read those sixty.
 *
 * <p>An expected line is {@code grams ingredient}, where the grams may be a product such as {@code
 * 2*236.588*1.006}; {@code ?} begins readings to choose from; {@code !} a line that must not be
 * understood.
 */
class WrittenRecipesTest {
    /** Two roundings: of the density and of a fraction such as 0.3333. */
    private static final double ROUNDING = 0.02;

    private record Verdict(String where, boolean right, boolean silentlyWrong) {}

    static List<Path> recipes() throws IOException, URISyntaxException {
        return recipes("/recipes");
    }

    private static List<Path> recipes(String name) throws IOException, URISyntaxException {
        URL folder = WrittenRecipesTest.class.getResource(name);
        try (Stream<Path> files = Files.list(Path.of(folder.toURI()))) {
            return files.filter(file -> file.toString().endsWith(".txt")).sorted().toList();
        }
    }

    @ParameterizedTest
    @CsvSource({"/recipes, 60, 95", "/recipes-unseen, 12, 90"})
    void mostLinesAreRightAndNoneIsSilentlyWrong(String folder, int count, double leastRightPercent)
            throws IOException, URISyntaxException {
        List<Verdict> verdicts = new ArrayList<>();
        List<Path> recipes = recipes(folder);
        for (Path recipe : recipes) {
            verdicts.addAll(judged(recipe));
        }
        assertEquals(count, recipes.size());
        List<String> silent =
                verdicts.stream().filter(Verdict::silentlyWrong).map(Verdict::where).toList();
        List<String> wrong = verdicts.stream().filter(v -> !v.right()).map(Verdict::where).toList();
        double rightPercent = 100.0 - 100.0 * wrong.size() / verdicts.size();
        assertEquals("", String.join("\n", silent));
        assertTrue(
                rightPercent >= leastRightPercent,
                () -> rightPercent + " %; wrong are\n" + String.join("\n", wrong));
    }

    private static List<Verdict> judged(Path recipe) throws IOException {
        String name = recipe.getFileName().toString();
        List<String> expected =
                Files.readAllLines(recipe.resolveSibling(name.replace(".txt", ".expected")));
        PastedRecipe read = PastedRecipe.read(Files.readString(recipe), List.of());
        List<Verdict> verdicts = new ArrayList<>();
        for (int i = 0; i < Math.max(expected.size(), read.lines().size()); i++) {
            String wanted = i < expected.size() ? expected.get(i) : "nothing";
            LineReading found =
                    i < read.lines().size() ? read.lines().get(i) : LineReading.other("nothing");
            boolean right = i < expected.size() && isRight(wanted, found);
            verdicts.add(
                    new Verdict(
                            "%s: %s is %s %s %s %s, not %s"
                                    .formatted(
                                            name,
                                            found.text(),
                                            found.state(),
                                            found.parts(),
                                            found.choices(),
                                            found.suggestions(),
                                            wanted),
                            right,
                            !right && found.state() == State.UNDERSTOOD));
        }
        return verdicts;
    }

    private static boolean isRight(String wanted, LineReading found) {
        if (wanted.startsWith("!")) {
            return found.state() == State.UNKNOWN;
        }
        if (!wanted.startsWith("?")) {
            return found.state() == State.UNDERSTOOD && same(wanted, found.parts());
        }
        return found.state() == State.ASK
                && Arrays.stream(wanted.substring(1).split(" / "))
                        .allMatch(
                                one ->
                                        found.choices().stream()
                                                .anyMatch(c -> same(one.strip(), c.parts())));
    }

    private static boolean same(String wanted, List<Part> parts) {
        if (wanted.equals("0")) {
            return parts.isEmpty();
        }
        String[] each = wanted.split(" \\+ ");
        if (each.length != parts.size()) {
            return false;
        }
        for (int i = 0; i < each.length; i++) {
            String[] words = each[i].split(" ", 2);
            double massG = value(words[0]);
            Part part = parts.get(i);
            boolean named = words.length < 2 || Shelf.find(words[1]).equals(part.ingredient());
            if (!named || Math.abs(part.massG() - massG) > ROUNDING * massG + 0.005) {
                return false;
            }
        }
        return true;
    }

    private static double value(String product) {
        double value = 1;
        for (String factor : product.split("(?<!\\([0-9.*+]{0,40})[*](?![^(]*\\))")) {
            String[] quotient = factor.split("/");
            value *= quotient.length == 2 ? sum(quotient[0]) / sum(quotient[1]) : sum(factor);
        }
        return value;
    }

    private static double sum(String factor) {
        return Arrays.stream(factor.replaceAll("[()]", "").split("\\+"))
                .mapToDouble(
                        one ->
                                Arrays.stream(one.split("\\*"))
                                        .mapToDouble(Double::parseDouble)
                                        .reduce(1, (a, b) -> a * b))
                .sum();
    }
}
