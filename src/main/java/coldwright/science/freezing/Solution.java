package coldwright.science.freezing;

import coldwright.science.Commented;
import coldwright.science.Require;
import coldwright.science.Temperature;
import coldwright.words.Phrase;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Solutes and water, by mass: the part of a mix that decides how it freezes.
 *
 * <p>Immutable: {@link #with} gives a new solution and leaves this one as it was.
 *
 * <pre>{@code
 * var syrup = Solution.inWater(70).with(30, Solute.SUCROSE);
 * syrup.freezingPointC();                               // −2.65
 * syrup.with(5, Solute.ETHANOL).freezingPointC();       // −5.94
 * syrup.freezingCurve().icePercentAt(-18);              // 78.7 % of the water
 * }</pre>
 *
 * <p>Models: {@link IceActivity} for the ice, {@link Solute} for each solute, {@code IceLine} and
 * {@code SoluteMixture} for their mixture. Expected error of the freezing point: 0.05 °C down to −2
 * °C, below that 2 % of the depression for sugars and milk salts, 5 % where alcohol or much salt
 * meets sugar. {@link #notes} warns when an answer leaves the range of its sources.
 *
 * @param waterG water, g, more than zero
 * @param massG each solute's mass, g, without crystal water
 * @param idealMillimol particles counted as ideal, by name, mmol
 */
public record Solution(double waterG, Map<Solute, Double> massG, Map<String, Double> idealMillimol)
        implements Commented {
    /**
     * Checks the values and copies the maps.
     *
     * @throws IllegalArgumentException if there is no water or an amount is negative
     */
    public Solution {
        Require.positive("waterG", waterG, "g");
        EnumMap<Solute, Double> solutes = new EnumMap<>(Solute.class);
        massG.forEach(
                (solute, g) ->
                        solutes.put(solute, Require.notNegative(solute.displayName(), g, "g")));
        massG = Collections.unmodifiableMap(solutes);
        LinkedHashMap<String, Double> ideal = new LinkedHashMap<>();
        idealMillimol.forEach(
                (what, mmol) -> ideal.put(what, Require.notNegative(what, mmol, "mmol")));
        idealMillimol = Collections.unmodifiableMap(ideal);
    }

    /**
     * Pure water, to add solutes to.
     *
     * @param waterG water, g, more than zero
     */
    public static Solution inWater(double waterG) {
        return new Solution(waterG, Map.of(), Map.of());
    }

    /**
     * The same with more of a solute.
     *
     * @param moreG mass to add, g, zero or more
     * @param solute what to add, without crystal water
     */
    public Solution with(double moreG, Solute solute) {
        Require.that(solute != null, "the solute is missing; name one, such as Solute.SUCROSE");
        EnumMap<Solute, Double> all = new EnumMap<>(Solute.class);
        all.putAll(massG);
        all.merge(solute, Require.notNegative(solute.displayName(), moreG, "g"), Double::sum);
        return new Solution(waterG, all, idealMillimol);
    }

    /** The same without a solute; it need not be there. */
    public Solution without(Solute solute) {
        EnumMap<Solute, Double> rest = new EnumMap<>(Solute.class);
        rest.putAll(massG);
        rest.remove(solute);
        return new Solution(waterG, rest, idealMillimol);
    }

    /**
     * The same with more water.
     *
     * @param moreG water to add, g, zero or more
     */
    public Solution withWater(double moreG) {
        return new Solution(
                waterG + Require.notNegative("water", moreG, "g"), massG, idealMillimol);
    }

    /**
     * The same with more particles that behave ideally, such as the salts of milk.
     *
     * @param millimol particles (osmoles), mmol, zero or more
     * @param what their name in the notes
     */
    public Solution withIdealParticles(double millimol, String what) {
        LinkedHashMap<String, Double> all = new LinkedHashMap<>(idealMillimol);
        all.merge(what, Require.notNegative(what, millimol, "mmol"), Double::sum);
        return new Solution(waterG, massG, all);
    }

    /** {@return total mass: water and solutes, g; ideal particles carry no mass here} */
    public double totalG() {
        double sum = waterG;
        for (double g : massG.values()) {
            sum += g;
        }
        return sum;
    }

    /** {@return particles counted as ideal, mol} */
    public double idealMol() {
        double sum = 0;
        for (double millimol : idealMillimol.values()) {
            sum += millimol / 1000;
        }
        return sum;
    }

    /** {@return A solute's share, % by mass of the solution} */
    public double massPercent(Solute solute) {
        return 100 * massG.getOrDefault(solute, 0.0) / totalG();
    }

    /**
     * Water activity, as if everything stayed liquid and dissolved.
     *
     * <p>At the freezing point it equals that of ice; the small drift with temperature (heat of
     * dilution; 0.004 for syrup of 60 %, 0.02 for saturated brine, from freezing to 25 °C) is
     * neglected.
     *
     * @param temperatureC temperature, °C, −60 to 120
     * @return water activity, 1 for pure water; never under 0.40, that of ice at −120 °C
     */
    public double waterActivity(double temperatureC) {
        Temperature.require("temperatureC", temperatureC);
        double freezingC = IceLine.allDissolved(this).temperatureC(waterG / 1000);
        return Math.exp(-IceActivity.minusLn(freezingC));
    }

    /**
     * {@return freezing point: the highest temperature at which ice is stable in this solution, °C,
     * 0 or below, −120 at the lowest; brine never below its eutectic}
     */
    public double freezingPointC() {
        return IceLine.of(this).temperatureC(waterG / 1000);
    }

    /**
     * {@return expected error of the freezing point, from the models of the solutes and the mixing
     * rule, °C; about two cases in three are within it}
     */
    public double freezingPointErrorC() {
        return new FreezingPointAccuracy(this).errorC(freezingPointC());
    }

    /** How much of the water is ice at each temperature. */
    public FreezingCurve freezingCurve() {
        return new FreezingCurve(this);
    }

    @Override
    public List<Phrase> comments() {
        return FreezingNotes.of(this, freezingPointC());
    }
}
