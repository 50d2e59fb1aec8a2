package coldwright.science.plan;

import coldwright.science.crystal.Method;
import coldwright.science.mix.Allergen;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Contribution;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.style.StyleQuantity;
import coldwright.science.style.StyleRange;
import coldwright.words.Phrase;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A fault of a batch, measured, and in words.
 *
 * @param fault its kind
 * @param value the value found, in the unit of its quantity
 * @param range the usual range of the style, with its source
 * @param steps how grave: steps beyond the range times the fault's weight; as the cause of a
 *     symptom, times its share in that
 * @param sharePercent its part among the causes of a symptom, %; 0 where nobody named a symptom
 * @param state the batch
 */
public record Finding(
        BatchFault fault,
        double value,
        StyleRange range,
        double steps,
        double sharePercent,
        BatchState state) {
    /** From here on a fault is worth a sentence, steps. */
    public static final double WORTH_TELLING_STEPS = 0.25;

    private static final int NAMED = 3;
    private static final double WORTH_NAMING_PERCENT = 5;

    Finding(BatchFault fault, double value, StyleRange range, double steps, BatchState state) {
        this(fault, value, range, steps, 0, state);
    }

    /** The same as the cause of a symptom, in which a part of it shows. */
    public Finding asCause(double part) {
        return new Finding(fault, value, range, part * steps / fault.weight(), 100, state);
    }

    /** The same with its share of all causes, %. */
    public Finding sharing(double percent) {
        return new Finding(fault, value, range, steps, percent, state);
    }

    boolean worthTelling() {
        return steps >= WORTH_TELLING_STEPS;
    }

    /** {@return the cause, and what to expect of it unless a symptom was named} */
    public String what() {
        return sharePercent > 0 ? fault.words() : expected().english();
    }

    /** {@return its value against the usual one, and which ingredients bring it} */
    public String why() {
        return reason().english();
    }

    /** {@return what to do by hand} */
    public String mend() {
        return remedy().english();
    }

    /**
     * The cause and what to expect of it.
     *
     * @return such as {@code too much of its water is ice: expect it to be hard}
     */
    public Phrase expected() {
        return switch (fault) {
            case SMALL_BATH -> phrase("what.SMALL_BATH", tenG(range.least()));
            case OFF_DIET -> phrase("what.OFF_DIET");
            default -> phrase("what", fault.phrase(), phrase("expect." + fault.name()));
        };
    }

    /** {@return the value found against the usual range, its source, and what brings it} */
    public Phrase reason() {
        return switch (fault) {
            case SMALL_BATH ->
                    phrase(
                            "why.SMALL_BATH",
                            tenG(value),
                            tenG(range.least()),
                            tenG(state.frozen().leastSaltG()));
            case OFF_DIET ->
                    phrase(
                            "why.OFF_DIET",
                            state.diet().excludedFrom(state.batch()).stream()
                                    .map(Ingredient::phrase)
                                    .toList());
            case COARSE_CRYSTALS, STORAGE ->
                    phrase("why." + fault.name(), value, range.most(), range.sourcePhrase());
            default -> measured();
        };
    }

    /** {@return what to do by hand, where no plan gives amounts} */
    public Phrase remedy() {
        boolean milk = state.batch().allergens().contains(Allergen.MILK);
        return switch (fault) {
            case LOW_FREEZING_POINT -> phrase("advice.LOW_FREEZING_POINT", state.frozen().coldC());
            case COARSE_CRYSTALS ->
                    phrase(
                            "advice.COARSE_CRYSTALS"
                                    + (state.making().method() == Method.STILL_TUB
                                            ? ""
                                            : ".moved"));
            case FEW_SOLIDS, MANY_SOLIDS ->
                    phrase("advice." + fault.name() + (milk ? ".milk" : ""));
            default -> phrase("advice." + fault.name());
        };
    }

    private Phrase measured() {
        StyleQuantity quantity = fault.quantity();
        double scale = scale(quantity);
        double shown = scale * value;
        Phrase found =
                quantity == StyleQuantity.ICE
                        ? phrase("value.ICE", state.making().servingC(), shown)
                        : phrase("value." + quantity.name(), shown);
        Phrase measured =
                phrase(
                        fault.above() ? "at-most" : "at-least",
                        found,
                        scale * (fault.above() ? range.most() : range.least()),
                        state.style().phrase(),
                        range.sourcePhrase());
        return brought(quantity, state).map(by -> phrase("brought", measured, by)).orElse(measured);
    }

    /** Sweetness is shown as sweetening power (POD), g of sucrose per 1000 g. */
    static double scale(StyleQuantity quantity) {
        return quantity == StyleQuantity.SWEETNESS ? 10 : 1;
    }

    /** The ingredients that bring most of a quantity, or keep most water from freezing. */
    private static Optional<Phrase> brought(StyleQuantity quantity, BatchState state) {
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
                                                share.getKey().phrase(),
                                                (double) Math.round(share.getValue())))
                        .toList();
        boolean ice = quantity == StyleQuantity.ICE || quantity == StyleQuantity.ICE_IN_THE_COLD;
        return largest.isEmpty()
                ? Optional.empty()
                : Optional.of(phrase(ice ? "brought.ICE" : "brought.part", largest));
    }

    static Phrase phrase(String key, Object... values) {
        return Phrase.of("science.plan", key, values);
    }

    private static double tenG(double g) {
        return Math.rint(g / 10) * 10;
    }

    @Override
    public String toString() {
        return "%s (%s); %s".formatted(expected(), why(), mend());
    }
}
