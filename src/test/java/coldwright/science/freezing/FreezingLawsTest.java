package coldwright.science.freezing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;

/** What must hold for any solution, measured or not. */
class FreezingLawsTest {
    /** What the reading of the grid may round away, °C. */
    private static final double ROUNDING_C = 1e-6;

    /** The same for shares of ice, % of the water. */
    private static final double ROUNDING_PERCENT = 1e-5;

    @Cases(1000)
    void aSoluteMoreNeverRaisesTheFreezingPoint(Draw draw) {
        Solution solution = draw.one(FreezingLawsTest::solutions);
        Solute solute = draw.oneOf(Solute.values());
        double moreG = draw.doubleIn(0.01, 300);
        double before = solution.freezingPointC();
        double after = solution.with(moreG, solute).freezingPointC();
        assertTrue(after <= before + ROUNDING_C, () -> before + " then " + after);
    }

    @Cases(1000)
    void particlesMoreNeverRaiseTheFreezingPoint(Draw draw) {
        Solution solution = draw.one(FreezingLawsTest::solutions);
        double millimol = draw.doubleIn(0.01, 2000);
        double before = solution.freezingPointC();
        double after = solution.withIdealParticles(millimol, "more ions").freezingPointC();
        assertTrue(after <= before + ROUNDING_C, () -> before + " then " + after);
    }

    @Cases(1000)
    void waterMoreNeverLowersIt(Draw draw) {
        Solution solution = draw.one(FreezingLawsTest::solutions);
        double moreG = draw.doubleIn(0.01, 1000);
        assertTrue(
                solution.withWater(moreG).freezingPointC()
                        >= solution.freezingPointC() - ROUNDING_C);
    }

    @Cases(1000)
    void iceNeverGrowsAsItWarmsAndStaysAShare(Draw draw) {
        Solution solution = draw.one(FreezingLawsTest::solutions);
        double coldC = draw.doubleIn(-60, 5);
        double warming = draw.doubleIn(0, 10);
        FreezingCurve curve = solution.freezingCurve();
        double cold = curve.icePercentAt(coldC);
        double warm = curve.icePercentAt(coldC + warming);
        assertTrue(warm <= cold + ROUNDING_PERCENT, () -> warm + " after " + cold);
        assertTrue(cold >= 0 && cold <= 100);
    }

    @Cases(1000)
    void noIceAboveTheInitialFreezingPoint(Draw draw) {
        Solution solution = draw.one(FreezingLawsTest::solutions);
        double above = draw.doubleIn(0, 30);
        FreezingCurve curve = solution.freezingCurve();
        double start = Math.max(-60, curve.initialFreezingPointC());
        assertTrue(start <= 0);
        assertEquals(0, curve.icePercentAt(start + above));
    }

    @Cases(1000)
    void theCurveReadsThereAndBack(Draw draw) {
        Solution solution = draw.one(FreezingLawsTest::solutions);
        double share = draw.doubleIn(0, 1);
        FreezingCurve curve = solution.freezingCurve();
        double ice = share * curve.greatestIcePercent();
        double temperatureC = curve.temperatureAtIcePercentC(ice);
        if (temperatureC < 0 && !FreezingNotes.onlySalts(solution)) {
            double back = curve.icePercentAt(Math.max(-60, temperatureC));
            assertEquals(ice, back, ROUNDING_PERCENT);
        }
    }

    @Cases(1000)
    void theRemainingLiquidFreezesWhereItIs(Draw draw) {
        Solution solution = draw.one(FreezingLawsTest::solutions);
        double temperatureC = draw.doubleIn(-30, -0.05);
        FreezingCurve curve = solution.freezingCurve();
        double ice = curve.iceG(temperatureC);
        if (ice <= 0 || ice >= solution.waterG() || temperatureC < curve.iceStopsGrowingC()) {
            return;
        }
        Solution left =
                new Solution(solution.waterG() - ice, solution.massG(), solution.idealMillimol());
        assertEquals(temperatureC, left.freezingPointC(), ROUNDING_C);
    }

    @Cases(1000)
    void sizeDoesNotMatter(Draw draw) {
        Solution solution = draw.one(FreezingLawsTest::solutions);
        double factor = draw.doubleIn(0.01, 1000);
        Map<Solute, Double> massG = new EnumMap<>(Solute.class);
        solution.massG().forEach((solute, g) -> massG.put(solute, g * factor));
        Map<String, Double> ideal = new java.util.LinkedHashMap<>();
        solution.idealMillimol().forEach((what, mmol) -> ideal.put(what, mmol * factor));
        Solution scaled = new Solution(solution.waterG() * factor, massG, ideal);
        assertEquals(solution.freezingPointC(), scaled.freezingPointC(), ROUNDING_C);
    }

    @Cases(1000)
    void twoSugarsOfOneKindFreezeAsOne(Draw draw) {
        double totalG = draw.doubleIn(0.1, 300);
        double share = draw.doubleIn(0, 1);
        // Trehalose is modelled as sucrose, so that any split of the sugar must give the same.
        Solution split =
                Solution.inWater(100)
                        .with(share * totalG, Solute.SUCROSE)
                        .with((1 - share) * totalG, Solute.TREHALOSE);
        Solution one = Solution.inWater(100).with(totalG, Solute.SUCROSE);
        assertEquals(one.freezingPointC(), split.freezingPointC(), ROUNDING_C);
    }

    @Cases(1000)
    void activityFallsForEverWithMolality(Draw draw) {
        Solute solute = draw.oneOf(Solute.values());
        double molality = draw.doubleIn(0, 400);
        double more = draw.doubleIn(0.01, 50);
        SoluteActivity binding = solute.binding();
        assertTrue(binding.minusLn(molality + more) > binding.minusLn(molality));
    }

    @Cases(1000)
    void diluteSolutionsCountParticles(Draw draw) {
        Solute solute = draw.one(FreezingLawsTest::molecules);
        // 1.860 °C·kg/mol: R T² / ΔH of ice, with IAPWS-06 values.
        double molality = 0.001;
        Solution dilute = Solution.inWater(1000).with(molality * solute.molarMassGPerMol(), solute);
        double perParticle = -dilute.freezingPointC() / molality;
        assertEquals(1.860, perParticle, 0.005, solute::displayName);
    }

    private static Solute molecules(Draw draw) {
        return draw.oneOf(
                Arrays.stream(Solute.values())
                        .filter(solute -> !solute.isSalt())
                        .filter(solute -> !solute.name().endsWith("ACID"))
                        .filter(solute -> solute != Solute.ETHANOL)
                        .toList());
    }

    private static Solution solutions(Draw draw) {
        double waterG = draw.doubleIn(1, 1000);
        Map<Solute, Double> massG = new EnumMap<>(Solute.class);
        for (Solute solute : draw.listOf(0, 7, d -> d.oneOf(Solute.values()))) {
            massG.put(solute, draw.doubleIn(0, 250));
        }
        return new Solution(waterG, massG, Map.of("milk salts", draw.doubleIn(0, 400)));
    }
}
