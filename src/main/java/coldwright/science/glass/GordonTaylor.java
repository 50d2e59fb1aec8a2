package coldwright.science.glass;

import coldwright.science.Require;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * The glass transition of a blend, as a weighted mean of its parts.
 *
 * <p>Equation: Tg = Σ wᵢ Tgᵢ/kᵢ / Σ wᵢ/kᵢ over all parts, water with k = 1 and Tg = −135 °C. For
 * one dry part and water this is M. Gordon and J. S. Taylor's Tg = (w₁Tg₁ + k w₂Tg₂)/(w₁ + k w₂),
 * J. Appl. Chem. 2 (1952) 493; for several dry parts the same rule is extended, which is common
 * practice, not a published fit.
 *
 * <p>Error: one sugar and water about ±3 °C up to 30 % water; blends about ±10 °C.
 *
 * @param waterG water, g
 * @param dryG each dry part, g
 */
public record GordonTaylor(double waterG, Map<SugarGlass, Double> dryG) {
    /** Glass transition of water, °C; seen as −135, published from −139 to −135. */
    public static final double WATER_C = -135;

    public GordonTaylor {
        Require.notNegative("waterG", waterG, "g");
        EnumMap<SugarGlass, Double> checked = new EnumMap<>(SugarGlass.class);
        dryG.forEach((part, g) -> checked.put(part, Require.notNegative(part + " dryG", g, "g")));
        double sum = waterG + checked.values().stream().mapToDouble(Double::doubleValue).sum();
        Require.positive("mass of the blend", sum, "g");
        dryG = Collections.unmodifiableMap(checked);
    }

    /**
     * One dry part and water.
     *
     * @param dryPercent the dry part, % by mass, 0 to 100
     */
    public static GordonTaylor of(double dryPercent, SugarGlass part) {
        Require.within("dryPercent", dryPercent, new Require.Range(0, 100, "% by mass"));
        return new GordonTaylor(100 - dryPercent, Map.of(part, dryPercent));
    }

    /** {@return the glass transition, °C} */
    public double glassTransitionC() {
        double pull = waterG * WATER_C;
        double weight = waterG;
        for (Map.Entry<SugarGlass, Double> e : dryG.entrySet()) {
            double w = e.getValue() / e.getKey().gordonTaylorConstant();
            pull += w * e.getKey().dryGlassTransitionC().middle();
            weight += w;
        }
        return pull / weight;
    }
}
