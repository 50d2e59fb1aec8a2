package coldwright.science.diagnosis;

import coldwright.science.mix.Amount;
import coldwright.science.mix.Contribution;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.words.Phrase;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** The share that each ingredient contributes to something. */
final class Contributions {
    private static final int NAMED = 3;
    private static final double WORTH_NAMING_PERCENT = 5;

    private Contributions() {}

    /** Ingredients that lower the freezing point, by share of the whole depression. */
    static Optional<Phrase> ofDepression(Mix mix) {
        Map<Ingredient, Double> shares = new LinkedHashMap<>();
        for (Contribution one : mix.contributions()) {
            shares.merge(one.ingredient(), one.sharePercent(), Double::sum);
        }
        return largest(shares, "depression");
    }

    /** Ingredients that bring a part of the composition; the part is the end of the words' key. */
    static Optional<Phrase> of(Mix mix, String part, ToDoubleFunction<Mix> percent) {
        double all = percent.applyAsDouble(mix) * mix.massG();
        if (!(all > 0)) {
            return Optional.of(Phrase.of(ExpectedFindings.AREA, "brought-by-none"));
        }
        Map<Ingredient, Double> shares = new LinkedHashMap<>();
        for (Amount amount : mix.amounts()) {
            if (amount.massG() > 0) {
                double percentOfPart = percent.applyAsDouble(Mix.of(amount)) * amount.massG();
                shares.put(amount.ingredient(), 100 * percentOfPart / all);
            }
        }
        return largest(shares, part);
    }

    private static Optional<Phrase> largest(Map<Ingredient, Double> shares, String part) {
        List<Phrase> largest =
                shares.entrySet().stream()
                        .filter(share -> share.getValue() >= WORTH_NAMING_PERCENT)
                        .sorted(Map.Entry.<Ingredient, Double>comparingByValue().reversed())
                        .limit(NAMED)
                        .map(
                                share ->
                                        Phrase.of(
                                                ExpectedFindings.AREA,
                                                "brings",
                                                share.getKey().name(),
                                                (double) Math.round(share.getValue())))
                        .toList();
        return largest.isEmpty()
                ? Optional.empty()
                : Optional.of(Phrase.of(ExpectedFindings.AREA, "brought." + part, largest));
    }
}
