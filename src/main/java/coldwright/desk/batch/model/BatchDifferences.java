package coldwright.desk.batch.model;

import coldwright.batch.BatchReport;
import coldwright.batch.Fact;
import coldwright.batch.FreezingSetup;
import coldwright.batch.Recipe;
import coldwright.batch.RecipeLine;
import coldwright.batch.SetupField;
import coldwright.batch.Typed;
import coldwright.desk.messages.Messages;
import coldwright.science.diagnosis.Situation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The differences between two batches, in words. */
public final class BatchDifferences {
    /** Smaller differences are rounding, in the unit of the figure. */
    private static final double WORTH_TELLING = 0.1;

    /** The facts that are compared, in the order shown, each with the end of its text's key. */
    private static final Map<String, String> COMPARED = new LinkedHashMap<>();

    static {
        COMPARED.put("initial_freezing_point_c", "starts");
        COMPARED.put("serving_ice_percent_of_water", "iced");
        COMPARED.put("sweetness_percent_of_sucrose_solution", "sweet");
        COMPARED.put("fat_percent", "fat");
        COMPARED.put("total_solids_percent", "solids");
        COMPARED.put("minutes_to_soft_serve", "minutes");
        COMPARED.put("tasted_mean_micrometres", "crystals");
    }

    private BatchDifferences() {}

    /** Differences between the recipes and the results shown of two batches. */
    public static List<String> between(BatchModel was, BatchModel is) {
        List<String> words = new ArrayList<>(between(was.shownRecipe(), is.shownRecipe()));
        was.report().ifPresent(a -> is.report().ifPresent(b -> words.addAll(between(a, b))));
        return words;
    }

    /**
     * Differences between two recipes.
     *
     * @return such as {@code sucrose 150 → 120 g}; empty if they are equal
     */
    public static List<String> between(Recipe was, Recipe is) {
        Map<String, Double> before = grams(was);
        Map<String, Double> now = grams(is);
        Set<String> names = new LinkedHashSet<>(before.keySet());
        names.addAll(now.keySet());
        List<String> words = new ArrayList<>();
        for (String name : names) {
            double from = before.getOrDefault(name, 0.0);
            double to = now.getOrDefault(name, 0.0);
            if (Math.abs(from - to) >= 0.05) {
                words.add(
                        Messages.of(
                                "batch.differs.grams",
                                name,
                                RecipeLine.rounded(from),
                                RecipeLine.rounded(to)));
            }
        }
        FreezingSetup old = was.setup();
        FreezingSetup setup = is.setup();
        if (old.method() != setup.method()) {
            words.add(Messages.of("batch.differs.method", method(old), method(setup)));
        }
        said("style", was.intent().style(), is.intent().style()).ifPresent(words::add);
        said("diet", was.intent().diet(), is.intent().diet()).ifPresent(words::add);
        for (SetupField field : SetupField.values()) {
            String from = old.text(field);
            String to = setup.text(field);
            if (!from.equals(to)) {
                String key = field.name().toLowerCase(Locale.ROOT).replace('_', '-');
                words.add(
                        Messages.of("batch.differs." + key, said(field, old), said(field, setup)));
            }
        }
        return words;
    }

    private static Optional<String> said(String key, Typed<?> was, Typed<?> is) {
        return was.text().equals(is.text())
                ? Optional.empty()
                : Optional.of(Messages.of("batch.differs." + key, stated(was), stated(is)));
    }

    private static String stated(Typed<?> field) {
        return field.isBlank() ? Messages.of("batch.differs.unstated") : field.text().strip();
    }

    private static String method(FreezingSetup freezingSetup) {
        return Messages.of("batch.method." + freezingSetup.methodWord());
    }

    private static Object said(SetupField field, FreezingSetup setup) {
        if (!setup.text(field).isBlank()) {
            return setup.value(field).<Object>map(one -> one).orElse(setup.text(field));
        }
        return switch (field) {
            case DAYS, SWING, WARM, WARM_FOR -> Messages.of("batch.differs.unsaid");
            case FREEZER, AIR, SERVING, ICE, SALT -> Messages.of("batch.differs.unstated");
        };
    }

    private static Map<String, Double> grams(Recipe recipe) {
        Map<String, Double> grams = new LinkedHashMap<>();
        for (RecipeLine line : recipe.lines()) {
            if (line.counts()) {
                grams.merge(
                        line.ingredient().value().orElseThrow().phrase().shown(),
                        line.grams(),
                        Double::sum);
            }
        }
        return grams;
    }

    /**
     * Differences between the results for two batches.
     *
     * @return changes in ice, sweetness, fat, minutes, crystals and so on; empty if all are
     *     negligible
     */
    public static List<String> between(BatchReport was, BatchReport is) {
        List<String> words = new ArrayList<>();
        COMPARED.forEach(
                (key, text) ->
                        was.find(key)
                                .flatMap(a -> is.find(key).flatMap(b -> between(text, a, b)))
                                .ifPresent(words::add));
        return words;
    }

    private static Optional<String> between(String text, Fact was, Fact is) {
        String key = "batch.differs." + text;
        String words = Messages.of(key, shown(was), shown(is), Situation.SERVING_C);
        boolean alike =
                Math.abs(was.number() - is.number()) < WORTH_TELLING
                        || words.equals(
                                Messages.of(key, shown(is), shown(was), Situation.SERVING_C));
        return alike ? Optional.empty() : Optional.of(words);
    }

    private static Object shown(Fact fact) {
        return fact.unit().equals("min") ? BatchReport.time(fact.number()) : fact.number();
    }
}
