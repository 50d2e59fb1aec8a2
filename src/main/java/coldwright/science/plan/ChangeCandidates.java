package coldwright.science.plan;

import coldwright.science.balance.AmountChange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The cheapest ways to keep to the rows of a model with one, two or three ingredients. */
final class ChangeCandidates {
    /** A change of one ingredient more counts as much as moving this much, % of the batch. */
    private static final double EACH = 1.5;

    /** Buying an ingredient likewise, %. */
    private static final double BOUGHT = 1;

    private final LinearModel model;
    private final LinearModel.Rows rows;
    private final List<Way> ways = new ArrayList<>();

    /** Some levers with their grams. */
    private record Way(double cost, List<AmountChange> changes) {}

    private ChangeCandidates(LinearModel model, LinearModel.Rows rows) {
        this.model = model;
        this.rows = rows;
    }

    /**
     * Finds ways.
     *
     * @param model the levers and their effects
     * @param rows what they must keep to
     * @param three whether three ingredients are moved; otherwise one or two
     * @return amounts to add and take out, the cheapest first, as scales show them; empty if so
     *     many ingredients can't
     */
    static List<List<AmountChange>> of(LinearModel model, LinearModel.Rows rows, boolean three) {
        ChangeCandidates all = new ChangeCandidates(model, rows);
        int count = model.levers().size();
        for (int i = 0; i < count; i++) {
            if (!three) {
                all.tryLevers(i);
            }
            for (int j = i + 1; j < count; j++) {
                if (!three) {
                    all.tryLevers(i, j);
                }
                for (int k = j + 1; three && k < count; k++) {
                    all.tryLevers(i, j, k);
                }
            }
        }
        return all.ways.stream()
                .sorted(Comparator.comparingDouble(Way::cost))
                .map(Way::changes)
                .toList();
    }

    private void tryLevers(int... chosen) {
        double[] cost = new double[chosen.length];
        double[] most = new double[chosen.length];
        double fixed = 0;
        for (int j = 0; j < chosen.length; j++) {
            Lever lever = model.levers().get(chosen[j]);
            for (int before = 0; before < j; before++) {
                if (lever.opposes(model.levers().get(chosen[before]))) {
                    return;
                }
            }
            cost[j] = lever.costPerG(model.massG());
            most[j] = lever.mostG();
            fixed += EACH + (lever.bought() ? BOUGHT : 0);
        }
        double[] grams = SmallProgram.solve(cost, rows.of(chosen), rows.b(), most);
        if (grams == null) {
            return;
        }
        List<AmountChange> changes = new ArrayList<>();
        double sum = fixed;
        for (int j = 0; j < chosen.length; j++) {
            Lever lever = model.levers().get(chosen[j]);
            double g = ScaleRounding.roundedG(grams[j]);
            if (!(g > 0 && g >= lever.leastG(model.massG()))) {
                return;
            }
            changes.add(new AmountChange(lever.sign() * g, lever.ingredient()));
            sum += cost[j] * grams[j];
        }
        changes.sort(Comparator.comparingDouble(change -> -Math.abs(change.massG())));
        ways.add(new Way(sum, changes));
    }
}
