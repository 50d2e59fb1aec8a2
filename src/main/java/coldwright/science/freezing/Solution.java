package coldwright.science.freezing;

import coldwright.science.Require;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Things dissolved in water, by mass: the part of a mix that decides how it freezes.
 *
 * <p>Immutable: {@link #with} gives a new solution and leaves this one as it was.
 *
 * <pre>{@code
 * var syrup = Solution.inWater(70).with(30, Solute.SUCROSE);
 * syrup.freezingPointC();                                    // −2.64
 * syrup.with(5, Solute.ETHANOL).freezingPointC();            // lower
 * }</pre>
 *
 * @param waterG water, g, more than zero
 * @param massG each solute's mass, g
 * @param idealMillimol particles counted as ideal, by name, mmol
 */
public record Solution(
        double waterG, Map<Solute, Double> massG, Map<String, Double> idealMillimol) {
    /**
     * Checks and copies.
     *
     * @throws IllegalArgumentException if there is no water or an amount is negative
     */
    public Solution {
        Require.positive("waterG", waterG, "g");
        EnumMap<Solute, Double> solutes = new EnumMap<>(Solute.class);
        massG.forEach(
                (solute, g) ->
                        solutes.put(
                                solute, Require.notNegative(solute.spoken() + " massG", g, "g")));
        massG = Collections.unmodifiableMap(solutes);
        LinkedHashMap<String, Double> ideal = new LinkedHashMap<>();
        idealMillimol.forEach(
                (what, mmol) ->
                        ideal.put(what, Require.notNegative(what + " millimol", mmol, "mmol")));
        idealMillimol = Collections.unmodifiableMap(ideal);
    }

    /**
     * Pure water to begin with.
     *
     * @param waterG water, g, more than zero
     * @return a solution of nothing yet
     * @throws IllegalArgumentException if there is no water
     */
    public static Solution inWater(double waterG) {
        return new Solution(waterG, Map.of(), Map.of());
    }

    /**
     * The same with more of a solute.
     *
     * @param massG mass to add, g, zero or more
     * @param solute what to add, without crystal water
     * @return the new solution
     * @throws IllegalArgumentException if the mass is negative or not a number
     */
    public Solution with(double massG, Solute solute) {
        Require.notNegative("massG", massG, "g");
        EnumMap<Solute, Double> more = new EnumMap<>(Solute.class);
        more.putAll(this.massG);
        more.merge(solute, massG, Double::sum);
        return new Solution(waterG, more, idealMillimol);
    }

    /**
     * The same with more particles that behave ideally, such as the salts of milk.
     *
     * @param millimol particles (osmoles), mmol, zero or more
     * @param what what they are, for the notes
     * @return the new solution
     * @throws IllegalArgumentException if the amount is negative or not a number
     */
    public Solution withIdealParticles(double millimol, String what) {
        Require.notNegative("millimol", millimol, "mmol");
        LinkedHashMap<String, Double> more = new LinkedHashMap<>(idealMillimol);
        more.merge(what, millimol, Double::sum);
        return new Solution(waterG, massG, more);
    }

    /**
     * Total mass.
     *
     * @return water and solutes, g; ideal particles carry no mass here
     */
    public double totalG() {
        return waterG + massG.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    /**
     * A solute's share.
     *
     * @param solute which
     * @return % by mass of the solution
     */
    public double massPercent(Solute solute) {
        return 100 * massG.getOrDefault(solute, 0.0) / totalG();
    }

    /**
     * Water activity.
     *
     * @param temperatureC temperature, °C, −60 to 120
     * @return water activity, 0 to 1
     */
    public double waterActivity(double temperatureC) {
        coldwright.science.Temperature.require("temperatureC", temperatureC);
        return Math.exp(-minusLn(1));
    }

    /**
     * Where ice and this solution rest together.
     *
     * @return °C, 0 or below
     */
    public double freezingPointC() {
        return IceActivity.temperatureOfMinusLnC(minusLn(1));
    }

    /**
     * How much of the water is ice at each temperature.
     *
     * @return the curve
     */
    public FreezingCurve freezingCurve() {
        return new FreezingCurve(this);
    }

    /**
     * Where the answer leaves the range of its sources.
     *
     * @return remarks, empty if none
     */
    public List<String> notes() {
        return List.of();
    }

    double minusLn(double liquidShare) {
        double kg = waterG * liquidShare / 1000;
        double sum = 0;
        for (Map.Entry<Solute, Double> e : massG.entrySet()) {
            Solute s = e.getKey();
            sum += s.binding().minusLn(e.getValue() / s.molarMassGPerMol() / kg);
        }
        for (double mmol : idealMillimol.values()) {
            sum += mmol / 1000 / kg / WaterBinding.WATER_MOL_PER_KG;
        }
        return sum;
    }
}
