package coldwright.science.plan;

import coldwright.science.mix.Allergen;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Contribution;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.style.Quantity;
import coldwright.science.style.StyleRange;
import coldwright.words.Phrase;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A fault in words: what to expect, and the sum behind it. */
public final class FaultSentences {
    static final String AREA = "science.plan";

    private static final int NAMED = 3;
    private static final double WORTH_NAMING_PERCENT = 5;

    private FaultSentences() {}

    /**
     * The cause and what to expect of it.
     *
     * @return such as {@code too much of its water is ice: expect it to be hard}
     */
    public static Phrase what(FoundFault found) {
        return switch (found.fault()) {
            case SMALL_BATH -> phrase("what.SMALL_BATH", tenG(found.range().least()));
            case OFF_DIET -> phrase("what.OFF_DIET");
            default ->
                    phrase(
                            "what",
                            found.fault().phrase(),
                            phrase("expect." + found.fault().name()));
        };
    }

    /**
     * The value found against the usual range with its source, and which ingredients bring it.
     *
     * @return a sentence in any language
     */
    public static Phrase why(FoundFault found, BatchState state) {
        return switch (found.fault()) {
            case SMALL_BATH ->
                    phrase(
                            "why.SMALL_BATH",
                            tenG(found.value()),
                            tenG(found.range().least()),
                            tenG(state.frozen().leastSaltG()));
            case OFF_DIET ->
                    phrase(
                            "why.OFF_DIET",
                            state.diet().excludedFrom(state.batch()).stream()
                                    .map(Ingredient::name)
                                    .toList());
            case COARSE_CRYSTALS, STORAGE ->
                    phrase(
                            "why." + found.fault().name(),
                            found.value(),
                            found.range().most(),
                            found.range().sourcePhrase());
            default -> measured(found, state);
        };
    }

    /**
     * What to do by hand, where no plan gives amounts.
     *
     * @return a sentence in any language
     */
    public static Phrase advice(FoundFault found, BatchState state) {
        boolean milk = state.batch().allergens().contains(Allergen.MILK);
        return switch (found.fault()) {
            case LOW_FREEZING_POINT -> phrase("advice.LOW_FREEZING_POINT", state.frozen().coldC());
            case FEW_SOLIDS, MANY_SOLIDS ->
                    phrase("advice." + found.fault().name() + (milk ? ".milk" : ""));
            default -> phrase("advice." + found.fault().name());
        };
    }

    private static Phrase measured(FoundFault found, BatchState state) {
        StyleRange range = found.range();
        double scale = scale(found.fault().quantity());
        Phrase value = value(found.fault().quantity(), scale * found.value(), state);
        Phrase measured =
                found.fault().above()
                        ? phrase(
                                "at-most",
                                value,
                                scale * range.most(),
                                state.style().phrase(),
                                range.sourcePhrase())
                        : phrase(
                                "at-least",
                                value,
                                scale * range.least(),
                                state.style().phrase(),
                                range.sourcePhrase());
        return brought(found.fault().quantity(), state)
                .map(by -> phrase("brought", measured, by))
                .orElse(measured);
    }

    /** Sweetness is shown as sweetening power (POD), g of sucrose per 1000 g. */
    static double scale(Quantity quantity) {
        return quantity == Quantity.SWEETNESS ? 10 : 1;
    }

    /** A quantity with its value and unit. */
    static Phrase value(Quantity quantity, double value, BatchState state) {
        return quantity == Quantity.ICE
                ? phrase("value.ICE", state.making().servingC(), value)
                : phrase("value." + quantity.name(), value);
    }

    /** The ingredients that bring most of a quantity, or keep most water from freezing. */
    private static Optional<Phrase> brought(Quantity quantity, BatchState state) {
        Mix mix = state.pieces().mix();
        Map<Ingredient, Double> shares = new LinkedHashMap<>();
        switch (quantity) {
            case ICE, ICE_IN_THE_COLD -> {
                for (Contribution one : mix.contributions()) {
                    shares.merge(one.ingredient(), one.sharePercent(), Double::sum);
                }
            }
            case OVERRUN, SERVING, CRYSTALS, LACTOSE -> {}
            default -> {
                double all = quantity.of(mix) * mix.massG();
                for (Amount amount : mix.amounts()) {
                    if (all > 0 && amount.massG() > 0) {
                        double part = quantity.of(Mix.of(amount)) * amount.massG();
                        shares.put(amount.ingredient(), 100 * part / all);
                    }
                }
            }
        }
        List<Phrase> largest =
                shares.entrySet().stream()
                        .filter(share -> share.getValue() >= WORTH_NAMING_PERCENT)
                        .sorted(Map.Entry.<Ingredient, Double>comparingByValue().reversed())
                        .limit(NAMED)
                        .map(
                                share ->
                                        phrase(
                                                "brings",
                                                share.getKey().name(),
                                                (double) Math.round(share.getValue())))
                        .toList();
        boolean ice = quantity == Quantity.ICE || quantity == Quantity.ICE_IN_THE_COLD;
        return largest.isEmpty()
                ? Optional.empty()
                : Optional.of(phrase(ice ? "brought.ICE" : "brought.part", largest));
    }

    static Phrase phrase(String key, Object... values) {
        return Phrase.of(AREA, key, values);
    }

    private static double tenG(double g) {
        return Math.rint(g / 10) * 10;
    }
}
