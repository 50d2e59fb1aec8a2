package coldwright.desk.batch.model;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.FreezingSetup;
import coldwright.batch.Recipe;
import coldwright.batch.StorageConditions;
import coldwright.batch.Typed;
import coldwright.desk.messages.Messages;
import coldwright.science.crystal.Method;
import coldwright.science.freezer.Cold;
import coldwright.science.freezer.Holder;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Ingredient;
import coldwright.science.style.Style;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Writes a batch as a lesson: the same figures, as snippets to change. The parts of the lesson are
 * in a file of resources; a name in it is a value of the batch or a text in the language shown.
 */
public final class LessonFromBatch {
    private static final String TEMPLATE = "/coldwright/desk/batch-lesson.md";
    private static final Pattern NAME = Pattern.compile("\\$\\{([^}]+)}");

    private final Recipe recipe;
    private final BatchAnalysis all;
    private final Map<String, String> values = new HashMap<>();

    private LessonFromBatch(Recipe recipe, BatchAnalysis all) {
        this.recipe = recipe;
        this.all = all;
    }

    /**
     * Writes the lesson.
     *
     * @param recipe the recipe, with the composition of its own ingredients
     * @return a lesson's text
     */
    public static String of(Recipe recipe, BatchAnalysis all) {
        return new LessonFromBatch(recipe, all).lesson();
    }

    private String lesson() {
        values.put("name", plain(recipe.name()));
        values.put(
                "amounts",
                all.mix().amounts().stream()
                        .map(this::amount)
                        .collect(Collectors.joining(",\n        ")));
        values.put("freezerC", number(all.batch().freezerC()));
        values.put("coldC", number(all.coldC()));
        values.put("airPercent", number(all.batch().airPercent()));
        double partG = Math.max(FreezingSetup.LEAST_TIMED_G, all.mix().massG() / all.parts());
        values.put("partG", number(partG));
        values.put("holder", holder(all.plan().freeze().holder()));
        values.put("cold", cold());
        boolean bath = all.batch().setup().inBath();
        values.put("caution", Messages.of("batch.lesson.caution." + (bath ? "brine" : "tub")));
        method();
        storage(all.batch().stored());
        values.put("expected", filled(all.crystals().isEmpty() ? "bare" : "crystals"));
        return filled("lesson") + "\n";
    }

    private void method() {
        boolean still = all.batch().method() == Method.STILL_TUB;
        double minutes = still ? all.plan().minutesToHard() : all.plan().minutesToSoftServe();
        String call = still ? ", plan.minutesToHard()" : ", plan.minutesToSoftServe()";
        values.put("minutes", minutes >= 1 && minutes <= 4000 ? call : "");
        values.put("method", all.batch().method().name());
        values.put(
                "moved",
                all.batch().method() == Method.SHAKEN_TUB
                        ? "\n        .moved(Motion.every(45))"
                        : "");
    }

    private void storage(Optional<StorageConditions> stored) {
        boolean atOnce = all.state().style().eaten() == Style.Eaten.AT_ONCE;
        values.put("tasted", atOnce ? "drawn" : stored.isPresent() ? "kept" : "night");
        values.put("kept", "");
        values.put("steady", "");
        stored.ifPresent(
                one -> {
                    values.put("days", number(one.days()));
                    values.put("swingC", number(one.swingC()));
                    values.put(
                            "shock",
                            one.warmed()
                                    .map(
                                            warm ->
                                                    "\n        .heatShock(%s, %s)"
                                                            .formatted(
                                                                    number(warm.temperatureC()),
                                                                    number(warm.hours())))
                                    .orElse(""));
                    values.put("kept", filled("kept"));
                    if (one.disturbed()) {
                        values.put(
                                "steady",
                                "\n        .steadyWouldBe(drawn.storedAt(%s).forDays(%s).meanUm())"
                                        .formatted(values.get("freezerC"), number(one.days())));
                    }
                });
    }

    private String amount(Amount amount) {
        String name = quoted(amount.ingredient().name());
        Optional<Typed<Ingredient>> own =
                recipe.own().stream()
                        .filter(one -> one.value().filter(amount.ingredient()::equals).isPresent())
                        .findFirst();
        String ingredient =
                own.map(Typed::text)
                        .map(text -> quoted(text.substring(text.indexOf('=') + 1).strip()))
                        .map(parts -> "OwnIngredient.of(%s, %s)".formatted(name, parts))
                        .orElse("Shelf.find(%s)".formatted(name));
        return "grams(%s, %s)".formatted(number(amount.massG()), ingredient);
    }

    private String cold() {
        return all.plan().freeze().cold() instanceof Cold.Bath bath
                ? "IceAndSalt.of(%s, %s)"
                        .formatted(number(bath.bath().iceG()), number(bath.bath().saltG()))
                : "Cold.freezer(%s)".formatted(values.get("freezerC"));
    }

    private static String holder(Holder holder) {
        if (holder instanceof Holder.Bag bag) {
            return "Holder.Bag.flat(%s)".formatted(number(bag.thicknessMm()));
        }
        if (holder instanceof Holder.Tub tub) {
            return "Holder.Tub.round(%s)".formatted(number(tub.diameterMm()));
        }
        if (holder instanceof Holder.Churn churn) {
            return "Holder.Churn.of(%s)".formatted(number(churn.diameterMm()));
        }
        throw new AssertionError(holder);
    }

    /** A part of the template with its values and texts. */
    private String filled(String part) {
        Matcher names = NAME.matcher(template(part));
        return names.replaceAll(
                name ->
                        Matcher.quoteReplacement(
                                Optional.ofNullable(values.get(name.group(1)))
                                        .orElseGet(
                                                () ->
                                                        Messages.of(
                                                                "batch.lesson." + name.group(1)))));
    }

    private static String template(String part) {
        try (InputStream in = LessonFromBatch.class.getResourceAsStream(TEMPLATE)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            String rest = text.split("=== " + part + "\n", 2)[1];
            return rest.split("(?<=\n)=== ", 2)[0].replaceFirst("\n$", "");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.6f", value);
        return text.replaceAll("0+$", "").replaceAll("\\.$", "");
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("`", "'") + "\"";
    }

    private static String plain(String name) {
        String words = name.replaceAll("[^\\p{L}\\p{N},.%°’'-]+", " ").strip();
        return words.isEmpty() ? Messages.of("batch.lesson.nameless") : words;
    }
}
