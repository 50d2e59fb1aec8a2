package coldwright.science.mix;

import coldwright.science.Require;
import coldwright.science.freezing.Solute;
import coldwright.science.freezing.Solution;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** The solutes of a mix that lower its freezing point: sugars, salts, alcohol and acids. */
final class DissolvedSolutes {
    /** Acetic acid has no solute of its own and is counted as ideal, by its molar mass. */
    private static final double ACETIC_ACID_G_PER_MOL = 60.05;

    /** Intense sweeteners have no solute either; their few molecules are counted as ideal. */
    private static final double STEVIOL_GLYCOSIDES_G_PER_MOL = 804.9;

    private static final double SUCRALOSE_G_PER_MOL = 397.6;

    /** Particles counted as ideal, in mmol per 100 g of a composition. */
    private static final Map<String, ToDoubleFunction<Composition>> IDEALS = new LinkedHashMap<>();

    static {
        IDEALS.put(
                "milk salts",
                c ->
                        MilkSolids.IONS_MMOL_PER_G
                                * (c.per100g(Tally.MILK_SOLIDS_NOT_FAT)
                                        + c.per100g(Tally.WHEY_SOLIDS)));
        IDEALS.put("other ions", c -> c.per100g(Tally.IONS_MMOL));
        IDEALS.put("higher saccharides", c -> c.per100g(Tally.HIGHER_SACCHARIDES_MMOL));
        IDEALS.put(Component.ACETIC_ACID.words(), DissolvedSolutes::aceticAcidMmol);
        IDEALS.put(
                "intense sweeteners",
                c ->
                        1000
                                        * c.percent(Component.STEVIOL_GLYCOSIDES)
                                        / STEVIOL_GLYCOSIDES_G_PER_MOL
                                + 1000 * c.percent(Component.SUCRALOSE) / SUCRALOSE_G_PER_MOL);
    }

    private DissolvedSolutes() {}

    static double aceticAcidMmol(Composition per100g) {
        return 1000 * per100g.percent(Component.ACETIC_ACID) / ACETIC_ACID_G_PER_MOL;
    }

    static Solution solution(Mix mix) {
        double hundreds = mix.massG() / 100;
        double waterG = mix.massG() * mix.waterPercent() / 100;
        if (!(waterG > 0)) {
            throw Require.fault("science.mix", "fault.no-water");
        }
        Composition whole = mix.composition();
        Map<Solute, Double> massG = new EnumMap<>(Solute.class);
        for (Component component : Component.values()) {
            if (component.solute().isPresent() && whole.percent(component) > 0) {
                massG.put(component.solute().get(), hundreds * whole.percent(component));
            }
        }
        Map<String, Double> ideal = new LinkedHashMap<>();
        IDEALS.forEach(
                (what, per100g) -> {
                    double millimol = hundreds * per100g.applyAsDouble(whole);
                    if (millimol > 0) {
                        ideal.put(what, millimol);
                    }
                });
        return new Solution(waterG, massG, ideal);
    }

    /**
     * Splits the freezing point depression by ingredient and solute.
     *
     * <p>A solute's weight is its own −ln of water activity, alone in all the water of the mix.
     * Together solutes act a little differently, so these weights don't add up to the whole: the
     * depression of the mix is divided in their proportion, and within a solute by the mass from
     * each ingredient.
     */
    static List<Contribution> contributions(Mix mix) {
        Solution whole = solution(mix);
        double depressionC = -whole.freezingPointC();
        List<Contribution> weights = new ArrayList<>();
        for (Component component : Component.values()) {
            component
                    .solute()
                    .ifPresent(
                            solute ->
                                    share(
                                            weights,
                                            mix,
                                            solute.displayName(),
                                            c -> c.percent(component),
                                            Solution.inWater(whole.waterG())
                                                    .with(
                                                            whole.massG().getOrDefault(solute, 0.0),
                                                            solute)));
        }
        IDEALS.forEach(
                (what, per100g) ->
                        share(
                                weights,
                                mix,
                                what,
                                per100g,
                                Solution.inWater(whole.waterG())
                                        .withIdealParticles(
                                                whole.idealMillimol().getOrDefault(what, 0.0),
                                                what)));
        double sum = weights.stream().mapToDouble(Contribution::sharePercent).sum();
        return weights.stream()
                .map(
                        w ->
                                new Contribution(
                                        w.ingredient(),
                                        w.solute(),
                                        100 * w.sharePercent() / sum,
                                        depressionC * w.sharePercent() / sum))
                .sorted((a, b) -> Double.compare(b.sharePercent(), a.sharePercent()))
                .toList();
    }

    private static void share(
            List<Contribution> weights,
            Mix mix,
            String solute,
            ToDoubleFunction<Composition> per100g,
            Solution alone) {
        double weight = -Math.log(alone.waterActivity(0));
        double total = mix.massG() * per100g.applyAsDouble(mix.composition());
        if (!(weight > 0) || !(total > 0)) {
            return;
        }
        for (Amount amount : mix.amounts()) {
            double part = amount.massG() * per100g.applyAsDouble(amount.ingredient().composition());
            if (part > 0) {
                weights.add(
                        new Contribution(amount.ingredient(), solute, weight * part / total, 0));
            }
        }
    }
}
