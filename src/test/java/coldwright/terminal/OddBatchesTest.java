package coldwright.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.batch.RecipeFileReader;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;
import coldwright.terminal.console.ExitCode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/**
 * Batches that nobody would make: each gets a report, unless it has no water or freezes colder than
 * the models go. No rounding of a computed figure ends a command.
 */
class OddBatchesTest {
    private static final String NO_WATER =
            "the mix has no water, and water is what freezes; add water, milk or juice";
    private static final String TOO_COLD = "the mix begins to freeze only at −";
    private static final double COLDEST_START_C = -40;
    private static final int SEEDS = 10 * Integer.getInteger("laws.cases", 1);

    private static final List<String> METHODS = List.of("tub", "bag", "shaken", "churn");

    /** What odd batches are made of: each alone is an extreme. */
    private static final List<String> EXTREMES =
            List.of(
                    "water",
                    "ethanol",
                    "sucrose",
                    "fructose",
                    "salt",
                    "milk fat",
                    "yolk",
                    "neat",
                    "citric acid",
                    "neutral spirit 96 %",
                    "egg yolk",
                    "skim milk powder",
                    "locust bean gum",
                    "coffee");

    private static final String OWN =
            "own: milk fat = fat 100\nown: yolk = yolk solids 100\nown: neat = alcohol 35.6, total solids 64.4\n";

    @TempDir Path folder;

    private static String table(String... rows) {
        return "ingredient,grams\n" + String.join("\n", rows) + "\n";
    }

    /** What a command answered. */
    private record Answered(int exit, String out, String err) {}

