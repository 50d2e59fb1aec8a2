package coldwright.science.plan;

import coldwright.science.freezing.FreezingCurve;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.sensory.Firmness;
import coldwright.science.style.DietRules;
import coldwright.science.style.Style;
import coldwright.science.style.StyleQuantity;
import coldwright.science.style.StyleRange;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * The usual ranges as linear rows over the grams that levers move.
 *
 * <p>A range of a share of the mass is exactly linear once it is multiplied by the mass. Ice is
 * nearly so: by Zdanovskii's rule each ingredient keeps its own amount of water liquid, whatever
 * else is in it. That amount is read from the batch with a little of the ingredient, and with much
 * water, so that it is found even where the batch itself would be liquid.
 */
final class LinearModel {
    /** All that an ingredient moves. */
    private static final Set<StyleQuantity> JUDGED =
            EnumSet.complementOf(
                    EnumSet.of(
                            StyleQuantity.OVERRUN, StyleQuantity.SERVING, StyleQuantity.CRYSTALS));

    /** Quantities with a limit of taste. */
    static final Set<StyleQuantity> TASTED =
            EnumSet.of(
                    StyleQuantity.SALT,
                    StyleQuantity.ACID,
                    StyleQuantity.ALCOHOL,
                    StyleQuantity.GUM,
                    StyleQuantity.STARCH,
                    StyleQuantity.SWEETNESS);

    /** Steps beyond a range that aren't worth a sentence yet. */
    private static final double UNTOLD = 0.15;

    /** Times so much of a taste can't be told from as much as before (judgement). */
    static final double AS_MUCH = 1.02;

    /** Water added to read what solutes keep liquid, as a share of the batch. */
    private static final double DILUTED = 20;

    /** A lever that moves a quantity by less, in steps, doesn't move it. */
    private static final double MOVES_STEPS = 0.1;

    /** The ingredient added to read its effect, as a share of the batch. */
    private static final double PROBE = 0.01;

    private final BatchState state;
    private final Mix mix;
    private final List<Lever> levers;
    private final Map<Ingredient, Effect> effects = new HashMap<>();
    private final Effect whole;

    /** What a gram of an ingredient brings; of the whole batch: what all its grams bring. */
    private record Effect(
            Map<StyleQuantity, Double> percents, double massG, double waterG, double[] liquidG) {}

    LinearModel(BatchState state, List<Lever> levers) {
        this.state = state;
        this.mix = state.pieces().mix();
        this.levers = levers;
        double[] liquid = liquidG(mix);
        whole = new Effect(Map.of(), mix.massG(), mix.massG() * mix.waterPercent() / 100, liquid);
        for (Lever lever : levers) {
            effects.computeIfAbsent(lever.ingredient(), one -> effect(one, liquid));
        }
    }

    private Effect effect(Ingredient ingredient, double[] before) {
        Mix alone = Mix.of(Amount.grams(100, ingredient));
        Map<StyleQuantity, Double> percents = new HashMap<>();
        for (StyleQuantity quantity : JUDGED) {
            if (quantity.isByMass()) {
                percents.put(quantity, quantity.of(alone));
            }
        }
        double probeG = PROBE * mix.massG();
        double[] after = liquidG(mix.with(Amount.grams(probeG, ingredient)));
        return new Effect(
                percents,
                1,
                alone.waterPercent() / 100,
                new double[] {(after[0] - before[0]) / probeG, (after[1] - before[1]) / probeG});
    }

    /** Water that the solutes keep liquid at serving and in the cold that freezes it, g. */
    private double[] liquidG(Mix of) {
        FreezingCurve curve = of.solution().withWater(DILUTED * mix.massG()).freezingCurve();
        double waterG = of.massG() * of.waterPercent() / 100 + DILUTED * mix.massG();
        return new double[] {
            waterG - curve.iceG(state.making().servingC()),
            waterG - curve.iceG(state.frozen().coldC())
        };
    }

    List<Lever> levers() {
        return levers;
    }

    double massG() {
        return mix.massG();
    }

    /** Rows a·x ≤ b over all levers. */
    record Rows(double[][] a, double[] b) {
        /** The rows of a few levers. */
        double[][] of(int... chosen) {
            double[][] some = new double[a.length][chosen.length];
            for (int i = 0; i < a.length; i++) {
                for (int j = 0; j < chosen.length; j++) {
                    some[i][j] = a[i][chosen[j]];
                }
            }
            return some;
        }
    }

