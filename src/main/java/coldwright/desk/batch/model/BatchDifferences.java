package coldwright.desk.batch.model;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.FreezingSetup;
import coldwright.batch.Recipe;
import coldwright.batch.RecipeLine;
import coldwright.batch.SetupField;
import coldwright.batch.TypedAmount;
import coldwright.desk.messages.Messages;
import coldwright.science.diagnosis.Situation;
import coldwright.text.DisplayText;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The differences between two batches, in words. */
public final class BatchDifferences {
    /** Smaller differences are rounding, in the unit of the figure. */
    private static final double WORTH_TELLING = 0.1;

    private BatchDifferences() {}

    /**
     * Differences between two recipes.
     *
     * @param was the earlier one
     * @param is the later one
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
                                TypedAmount.number(from),
                                TypedAmount.number(to)));
            }
        }
        FreezingSetup old = was.setup();
        FreezingSetup setup = is.setup();
        if (old.method() != setup.method()) {
            words.add(Messages.of("batch.differs.method", method(old), method(setup)));
        }
        for (SetupField field : SetupField.values()) {
            String from = old.text(field);
            String to = setup.text(field);
            if (!from.equals(to)) {
                String key = field.name().toLowerCase(Locale.ROOT).replace('_', '-');
                words.add(Messages.of("batch.differs." + key, said(field, from), said(field, to)));
            }
        }
        return words;
    }

    private static String method(FreezingSetup freezingSetup) {
        return Messages.of(
                "batch.method." + freezingSetup.method().name().toLowerCase(Locale.ROOT));
    }

    private static String said(SetupField field, String typed) {
        if (!typed.isBlank()) {
            return typed;
        }
        return switch (field) {
            case DAYS, SWING, WARM, WARM_FOR -> Messages.of("batch.differs.unsaid");
            case FREEZER, AIR, ICE, SALT -> Messages.of("batch.differs.unstated");
        };
    }

    private static Map<String, Double> grams(Recipe recipe) {
        Map<String, Double> grams = new LinkedHashMap<>();
        for (RecipeLine line : recipe.lines()) {
            if (line.counts()) {
                grams.merge(
                        line.ingredient().value().orElseThrow().name(), line.grams(), Double::sum);
            }
        }
        return grams;
    }

    /**
     * Differences between the previews of two batches.
     *
     * @param was the earlier one
     * @param is the later one
     * @return changes in ice, sweetness, fat and so on; empty if all are negligible
     */
    public static List<String> between(BatchPreview was, BatchPreview is) {
        List<String> words = new ArrayList<>();
        figure(
                words,
                "batch.differs.starts",
                1,
                was.curve().initialFreezingPointC(),
                is.curve().initialFreezingPointC());
        figure(
                words,
                "batch.differs.iced",
                0,
                was.curve().icePercentAt(Situation.SERVING_C),
                is.curve().icePercentAt(Situation.SERVING_C));
        figure(
                words,
                "batch.differs.sweet",
                0,
                was.sweetness().percentOfSucroseSolution().middle(),
                is.sweetness().percentOfSucroseSolution().middle());
        figure(words, "batch.differs.fat", 1, was.mix().fatPercent(), is.mix().fatPercent());
        figure(
                words,
                "batch.differs.solids",
                0,
                was.mix().totalSolidsPercent(),
                is.mix().totalSolidsPercent());
        return words;
    }

    /**
     * Differences between the analyses of two batches.
     *
     * @param was the earlier one
     * @param is the later one
     * @return changes in minutes and crystals; empty if all are negligible
     */
    public static List<String> between(BatchAnalysis was, BatchAnalysis is) {
        List<String> words = new ArrayList<>();
        String from = BatchSentences.minutes(was.plan().minutesToSoftServe());
        String to = BatchSentences.minutes(is.plan().minutesToSoftServe());
        if (!from.equals(to)) {
            words.add(Messages.of("batch.differs.minutes", from, to));
        }
        if (was.crystals().isPresent() && is.crystals().isPresent()) {
            figure(
                    words,
                    "batch.differs.crystals",
                    0,
                    was.crystals().get().tasted().meanUm().middle(),
                    is.crystals().get().tasted().meanUm().middle());
        }
        return words;
    }

    private static void figure(List<String> words, String key, int places, double a, double b) {
        String from = DisplayText.decimals(places, a);
        String to = DisplayText.decimals(places, b);
        if (!from.equals(to) && Math.abs(a - b) >= WORTH_TELLING) {
            words.add(Messages.of(key, from, to));
        }
    }
}
