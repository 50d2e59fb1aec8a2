package coldwright.science.freezing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import coldwright.published.PublishedTable;
import coldwright.published.PublishedTable.Row;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.List;

/** The activity of ice against IAPWS, and its inverse. */
class PublishedIceActivityTest {
    /** Murphy and Koop against IAPWS-06: their stated agreement is better than 0.1 %. */
    private static final double MODELS_AGREE = 0.0006;

    static List<Row> rows() {
        return PublishedTable.read("wagner-2006-ice-activity").checks();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void agreesWithIapws(Row row) {
        assertEquals(
                row.number("waterActivity"),
                IceActivity.waterActivity(row.number("temperatureC")),
                MODELS_AGREE);
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
            assertEquals(exact, IceGrid.minusLn(t), 1e-6 * exact, "at " + t);
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