    /**
     * The rows for a plan.
     *
     * @param required the faults that it must resolve; no other quantity may leave its range or
     *     become worse
     * @param margin how far inside a resolved quantity must be, in steps
     * @param mostMoved the most that may be moved, as a share of the batch
     */
    Rows rows(Set<BatchFault> required, double margin, double mostMoved) {
        List<double[]> a = new ArrayList<>();
        List<Double> b = new ArrayList<>();
        for (StyleQuantity quantity : JUDGED) {
            if (!Faults.judges(quantity, state)) {
                continue;
            }
            StyleRange range = state.range(quantity);
            double value = state.of(quantity);
            double inside = margin * quantity.step();
            boolean low = required.stream().anyMatch(f -> f.quantity() == quantity && !f.above());
            boolean high = required.stream().anyMatch(f -> f.quantity() == quantity && f.above());
            StyleRange keep = low || high ? range : kept(quantity, range, value);
            double least = low ? range.least() + inside : Math.min(value, keep.least());
            double most = high ? range.most() - inside : most(quantity, value, keep);
            if (Double.isFinite(least)) {
                add(a, b, quantity, least, -1);
            }
            if (Double.isFinite(most)) {
                add(a, b, quantity, Math.max(most, low ? least : most), 1);
            }
        }
        for (int sign : new int[] {1, -1}) {
            a.add(
                    levers.stream()
                            .mapToDouble(lever -> lever.sign() == sign ? 1 / mix.massG() : 0)
                            .toArray());
            b.add(mostMoved);
        }
        return new Rows(
                a.toArray(double[][]::new), b.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /**
     * Where a change may lead a quantity that it needn't resolve: not out of its range, or no
     * further. Limits of taste are exact, the others may be passed by less than is worth a
     * sentence. Sweetness moves by a step at most, or to the middle of its range, because it is the
     * first thing that is tasted.
     */
    private StyleRange kept(StyleQuantity quantity, StyleRange range, double value) {
        if (state.wanted().containsKey(quantity)) {
            return range;
        }
        double step = quantity.step();
        double middle = (range.least() + range.most()) / 2;
        boolean lessSugar = state.diet().rules().contains(DietRules.Rule.LESS_SUGAR);
        double most =
                switch (quantity) {
                    case ALCOHOL -> 0;
                    case SALT -> Math.min(Style.MOST_SALT_PERCENT, range.most());
                    case SUGARS -> lessSugar ? 0 : range.most();
                    case SWEETNESS -> Math.min(range.most(), Math.max(middle, value + step));
                    case ACID, GUM, STARCH -> range.most();
                    default -> range.most() + UNTOLD * step;
                };
        double least =
                quantity == StyleQuantity.SWEETNESS
                        ? Math.max(range.least(), Math.min(middle, value - step))
                        : range.least() - UNTOLD * step;
        return new StyleRange(least, most, range.source());
    }

    /** The most of a quantity that no plan exceeds: its limit, or what is in the batch already. */
    double most(StyleQuantity quantity) {
        double value = state.of(quantity);
        StyleRange range = state.range(quantity);
        return range.beyond(value) > 0
                ? value * AS_MUCH
                : most(quantity, value, kept(quantity, range, value));
    }

    /**
     * What is beyond a limit of taste already may rise a little because other things are taken out;
     * otherwise a plan would take out a tenth of a gram of salt.
     */
    private static double most(StyleQuantity quantity, double value, StyleRange keep) {
        boolean beyond = TASTED.contains(quantity) && value > keep.most();
        return beyond ? value * AS_MUCH : Math.max(value, keep.most());
    }

    /** Whether any lever moves the quantity of a fault the right way at all. */
    boolean moves(BatchFault fault) {
        List<double[]> a = new ArrayList<>();
        add(
                a,
                new ArrayList<>(),
                fault.quantity(),
                state.of(fault.quantity()),
                fault.above() ? 1 : -1);
        for (double[] row : a) {
            for (int j = 0; j < row.length; j++) {
                if (row[j] * levers.get(j).mostG() < -MOVES_STEPS) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Adds the row that keeps a quantity below (side 1) or above (side −1) a bound. */
    private void add(
            List<double[]> a, List<Double> b, StyleQuantity quantity, double bound, int side) {
        if (quantity.isByMass()) {
            double scale = quantity.step() * mix.massG();
            row(a, effect -> side * (effect.percents().get(quantity) - bound) / scale);
            b.add(side * (bound - quantity.of(mix)) / quantity.step());
            return;
        }
        int at = quantity == StyleQuantity.ICE ? 0 : 1;
        double part = bound / 100;
        boolean spoon = quantity == StyleQuantity.ICE;
        boolean drier = mix.waterPercent() < Firmness.ORDINARY_WATER_PERCENT;
        if (!(spoon && drier && side > 0)) {
            ice(a, b, at, side, part, quantity.step(), Effect::waterG);
        }
        if (spoon && (drier || side < 0)) {
            double ordinary = Firmness.ORDINARY_WATER_PERCENT / 100;
            ice(a, b, at, side, part, quantity.step(), one -> ordinary * one.massG());
        }
    }

    /** The row for ice as a part of the water, or of the water of an ordinary mix. */
    private void ice(
            List<double[]> a,
            List<Double> b,
            int at,
            int side,
            double part,
            double step,
            ToDoubleFunction<Effect> ofG) {
        double scale = step / 100 * ofG.applyAsDouble(whole);
        ToDoubleFunction<Effect> beyond =
                one ->
                        side
                                * (one.waterG() - one.liquidG()[at] - part * ofG.applyAsDouble(one))
                                / scale;
        row(a, beyond);
        b.add(-beyond.applyAsDouble(whole));
    }

    private void row(List<double[]> a, ToDoubleFunction<Effect> perGram) {
        double[] row = new double[levers.size()];
        for (int j = 0; j < row.length; j++) {
            Lever lever = levers.get(j);
            row[j] = lever.sign() * perGram.applyAsDouble(effects.get(lever.ingredient()));
        }
        a.add(row);
    }
}
