package coldwright.science.freezer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Volumes and surfaces by geometry, and filling a holder with a volume that comes out again. */
class ShapeVolumeTest {
    private static final double EXACT = 1e-9;

    @Test
    void volumesOfBodies() {
        assertEquals(0.7853981634, Shape.tub(100, 100).volumeL(), EXACT);
        assertEquals(0.24, Shape.bar(100, 40).ofLength(60).volumeL(), EXACT);
    }

    @Test
    void aHolderIsFilledByWhatItHolds() {
        for (double litres : new double[] {0.3, 1, 2.2}) {
            assertEquals(litres, filled(Holder.Tub.round(120), litres), EXACT);
            assertEquals(litres, filled(Holder.Churn.of(120), litres), EXACT);
            assertEquals(litres, filled(Holder.Box.of(200, 100), litres), EXACT);
        }
    }

    private static double filled(Holder holder, double litres) {
        return holder.count(litres) * holder.shape(litres).volumeL();
    }

    /** Side and bottom of a can of 120 mm that holds a litre: πD²/4 + 4V/D. */
    @Test
    void aChurnIsCooledOnSideAndBottom() {
        assertEquals(0.0113097336 + 0.0333333333, Holder.Churn.of(120).cooledM2(1), 1e-9);
    }
}