    private Answered command(String command, String text, String... more) {
        Path file = folder.resolve("odd.batch");
        try {
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        List<String> words = new ArrayList<>(List.of(command, file.toString()));
        words.addAll(List.of(more));
        TypedSession typedSession = TypedSession.nobody();
        int exit = typedSession.obey(words.toArray(String[]::new));
        return new Answered(exit, typedSession.out(), typedSession.err());
    }

    /** A report and 0, or the one refusal that this mix deserves. */
    private void answers(String which, String text) {
        Answered answered = command("batch", text, "--json");
        Mix mix;
        try {
            mix = RecipeFileReader.read("odd", text).mix();
        } catch (IllegalArgumentException e) {
            throw new AssertionError(which, e);
        }
        String all = which + "\n" + text + answered.err();
        if (!(mix.waterPercent() > 0)) {
            assertEquals(ExitCode.NOT_UNDERSTOOD, answered.exit(), all);
            assertTrue(answered.err().contains(NO_WATER), all);
        } else if (mix.initialFreezingPointC() < COLDEST_START_C) {
            assertEquals(ExitCode.NOT_UNDERSTOOD, answered.exit(), all);
            assertTrue(answered.err().contains(TOO_COLD), all);
        } else {
            assertEquals("", answered.err(), all);
            assertEquals(ExitCode.DONE, answered.exit(), all);
            assertTrue(answered.out().contains("\"findings\""), all);
        }
    }

    @Test
    void waterAndAlcoholGetAReport() {
        String text = table("water,72", "ethanol,28");
        Answered page = command("batch", text);
        assertEquals("", page.err());
        assertEquals(ExitCode.DONE, page.exit());
        assertTrue(page.out().contains("water 72.0 %"), page.out());
        answers("72 and 28", text);
        Answered balanced = command("balance", "target: alcohol 28 %\n" + text);
        assertEquals("", balanced.err());
        assertEquals(ExitCode.DONE, balanced.exit());
    }

    /** Every twelfth ingredient; each one where laws get more cases. */
    static Stream<String> everythingAlone() {
        List<Ingredient> all = Shelf.all();
        int step = SEEDS > 10 ? 1 : 12;
        return IntStream.range(0, all.size())
                .filter(i -> i % step == 0)
                .mapToObj(i -> all.get(i).name());
    }

    @ParameterizedTest
    @MethodSource("everythingAlone")
    void oneIngredientAlone(String name) {
        answers(name, table("\"%s\",250".formatted(name)));
    }

    static Stream<Double> strengths() {
        return IntStream.rangeClosed(0, 15).mapToObj(n -> n * 4.0);
    }

    @ParameterizedTest
    @MethodSource("strengths")
    void alcoholInWaterAtEveryStrength(double percent) {
        answers(
                percent + " %",
                table("water," + Double.toString(100 - percent), "ethanol," + percent));
        answers(
                "thirds of " + percent + " %",
                table(
                        "water,%.4f".formatted((100 - percent) / 3),
                        "ethanol,%.4f".formatted(percent / 3)));
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, SEEDS);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anyOddBatch(long seed) {
        Random random = new Random(seed);
        answers("seed " + seed, head(random) + table(rows(random).toArray(String[]::new)));
    }

    private static String head(Random random) {
        String stored =
                random.nextInt(3) == 0
                        ? "stored: %d days, swinging %d °C\n"
                                .formatted(1 + random.nextInt(60), random.nextInt(6))
                        : "";
        return "method: %s\nfreezer: -%d °C\nair: %d %%\n%s%s"
                .formatted(
                        METHODS.get(random.nextInt(METHODS.size())),
                        5 + random.nextInt(40),
                        random.nextBoolean() ? 0 : random.nextInt(200),
                        stored,
                        OWN);
    }

    private static List<String> rows(Random random) {
        List<String> rows = new ArrayList<>();
        int count = 1 + random.nextInt(4);
        for (int i = 0; i < count; i++) {
            String name =
                    random.nextInt(3) == 0
                            ? Shelf.all().get(random.nextInt(Shelf.all().size())).name()
                            : EXTREMES.get(random.nextInt(EXTREMES.size()));
            double grams = Math.pow(10, -4 + 7 * random.nextDouble());
            rows.add(String.format(Locale.ROOT, "\"%s\",%.5f", name, grams));
        }
        return rows;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whatABatchHasAlreadyCanBeBalanced(long seed) {
        Random random = new Random(seed);
        int count = 1 + random.nextInt(4);
        StringBuilder rows = new StringBuilder("ingredient,fixed\n");
        StringBuilder open = new StringBuilder("ingredient,grams,min,max\n");
        for (int i = 0; i < count; i++) {
            String name = EXTREMES.get(i);
            String grams = String.format(Locale.ROOT, "%.5f", 300 * random.nextDouble());
            rows.append(name).append(',').append(grams).append('\n');
            open.append("%s,%s,%s,%s%n".formatted(name, grams, grams, grams));
        }
        for (String table : List.of(rows.toString(), open.toString())) {
            String text = "target: water 50 %\ntarget: sucrose 10 %\n" + OWN + table;
            Answered answered = command("balance", text, "--json");
            String all = "seed " + seed + "\n" + text + answered.err();
            assertEquals("", answered.err(), all);
            assertTrue(answered.out().contains("\"shortfalls\""), all);
        }
    }

    /** A file as a window writes it while the cook types. */
    private static final String HALF_TYPED =
            """
            # batch: 1 after 0
            method: tub
            target: fat 3 %

            ingredient,grams,min,max
            whole milk,500,,
            # unfinished: heavy cream,,0,300
            # unfinished: sucrox,12,,
            """;

    @Test
    void whatIsUnfinishedIsNamedAndLeftOut() {
        Answered whole = command("batch", HALF_TYPED);
        String file = folder.resolve("odd.batch").toString();

        assertEquals(ExitCode.DONE, whole.exit());
        assertTrue(whole.out().contains("500 g"), whole.out());
        String[] lines = whole.err().strip().split("\\R", -1);
        assertEquals(2, lines.length, whole.err());
        assertEquals(file + ":7: \"heavy cream\" is unfinished. Write its grams.", lines[0]);
        String sucrox = file + ":8: \"12 sucrox\" is unfinished and left out. ";
        assertTrue(lines[1].startsWith(sucrox) && lines[1].contains("sucrose"), lines[1]);
    }

    @Test
    void aBalanceUsesALineThatLacksOnlyItsAmount() {
        Answered balanced = command("balance", HALF_TYPED, "--json");

        assertEquals(ExitCode.FAILED, balanced.exit(), "whole milk alone has more fat");
        assertTrue(balanced.out().contains("heavy cream"), balanced.out());
    }

    @Test
    void aFileWithNothingFinishedIsRefusedAtItsLine() {
        String text = HALF_TYPED.replace("whole milk,500,,\n", "");
        Answered refused = command("batch", text);

        assertEquals(ExitCode.NOT_UNDERSTOOD, refused.exit());
        assertEquals("", refused.out());
        String file = folder.resolve("odd.batch").toString();
        assertEquals(
                file + ":6: \"heavy cream\" is unfinished. Write its grams.",
                refused.err().strip());
    }

    @Test
    void aWrongFieldOfTheHeadIsRefusedAtItsLine() {
        String text = HALF_TYPED.replace("method: tub", "# unfinished: freezer = cold");
        Answered refused = command("batch", text);

        assertEquals(ExitCode.NOT_UNDERSTOOD, refused.exit());
        String file = folder.resolve("odd.batch").toString();
        assertEquals(
                file + ":2: freezer is \"cold\", which isn't a number; write a number",
                refused.err().strip());
    }

    static LongStream mixes() {
        return LongStream.rangeClosed(1, Integer.getInteger("batch.mixes", 25));
    }

    /** Five thousand of them in the profile long. */
    @ParameterizedTest
    @MethodSource("mixes")
    void anyTwoPartsMakeAMixWithAReport(long seed) {
        Random random = new Random(seed);
        String first = Shelf.all().get(random.nextInt(Shelf.all().size())).name();
        String second = Shelf.all().get(random.nextInt(Shelf.all().size())).name();
        answers(
                "mix " + seed,
                table(
                        String.format(
                                Locale.ROOT, "\"%s\",%.3f", first, 1000 * random.nextDouble()),
                        String.format(
                                Locale.ROOT, "\"%s\",%.3f", second, 1000 * random.nextDouble())));
    }

    @Test
    void crumbs() {
        answers("crumbs", table("water,0.00009", "ethanol,0.00009", "salt,0.00009"));
        answers("crumbs", table("water,0.00009", "whole milk,0.00009", "sucrose,0.00009"));
        answers("crumbs", table("water,0.00009", "milk 3.5 %,0.00009", "agar,0.00009"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.00001", "0.0001", "0.01", "1", "999999"})
    void anySize(String grams) {
        answers(grams, table("water," + grams, "ethanol," + grams));
        answers(grams, table("whole milk," + grams));
    }
}
