package coldwright.science.freezing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;

/** What must hold for any solution, measured or not. */
class FreezingLawsTest {
    /** What the reading of the grid may round away, °C. */
    private static final double ROUNDING_C = 1e-6;

    /** The same for shares of ice, % of the water. */
    private static final double ROUNDING_PERCENT = 1e-5;

    @Property
    void aSoluteMoreNeverRaisesTheFreezingPoint(
            @ForAll("solutions") Solution solution,
            @ForAll Solute solute,
            @ForAll @DoubleRange(min = 0.01, max = 300) double moreG) {
        double before = solution.freezingPointC();
        double after = solution.with(moreG, solute).freezingPointC();
        assertTrue(after <= before + ROUNDING_C, () -> before + " then " + after);
    }

    @Property
    void particlesMoreNeverRaiseTheFreezingPoint(
            @ForAll("solutions") Solution solution,
            @ForAll @DoubleRange(min = 0.01, max = 2000) double millimol) {
        double before = solution.freezingPointC();
        double after = solution.withIdealParticles(millimol, "more ions").freezingPointC();
        assertTrue(after <= before + ROUNDING_C, () -> before + " then " + after);
    }

    @Property
    void waterMoreNeverLowersIt(
            @ForAll("solutions") Solution solution,
            @ForAll @DoubleRange(min = 0.01, max = 1000) double moreG) {
        assertTrue(
                solution.withWater(moreG).freezingPointC()
                        >= solution.freezingPointC() - ROUNDING_C);
    }

    @Property
    void iceNeverGrowsAsItWarmsAndStaysAShare(
            @ForAll("solutions") Solution solution,
            @ForAll @DoubleRange(min = -60, max = 5) double coldC,
            @ForAll @DoubleRange(min = 0, max = 10) double warming) {
        FreezingCurve curve = solution.freezingCurve();
        double cold = curve.icePercentAt(coldC);
        double warm = curve.icePercentAt(coldC + warming);
        assertTrue(warm <= cold + ROUNDING_PERCENT, () -> warm + " after " + cold);
        assertTrue(cold >= 0 && cold <= 100);
    }

    @Property
    void noIceAboveTheInitialFreezingPoint(
            @ForAll("solutions") Solution solution,
            @ForAll @DoubleRange(min = 0, max = 30) double above) {
        FreezingCurve curve = solution.freezingCurve();
        double start = Math.max(-60, curve.initialFreezingPointC());
        assertTrue(start <= 0);
        assertEquals(0, curve.icePercentAt(start + above));
    }

    @Property
    void theCurveReadsThereAndBack(
            @ForAll("solutions") Solution solution,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        FreezingCurve curve = solution.freezingCurve();
        double ice = share * curve.greatestIcePercent();
        double temperatureC = curve.temperatureAtIcePercentC(ice);
        if (temperatureC < 0 && !Notes.onlySalts(solution)) {
            double back = curve.icePercentAt(Math.max(-60, temperatureC));
            assertEquals(ice, back, ROUNDING_PERCENT);
        }
    }

    @Property
    void theRemainingLiquidFreezesWhereItIs(
            @ForAll("solutions") Solution solution,
            @ForAll @DoubleRange(min = -30, max = -0.05) double temperatureC) {
        FreezingCurve curve = solution.freezingCurve();
        double ice = curve.iceG(temperatureC);
        if (ice <= 0 || ice >= solution.waterG() || temperatureC < curve.iceStopsGrowingC()) {
            return;
        }
        Solution left =
                new Solution(solution.waterG() - ice, solution.massG(), solution.idealMillimol());
        assertEquals(temperatureC, left.freezingPointC(), ROUNDING_C);
    }

    @Property
    void sizeDoesNotMatter(
            @ForAll("solutions") Solution solution,
            @ForAll @DoubleRange(min = 0.01, max = 1000) double factor) {
        Map<Solute, Double> massG = new EnumMap<>(Solute.class);
        solution.massG().forEach((solute, g) -> massG.put(solute, g * factor));
        Map<String, Double> ideal = new java.util.LinkedHashMap<>();
        solution.idealMillimol().forEach((what, mmol) -> ideal.put(what, mmol * factor));
        Solution scaled = new Solution(solution.waterG() * factor, massG, ideal);
        assertEquals(solution.freezingPointC(), scaled.freezingPointC(), ROUNDING_C);
    }

    @Property
    void twoSugarsOfOneKindFreezeAsOne(
            @ForAll @DoubleRange(min = 0.1, max = 300) double totalG,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        // Trehalose is modelled as sucrose, so that any split of the sugar must give the same.
        Solution split =
                Solution.inWater(100)
                        .with(share * totalG, Solute.SUCROSE)
                        .with((1 - share) * totalG, Solute.TREHALOSE);
        Solution one = Solution.inWater(100).with(totalG, Solute.SUCROSE);
        assertEquals(one.freezingPointC(), split.freezingPointC(), ROUNDING_C);
    }

    @Property
    void activityFallsForEverWithMolality(
            @ForAll Solute solute,
            @ForAll @DoubleRange(min = 0, max = 400) double molality,
            @ForAll @DoubleRange(min = 0.01, max = 50) double more) {
        WaterBinding binding = solute.binding();
        assertTrue(binding.minusLn(molality + more) > binding.minusLn(molality));
    }

    @Property
    void diluteSolutionsCountParticles(@ForAll("molecules") Solute solute) {
        // 1.860 °C·kg/mol: R T² / ΔH of ice, with IAPWS-06 values.
        double molality = 0.001;
        Solution dilute = Solution.inWater(1000).with(molality * solute.molarMassGPerMol(), solute);
        double perParticle = -dilute.freezingPointC() / molality;
        assertEquals(1.860, perParticle, 0.005, solute::spoken);
    }

    @Provide
    Arbitrary<Solute> molecules() {
        return Arbitraries.of(
                Arrays.stream(Solute.values())
                        .filter(solute -> !solute.isSalt())
                        .filter(solute -> !solute.name().endsWith("ACID"))
                        .filter(solute -> solute != Solute.ETHANOL)
                        .toList());
    }

    @Provide
    Arbitrary<Solution> solutions() {
        Arbitrary<Double> amount = Arbitraries.doubles().between(0, 250).ofScale(3);
        Arbitrary<Map<Solute, Double>> parts =
                Arbitraries.maps(Arbitraries.of(Solute.values()), amount).ofMaxSize(7);
        Arbitrary<Double> ions = Arbitraries.doubles().between(0, 400).ofScale(2);
        Arbitrary<Double> water = Arbitraries.doubles().between(1, 1000).ofScale(2);
        return Combinators.combine(water, parts, ions)
                .as(
                        (waterG, massG, millimol) ->
                                new Solution(waterG, massG, Map.of("milk salts", millimol)));
    }
}
