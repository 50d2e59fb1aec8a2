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

    /**
     * The same with more water.
     *
     * @param moreWaterG water to add, g
     */
    public GordonTaylor withWater(double moreWaterG) {
        return new GordonTaylor(waterG + Require.notNegative("moreWaterG", moreWaterG, "g"), dryG);
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

    /**
     * {@return the water that brings the glass transition down to a temperature, g per 100 g of dry
     * matter}
     *
     * @param temperatureC wanted glass transition, °C, above that of water and below that of the
     *     dry blend
     * @throws IllegalArgumentException if no amount of water does
     */
    public double waterPer100gDryAt(double temperatureC) {
        double pull = 0;
        double weight = 0;
        double dry = 0;
        for (Map.Entry<SugarGlass, Double> e : dryG.entrySet()) {
            double w = e.getValue() / e.getKey().gordonTaylorConstant();
            pull += w * e.getKey().dryGlassTransitionC().middle();
            weight += w;
            dry += e.getValue();
        }
        Require.positive("dry mass of the blend", dry, "g");
        Require.within(
                "temperatureC", temperatureC, new Require.Range(WATER_C + 1, pull / weight, "°C"));
        double water = (pull - weight * temperatureC) / (temperatureC - WATER_C);
        return 100 * water / dry;
    }
}
