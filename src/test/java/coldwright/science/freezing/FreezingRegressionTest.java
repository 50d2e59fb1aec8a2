package coldwright.science.freezing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Regression values: this program's own numbers, no check of nature. Polyols, malic and tartaric
 * acid have no published freezing points, and no table gives the ice of a whole mix.
 */
class FreezingRegressionTest {
    private static final double TIGHT_C = 1e-4;

    private static final Solution MIX =
            Solution.inWater(61)
                    .with(14, Solute.SUCROSE)
                    .with(5, Solute.LACTOSE)
                    .with(3, Solute.GLUCOSE)
                    .with(0.3, Solute.SODIUM_CHLORIDE)
                    .withIdealParticles(16, "milk salts");

    @ParameterizedTest
    @CsvSource({
        "SUCROSE, -0.29066234, -2.6544535, 78.694443, 0.026544535",
        "GLUCOSE, -0.55018624, -4.7724777, 71.457918, 0.047724777",
        "FRUCTOSE, -0.54793741, -4.6520929, 72.633504, 0.23260465",
        "LACTOSE, -0.29120634, -2.6229239, 82.032412, 0.13114620",
        "MALTOSE, -0.28918363, -2.6069535, 78.184396, 0.026069535",
        "GALACTOSE, -0.55018624, -4.7724777, 71.457918, 0.14317433",
        "TREHALOSE, -0.29066234, -2.6544535, 78.694443, 0.079633604",
        "ALLULOSE, -0.54793741, -4.6520929, 72.633504, 0.13956279",
        "ISOMALTULOSE, -0.29066234, -2.6544535, 78.694443, 0.07963360",
        "MALTITOL, -0.28747157, -2.5896285, 78.312193, 0.10358514",
        "ISOMALT, -0.28893374, -2.6368531, 78.819252, 0.10547413",
        "LACTITOL, -0.28947235, -2.6060690, 82.137667, 0.10424276",
        "MANNITOL, -0.54083649, -4.5369908, 73.970068, 0.22684954",
        "SORBITOL, -0.54289406, -4.6635172, 71.938686, 0.18654069",
        "XYLITOL, -0.65120979, -5.6403153, 66.369840, 0.22561261",
        "ERYTHRITOL, -0.81146495, -7.0035506, 59.361714, 0.28014202",
        "GLYCEROL, -1.0856446, -9.6908634, 44.272184, 0.58145180",
        "ETHANOL, -2.1181815, -20.485556, 0.0000000, 0.81942224",
        "SODIUM_CHLORIDE, -3.0479731, -21.100000, 0.0000000, 0.063300000",
        "POTASSIUM_CHLORIDE, -2.3170305, -10.700000, 100.00000, 0.10700000",
        "CALCIUM_CHLORIDE, -2.3610212, -42.536664, 0.0000000, 2.1268332",
        "CITRIC_ACID, -0.54228808, -4.2664919, 78.705591, 0.21332459",
        "LACTIC_ACID, -0.96330612, -7.5703816, 60.229405, 0.37851908",
        "MALIC_ACID, -0.76067550, -6.3981987, 65.971926, 0.25592795",
        "TARTARIC_ACID, -0.70547174, -6.4569218, 62.109032, 0.25827687"
    })
    void aloneInWater(Solute solute, double at5C, double at30C, double iceAt18, double errorC) {
        assertEquals(at5C, Solution.inWater(95).with(5, solute).freezingPointC(), TIGHT_C);
        Solution strong = Solution.inWater(70).with(30, solute);
        assertEquals(at30C, strong.freezingPointC(), TIGHT_C);
        assertEquals(iceAt18, strong.freezingCurve().icePercentAt(-18), 1e-3);
        assertEquals(errorC, strong.freezingPointErrorC(), TIGHT_C);
    }

