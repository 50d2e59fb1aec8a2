package coldwright.science.freezer;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.published.Ledger;
import coldwright.published.PublishedTable;
import coldwright.published.PublishedTable.Row;
import coldwright.published.Tolerance;
import coldwright.science.Band;
import coldwright.science.bath.IceAndSalt;

import org.junit.jupiter.api.Test;

/**
 * What cooks report (common practice, no source): no figure of a paper is behind these. The likely
 * time is compared; that a spread of a factor of three touches the reported span would say little.
 *
 * <p>The bag's time is no validation of the model. It hangs on thickness and on the film of brine,
 * which are judgement and were settled after the first results were seen: in the middle of the
 * spread 20 mm take 24, 18 or 7 minutes and 30 mm take 36, 27 or 10, in brine left alone, slush or
 * stirred brine. Stirred brine with a thin bag lies far below the reported half hour.
 */
class CommonPracticeTest {
    private static final Ledger LEDGER = Ledger.of(CommonPracticeTest.class);

    private static final Tolerance LIKELY =
            Tolerance.of(0, "the likely time lies in the reported span");

    private static final IceAndSalt BATH = IceAndSalt.of(2000, 500);

    private static void report(String what, FreezePlan plan, Stage stage) {
        Row row =
                PublishedTable.read("common-practice-freezing").rows().stream()
                        .filter(r -> r.text("what").equals(what))
                        .findFirst()
                        .orElseThrow();
        LEDGER.at(row, what)
                .compare(
                        "likely time %s, min".formatted(stage.words()),
                        row.between("low_min", "high_min"),
                        Band.exactly(plan.minutesTo(stage)),
                        LIKELY);
    }

    /** A flat bag in ice and salt with motion: about 30 to 45 minutes to soft-serve. */
    @Test
    void flatBagTakesAboutHalfAnHour() {
        FreezePlan plan =
                Freeze.of(Batches.sorbet(), 800)
                        .in(Holder.Bag.flat(FreezePlan.USUAL_BAG_MM))
                        .by(BATH)
                        .plan();
        report("flat bag to soft-serve", plan, Stage.SOFT_SERVE);
        var range = plan.rangeMinutes(Stage.SOFT_SERVE);
        assertTrue(range.least() < 45 && range.most() > 30, plan.toString());
        assertTrue(plan.minutesToSoftServe() > 20 && plan.minutesToSoftServe() < 60);
    }

    /** A litre in a still home freezer: an hour before it begins to thicken, overnight to hard. */
    @Test
    void litreTubNeedsTheNight() {
        FreezePlan plan = Freeze.of(Batches.iceCream(), 1090).plan();
        assertTrue(Math.abs(plan.volumeL() - 1) < 0.05, "a litre: " + plan.volumeL());
        report("litre tub begins to thicken", plan, Stage.THICKENS);
        report("litre tub is frozen", plan, Stage.SCOOP);
        assertTrue(plan.minutesToThicken() > 45 && plan.minutesToThicken() < 120, plan.toString());
        assertTrue(
                plan.minutesToScoop() > 6 * 60 && plan.minutesToHard() < 24 * 60, plan.toString());
    }

    /** A batch rich in liqueur stays liquid in the bag, and the plan says why. */
    @Test
    void liqueurStaysLiquid() {
        FreezePlan plan =
                Freeze.of(Batches.spiked(15), 600).in(Holder.Bag.flat(20)).by(BATH).plan();
        assertFalse(plan.reaches(Stage.SOFT_SERVE));
        assertTrue(plan.remarks().get(0).startsWith("it stays liquid"), plan.remarks().get(0));
        assertTrue(Double.isNaN(plan.minutesToSoftServe()));
    }

    /** A machine in a shop: about 15 minutes, set by its compressor. */
    @Test
    void machineTakesAboutAQuarterOfAnHour() {
        double watts = 1000;
        FreezePlan plan =
                Freeze.of(Batches.iceCream(), 4000)
                        .in(Holder.Churn.of(200))
                        .by(new Cold.Machine(-25, watts))
                        .moved(Motion.MACHINE)
                        .plan();
        report("shop machine to soft-serve", plan, Stage.SOFT_SERVE);
        assertTrue(
                plan.minutesToSoftServe() > 7 && plan.minutesToSoftServe() < 25, plan.toString());
    }
}
