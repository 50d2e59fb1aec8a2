package coldwright.science.plan;

import coldwright.science.mix.Amount;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.style.DietRules;
import coldwright.science.style.Pieces;
import coldwright.science.style.Style;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * One ingredient that a plan may move, in one direction.
 *
 * @param ingredient the ingredient
 * @param role what it is for
 * @param sign 1 to add, −1 to take out
 * @param mostG the most that may be moved, g
 * @param cost how much 1 % of the batch of it counts
 * @param bought whether it isn't in the batch; water comes from the tap
 */
record Lever(
        Ingredient ingredient,
        IngredientRole role,
        int sign,
        double mostG,
        double cost,
        boolean bought) {
    private static final double WATER_IN_MILK = 4;
    private static final double LEAST_SHARE = 0.004;

    /**
     * The levers of a batch: for each role the ingredient of which there is most, and what may be
     * bought. Their number doesn't grow with that of the ingredients.
     *
     * @param mix the mix, without pieces
     * @param diet what may be added
     * @param style decides which roles belong in it
     */
    static List<Lever> of(Mix mix, DietRules diet, Style style) {
        Map<IngredientRole, Amount> most = new EnumMap<>(IngredientRole.class);
        for (Amount amount : mix.amounts()) {
            if (amount.massG() > 0 && !Pieces.isPiece(amount.ingredient())) {
                most.merge(
                        IngredientRole.of(amount.ingredient()),
                        amount,
                        (a, b) -> a.massG() >= b.massG() ? a : b);
            }
        }
        List<Lever> levers = new ArrayList<>();
        for (IngredientRole role : IngredientRole.values()) {
            Set<Ingredient> more = new LinkedHashSet<>();
            if (most.containsKey(role)) {
                Amount amount = most.get(role);
                more.add(amount.ingredient());
                double lessG = amount.massG() * role.mostLessPercent() / 100;
                if (mix.amounts().size() > 1) {
                    levers.add(new Lever(amount.ingredient(), role, -1, lessG, role.cost(), false));
                }
            }
            if (belongs(role, style)) {
                more.addAll(role.larder());
            }
            double moreG = mix.massG() * role.mostMorePercent() / 100;
            for (Ingredient one : more) {
                if (moreG > 0 && diet.mayAdd(mix, one)) {
                    boolean bought = role != IngredientRole.WATER && !(mix.massG(one) > 0);
                    levers.add(new Lever(one, role, 1, moreG, cost(role, style), bought));
                }
            }
        }
        return levers;
    }

    /** Whether what a role needs may be bought for a style. */
    private static boolean belongs(IngredientRole role, Style style) {
        return switch (role) {
            case YOLK -> style == Style.CUSTARD;
            case PLANT_FAT, PLANT_CREAM -> style == Style.VEGAN;
            case MILK, CREAM, MILK_POWDER ->
                    style != Style.SORBET && style != Style.GRANITA && style != Style.VEGAN;
            default -> true;
        };
    }

    /** Water thins what is made of milk, so there it comes last. */
    private static double cost(IngredientRole role, Style style) {
        boolean watery =
                style == Style.SORBET
                        || style == Style.SHERBET
                        || style == Style.GRANITA
                        || style == Style.LOLLY;
        return role == IngredientRole.WATER && !watery ? WATER_IN_MILK * role.cost() : role.cost();
    }

    /** The same, as far as one likes: in another recipe. */
    Lever free() {
        double most = sign > 0 ? 1e6 : mostG * 100 / role.mostLessPercent();
        return new Lever(ingredient, role, sign, most, cost, bought);
    }

    /** Less of it isn't worth a change, g: 0.4 % of the batch, but of gums and salt any amount. */
    double leastG(double batchG) {
        return role == IngredientRole.STABILISER || role == IngredientRole.SALT
                ? 0
                : LEAST_SHARE * batchG;
    }

    /** Cost of a gram, in % of the batch. */
    double costPerG(double batchG) {
        return 100 * cost / batchG;
    }

    /** Whether two levers must not be in one plan, because they would work against each other. */
    boolean opposes(Lever other) {
        return role == other.role;
    }
}
