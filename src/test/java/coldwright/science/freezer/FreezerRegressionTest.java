package coldwright.science.freezer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldwright.science.bath.IceAndSalt;

import org.junit.jupiter.api.Test;

/**
 * Regression values: this program's own numbers, no check of nature. What is judgement or method
 * (layers, steps, the temperature at which one conductivity is taken) has no published value; a
 * change that moves a result must at least be seen and meant.
 */
class FreezerRegressionTest {
    /** Of the value: far below the spread of the films. */
    private static final double TIGHT = 1e-4;

    private static void is(double expected, double found) {
        assertEquals(expected, found, TIGHT * Math.abs(expected));
    }

    private static void times(
            FreezePlan plan, double thickens, double soft, double scoop, double hard) {
        is(thickens, plan.minutesToThicken());
        is(soft, plan.minutesToSoftServe());
        is(scoop, plan.minutesToScoop());
        is(hard, plan.minutesToHard());
    }

    @Test
    void litreTubInAHomeFreezer() {
        FreezePlan plan = Freeze.of(Batches.iceCream(), 1090).plan();
        times(plan, 99.32036, 483.06664, 660.61958, 1055.03502);
        is(358.94308, plan.rangeMinutes(Stage.SOFT_SERVE).least());
        is(657.10009, plan.rangeMinutes(Stage.SOFT_SERVE).most());
        is(236.61937, plan.heatRemovedKJ());
    }

    @Test
    void kneadedBagInIceAndSalt() {
        FreezePlan plan =
                Freeze.of(Batches.sorbet(), 800)
                        .in(Holder.Bag.flat(30))
                        .by(IceAndSalt.of(2000, 500))
                        .plan();
        times(plan, 6.121615, 26.711263, 179.461993, 477.785252);
    }

    @Test
    void shakenBagInIceAndSalt() {
        FreezePlan plan =
                Freeze.of(Batches.sorbet(), 800)
                        .in(Holder.Bag.flat(30))
                        .by(IceAndSalt.of(2000, 500))
                        .moved(Motion.SHAKEN)
                        .plan();
        is(25.0334803, plan.minutesToSoftServe());
        is(13.1792993, plan.rangeMinutes(Stage.SOFT_SERVE).least());
        is(48.6078739, plan.rangeMinutes(Stage.SOFT_SERVE).most());
        is(121.395847, plan.heatRemovedKJ());
        is(70.549593, plan.heatFromRoomKJ());
        assertEquals("ice 445 g, salt 93.6 g in a bare bowl", plan.leastBath().toString());
    }

    @Test
    void crankedChurn() {
        FreezePlan plan =
                Freeze.of(Batches.iceCream(), 1000)
                        .in(Holder.Churn.of(120))
                        .by(IceAndSalt.of(3000, 750))
                        .moved(Motion.CRANKED)
                        .plan();
        is(45.1702134, plan.minutesToSoftServe());
        is(570.322527, plan.minutesToHard());
        is(20.178896, plan.rangeMinutes(Stage.SOFT_SERVE).least());
        is(150.209118, plan.rangeMinutes(Stage.SOFT_SERVE).most());
    }

    @Test
    void boxStirredNowAndThen() {
        FreezePlan plan =
                Freeze.of(Batches.iceCream(), 1000)
                        .in(Holder.Box.of(200, 100))
                        .moved(Motion.every(45))
                        .plan();
        is(344.109287, plan.minutesToSoftServe());
        assertEquals(7, plan.shakeAtMinutes().size());
    }

    @Test
    void machine() {
        FreezePlan plan =
                Freeze.of(Batches.iceCream(), 4000)
                        .in(Holder.Churn.of(200))
                        .by(new Cold.Machine(-25, 1000))
                        .moved(Motion.MACHINE)
                        .plan();
        is(9.6001732, plan.minutesToSoftServe());
    }
}
