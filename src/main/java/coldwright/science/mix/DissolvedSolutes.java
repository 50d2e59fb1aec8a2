package coldwright.science.mix;

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
    private static final Map<Component, Solute> SOLUTES = new EnumMap<>(Component.class);

    /** Acetic acid has no solute of its own and is counted as ideal, by its molar mass. */
    private static final double ACETIC_ACID_G_PER_MOL = 60.05;

    static {
        SOLUTES.put(Component.SUCROSE, Solute.SUCROSE);
        SOLUTES.put(Component.GLUCOSE, Solute.GLUCOSE);
        SOLUTES.put(Component.FRUCTOSE, Solute.FRUCTOSE);
        SOLUTES.put(Component.LACTOSE, Solute.LACTOSE);
        SOLUTES.put(Component.MALTOSE, Solute.MALTOSE);
        SOLUTES.put(Component.GALACTOSE, Solute.GALACTOSE);
        SOLUTES.put(Component.TREHALOSE, Solute.TREHALOSE);
        SOLUTES.put(Component.SORBITOL, Solute.SORBITOL);
        SOLUTES.put(Component.GLYCEROL, Solute.GLYCEROL);
        SOLUTES.put(Component.ALLULOSE, Solute.ALLULOSE);
        SOLUTES.put(Component.ISOMALTULOSE, Solute.ISOMALTULOSE);
        SOLUTES.put(Component.ERYTHRITOL, Solute.ERYTHRITOL);
        SOLUTES.put(Component.XYLITOL, Solute.XYLITOL);
        SOLUTES.put(Component.MALTITOL, Solute.MALTITOL);
        SOLUTES.put(Component.ISOMALT, Solute.ISOMALT);
        SOLUTES.put(Component.LACTITOL, Solute.LACTITOL);
        SOLUTES.put(Component.MANNITOL, Solute.MANNITOL);
        SOLUTES.put(Component.ALCOHOL, Solute.ETHANOL);
        SOLUTES.put(Component.SALT, Solute.SODIUM_CHLORIDE);
        SOLUTES.put(Component.POTASSIUM_CHLORIDE, Solute.POTASSIUM_CHLORIDE);
        SOLUTES.put(Component.CALCIUM_CHLORIDE, Solute.CALCIUM_CHLORIDE);
        SOLUTES.put(Component.CITRIC_ACID, Solute.CITRIC_ACID);
        SOLUTES.put(Component.MALIC_ACID, Solute.MALIC_ACID);
        SOLUTES.put(Component.TARTARIC_ACID, Solute.TARTARIC_ACID);
        SOLUTES.put(Component.LACTIC_ACID, Solute.LACTIC_ACID);
    }

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
        IDEALS.put(
                Component.ACETIC_ACID.words(),
                c -> 1000 * c.percent(Component.ACETIC_ACID) / ACETIC_ACID_G_PER_MOL);
        IDEALS.put(
                "intense sweeteners",
                c ->
                        1000
                                        * c.percent(Component.STEVIOL_GLYCOSIDES)
                                        / STEVIOL_GLYCOSIDES_G_PER_MOL
                                + 1000 * c.percent(Component.SUCRALOSE) / SUCRALOSE_G_PER_MOL);
    }

    private DissolvedSolutes() {}

    static Solution solution(Mix mix) {
        double hundreds = mix.massG() / 100;
        double waterG = requireWater(mix);
        Composition whole = mix.composition();
        Map<Solute, Double> massG = new EnumMap<>(Solute.class);
        SOLUTES.forEach(
                (component, solute) -> {
                    if (whole.percent(component) > 0) {
                        massG.put(solute, hundreds * whole.percent(component));
                    }
                });
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
        SOLUTES.forEach(
                (component, solute) ->
                        share(
                                weights,
                                mix,
                                solute.displayName(),
                                c -> c.percent(component),
                                Solution.inWater(whole.waterG())
                                        .with(whole.massG().getOrDefault(solute, 0.0), solute)));
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

    private static double requireWater(Mix mix) {
        double waterG = mix.massG() * mix.waterPercent() / 100;
        if (waterG > 0) {
            return waterG;
        }
        throw new IllegalArgumentException(
                "this mix has no water, so it has no freezing point: add water, milk or juice");
    }
}