    @ParameterizedTest
    @CsvSource({
        "0.0, 0.0000000, 0.0000000, 26.770708",
        "-2.0, 0.0000000, 0.0000000, 26.770708",
        "-3.0, 0.0000000, 0.0000000, 26.770708",
        "-4.0, 18.295647, 11.160345, 30.912263",
        "-6.0, 43.468823, 26.515982, 39.271613",
        "-10.0, 63.947795, 39.008155, 50.347869",
        "-18.0, 78.251111, 47.733178, 62.698882",
        "-30.0, 86.154829, 52.554446, 72.530812",
        "-50.0, 87.954358, 53.652159, 75.216269"
    })
    void iceOfAMix(double temperatureC, double icePercent, double iceG, double solidsPercent) {
        FreezingCurve curve = MIX.freezingCurve();
        assertEquals(icePercent, curve.icePercentAt(temperatureC), 1e-3);
        assertEquals(iceG, curve.iceG(temperatureC), 1e-3);
        assertEquals(solidsPercent, curve.concentratedPhaseSolidsPercent(temperatureC), 1e-3);
        if (icePercent > 0 && temperatureC > curve.iceStopsGrowingC()) {
            assertEquals(
                    temperatureC,
                    curve.temperatureAtIcePercentC(curve.icePercentAt(temperatureC)),
                    1e-6);
        }
    }

    @Test
    void endsOfTheCurve() {
        FreezingCurve curve = MIX.freezingCurve();
        assertEquals(-3.2166994, curve.initialFreezingPointC(), TIGHT_C);
        assertEquals(-34.727273, curve.iceStopsGrowingC(), TIGHT_C);
        assertEquals(curve.icePercentAt(-60), curve.greatestIcePercent(), 1e-12);
        assertEquals(curve.initialFreezingPointC(), curve.temperatureAtIcePercentC(0));
        FreezingCurve brine = Solution.inWater(90).with(10, Solute.SODIUM_CHLORIDE).freezingCurve();
        assertEquals(-21.1, brine.iceStopsGrowingC());
        assertEquals(100, brine.icePercentAt(-21.2), 1e-9);
    }

    /** Salt beyond its eutectic strength takes no more from the water than at the eutectic. */
    @Test
    void crustOfSalt() {
        Solution strong =
                Solution.inWater(20).with(10, Solute.SODIUM_CHLORIDE).with(10, Solute.SUCROSE);
        assertEquals(-24.236296, strong.freezingPointC(), TIGHT_C);
        assertEquals(31.329900, strong.freezingCurve().icePercentAt(-26), 1e-3);
        assertEquals(0.67532430, strong.waterActivity(20), 1e-5);
        assertTrue(strong.notes().stream().anyMatch(note -> note.contains("more salt than")));
        assertFalse(MIX.notes().stream().anyMatch(note -> note.contains("more salt than")));
    }

    /** Errors: solutes weighed by particles and added, the rule of mixtures as independent. */
    @Test
    void expectedErrors() {
        assertEquals(0.067583862, MIX.freezingPointErrorC(), TIGHT_C);
        Solution spiked = MIX.with(6, Solute.ETHANOL);
        assertEquals(0.45935438, spiked.freezingPointErrorC(), TIGHT_C);
        Solution salted = MIX.with(5, Solute.SODIUM_CHLORIDE);
        assertEquals(0.40925709, salted.freezingPointErrorC(), TIGHT_C);
        Solution sugar = Solution.inWater(90).with(10, Solute.SUCROSE);
        assertEquals(0.01, sugar.freezingPointErrorC(), 1e-12, "what a thermometer misses");
        Solution half = Solution.inWater(70).with(30, Solute.SUCROSE);
        assertEquals(-0.01 * half.freezingPointC(), half.freezingPointErrorC(), 1e-12);
    }

    /** Where ice stops growing beside each solute (from memory), and the eutectics of salts. */
    @ParameterizedTest
    @CsvSource({
        "-34, SUCROSE ISOMALTULOSE MALTITOL ISOMALT",
        "-46, GLUCOSE FRUCTOSE ALLULOSE",
        "-45, GALACTOSE",
        "-30, LACTOSE TREHALOSE LACTITOL",
        "-32, MALTOSE",
        "-40, MANNITOL",
        "-49, SORBITOL",
        "-57, XYLITOL ERYTHRITOL",
        "-65, GLYCEROL",
        "-115, ETHANOL",
        "-50, CITRIC_ACID MALIC_ACID TARTARIC_ACID",
        "-60, LACTIC_ACID",
        "-21.1, SODIUM_CHLORIDE",
        "-10.7, POTASSIUM_CHLORIDE",
        "-49.8, CALCIUM_CHLORIDE"
    })
    void iceStopsGrowingBesideEach(double stopsC, String solutes) {
        for (String solute : solutes.split(" ")) {
            Solution strong = Solution.inWater(70).with(30, Solute.valueOf(solute));
            assertEquals(stopsC, strong.freezingCurve().iceStopsGrowingC(), TIGHT_C, solute);
        }
    }
}
