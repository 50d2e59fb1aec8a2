package coldwright.science.diagnosis;

import coldwright.science.mix.Amount;
import coldwright.science.mix.Contribution;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** Which ingredients bring which share of something, in words. */
final class ContributionText {
    private static final int NAMED = 3;
    private static final double WORTH_NAMING_PERCENT = 5;

    private ContributionText() {}

    /** Who lowers the freezing point, by share of the whole depression. */
    static String ofDepression(Mix mix) {
        Map<Ingredient, Double> shares = new LinkedHashMap<>();
        for (Contribution one : mix.contributions()) {
            shares.merge(one.ingredient(), one.sharePercent(), Double::sum);
        }
        return describe(shares, "of what keeps water from freezing");
    }

    /** Who brings a part of the composition. */
    static String of(Mix mix, String what, ToDoubleFunction<Mix> percent) {
        double all = percent.applyAsDouble(mix) * mix.massG();
        if (!(all > 0)) {
            return "nothing in it brings any";
        }
        Map<Ingredient, Double> shares = new LinkedHashMap<>();
        for (Amount amount : mix.amounts()) {
            if (amount.massG() > 0) {
                double part = percent.applyAsDouble(Mix.of(amount)) * amount.massG();
                shares.put(amount.ingredient(), 100 * part / all);
            }
        }
        return describe(shares, "of its " + what);
    }

    private static String describe(Map<Ingredient, Double> shares, String ofWhat) {
        List<Map.Entry<Ingredient, Double>> sorted = new ArrayList<>(shares.entrySet());
        sorted.sort(Map.Entry.<Ingredient, Double>comparingByValue().reversed());
        String parts =
                sorted.stream()
                        .filter(entry -> entry.getValue() >= WORTH_NAMING_PERCENT)
                        .limit(NAMED)
                        .map(
                                entry ->
                                        "%s brings %d %%"
                                                .formatted(
                                                        entry.getKey().name(),
                                                        Math.round(entry.getValue())))
                        .collect(Collectors.joining(", "));
        return parts.isEmpty() ? "" : parts + " " + ofWhat;
    }
}
