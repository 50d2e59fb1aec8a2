package coldwright.science.freezing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import coldwright.published.FromTable;
import coldwright.published.Ledger;
import coldwright.published.PublishedTable.Row;
import coldwright.published.Tolerance;
import coldwright.science.Temperature;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The activity of ice against IAPWS, and its inverse. */
class PublishedIceActivityTest {
    private static final Ledger LEDGER = Ledger.of(PublishedIceActivityTest.class);

    private static final Tolerance MODELS_AGREE =
            Tolerance.of(0.0003, "agreement of the two formulations, as IceActivity states it");

    private static final Tolerance THREE_DIGITS =
            Tolerance.of(0.0005, "half the last digit of a row with three digits");

    /** What constant heat capacities miss down to −20 °C: 0.0003, and as much for the heats. */
    private static final double CONSTANT_HEATS = 0.0006;

    /** Melting heat of ice at 0 °C, J/mol, and what water holds more than ice, J/(mol·K). */
    private static final double MELTING_J_PER_MOL = 333.5 * 18.015;

    private static final double MORE_HEAT_J_PER_MOL_K = 2.12 * 18.015;
    private static final double GAS = 8.314462618;

    @ParameterizedTest
    @FromTable("wagner-2006-ice-activity")
    void agreesWithIapws(Row row) {
        double temperatureC = row.number("temperatureC");
        LEDGER.at(row, row.text("temperatureC") + " °C")
                .compare(
                        "water activity of ice",
                        row.number("waterActivity"),
                        IceActivity.waterActivity(temperatureC),
                        row.text("waterActivity").length() > 5 ? MODELS_AGREE : THREE_DIGITS);
    }

    /** ln a = −∫ΔH/(R T²) with ΔH falling by Δcp a degree, integrated by hand. */
    @ParameterizedTest
    @ValueSource(doubles = {-1, -5, -10, -20})
    void agreesWithTheHeatOfMelting(double temperatureC) {
        double zero = Temperature.ZERO_C_IN_K;
        double t = Temperature.kelvin(temperatureC);
        double constant = MELTING_J_PER_MOL - MORE_HEAT_J_PER_MOL_K * zero;
        double ln =
                constant / GAS * (1 / zero - 1 / t)
                        - MORE_HEAT_J_PER_MOL_K / GAS * Math.log(zero / t);
        assertEquals(Math.exp(ln), IceActivity.waterActivity(temperatureC), CONSTANT_HEATS);
        double without = MELTING_J_PER_MOL / GAS * (1 / zero - 1 / t);
        if (temperatureC == -20) {
            assertEquals(
                    0.011,
                    Math.abs(Math.exp(without) - IceActivity.waterActivity(temperatureC)),
                    0.0005,
                    "what leaving the heat capacities out costs");
        }
    }

    @Test
    void isExactlyOneAtZero() {
        assertEquals(1, IceActivity.waterActivity(0));
        assertEquals(0, IceActivity.temperatureC(1));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1e-4, -0.01, -0.55, -2.65, -18, -34.4, -59.9, -119.99})
    void readsThereAndBack(double temperatureC) {
        double back = IceActivity.temperatureC(IceActivity.waterActivity(temperatureC));
        assertEquals(temperatureC, back, 1e-9);
    }

    @Test
    void gridMissesTheClosedFormByNothing() {
        for (double t = -0.0005; t > -120; t *= 1.07) {
            double exact = IceActivity.minusLn(t);
            assertEquals(exact, IceLineGrid.minusLn(t), 1e-6 * exact, "at " + t);
        }
    }

    @Test
    void refusesWhatIsNoIce() {
        assertEquals(
                "temperatureC is 5; it must be between −120 and 0 °C",
                assertThrows(IllegalArgumentException.class, () -> IceActivity.waterActivity(5))
                        .getMessage());
        assertEquals(
                "waterActivity is 1.1; it must be between 0.400729 and 1",
                assertThrows(IllegalArgumentException.class, () -> IceActivity.temperatureC(1.1))
                        .getMessage());
    }
}
