package coldwright.science.style;

import coldwright.science.mix.Amount;
import coldwright.science.mix.Component;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A batch split into its mix and the pieces that are folded in, such as raisins, nuts, chocolate
 * chips and biscuit. Pieces aren't dissolved: neither freezing nor sweetness of the mix counts
 * them.
 *
 * @param mix what freezes
 * @param folded the pieces, in the order of the recipe
 */
public record Pieces(Mix mix, List<Amount> folded) {
    private static final Set<Ingredient> WHOLE =
            Set.of(
                    Shelf.ALMONDS,
                    Shelf.WALNUTS,
                    Shelf.PECANS,
                    Shelf.CASHEWS,
                    Shelf.DESICCATED_COCONUT,
                    Shelf.WAFER_CONE,
                    Shelf.SUGAR_CONE,
                    Shelf.GRAHAM_BISCUIT);

    private static final Pattern NAMED =
            Pattern.compile(
                    "\\b(raisins?|sultanas?|dried fruit|candied|chips?|chunks?|pieces|chopped|brittle|biscuits?|cookies?|crumbs?|praline|nuts)\\b");

    /** Above this water a piece is fruit or sauce, which mixes; % by mass, judgement. */
    private static final double DRY_PERCENT = 35;

    /**
     * Of the sugars of dried fruit, what an hour of soaking gives up (rule of thumb, no source), %.
     */
    public static final double GIVEN_UP_PERCENT = 10;

    /** Copies the list. */
    public Pieces {
        folded = List.copyOf(folded);
    }

    /**
     * Splits a batch.
     *
     * @param batch everything in the recipe
     * @return mix and pieces; all of it as the mix if nothing else would be left
     */
    public static Pieces of(Mix batch) {
        List<Amount> folded = new ArrayList<>();
        List<Amount> mixed = new ArrayList<>();
        for (Amount amount : batch.amounts()) {
            (isPiece(amount.ingredient()) ? folded : mixed).add(amount);
        }
        boolean freezes =
                mixed.stream()
                        .anyMatch(
                                one ->
                                        one.massG() > 0
                                                && one.ingredient()
                                                                .composition()
                                                                .percent(Component.WATER)
                                                        > 0);
        return folded.isEmpty() || !freezes
                ? new Pieces(batch, List.of())
                : new Pieces(Mix.of(mixed), folded);
    }

    /** {@return true for nuts, dried fruit, chips and biscuits, by their names} */
    public static boolean isPiece(Ingredient ingredient) {
        return WHOLE.contains(ingredient)
                || ingredient.composition().percent(Component.WATER) < DRY_PERCENT
                        && NAMED.matcher(ingredient.name().toLowerCase(Locale.ROOT)).find();
    }

    /** {@return % of the whole batch} */
    public double sharePercent() {
        double g = folded.stream().mapToDouble(Amount::massG).sum();
        return 100 * g / (g + mix.massG());
    }

    /**
     * The whole batch with another mix.
     *
     * @param changed the mix after a change
     * @return mix and pieces together
     */
    public Mix with(Mix changed) {
        return changed.with(folded.toArray(Amount[]::new));
    }

    /**
     * Sugar that dried fruit gives up to the mix if it is soaked.
     *
     * @return g; empty if no piece is dried fruit
     */
    public Optional<Double> sugarGivenUpG() {
        double g =
                folded.stream()
                        .filter(
                                one ->
                                        one.ingredient().composition().percent(Component.FRUCTOSE)
                                                > 10)
                        .mapToDouble(
                                one ->
                                        one.massG()
                                                * one.ingredient()
                                                        .composition()
                                                        .percent(Component.Kind.SUGAR)
                                                / 100
                                                * GIVEN_UP_PERCENT
                                                / 100)
                        .sum();
        return g > 0 ? Optional.of(g) : Optional.empty();
    }
}
