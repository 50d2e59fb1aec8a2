package coldwright.science.freezer;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;
import coldwright.science.bath.IceAndSalt;
import coldwright.science.freezing.Solute;
import coldwright.science.freezing.Solution;
import coldwright.science.mix.Component;
import coldwright.science.mix.Composition;
import coldwright.science.thermal.ThermalComposition;
import coldwright.science.thermal.ThermalCurve;

import org.junit.jupiter.api.Test;

/** Odd batches: the plan answers or says why not, and never breaks. */
class AnyBatchTest {
    private static ThermalCurve curve(double sugar, double alcohol, double salt) {
        double water = 100 - sugar - alcohol - salt;
        Composition mix =
                Composition.NOTHING
                        .with(water, Component.WATER)
                        .with(sugar, Component.SUCROSE)
                        .with(alcohol, Component.ALCOHOL)
                        .with(salt, Component.SALT);
        Solution solution =
                Solution.inWater(water)
                        .with(sugar, Solute.SUCROSE)
                        .with(alcohol, Solute.ETHANOL)
                        .with(salt, Solute.SODIUM_CHLORIDE);
        return ThermalCurve.of(ThermalComposition.of(mix), solution.freezingCurve());
    }

    private static void answers(Freeze freeze) {
        FreezePlan plan = freeze.plan();
        for (Stage stage : Stage.values()) {
            double minutes = plan.minutesTo(stage);
            assertTrue(Double.isNaN(minutes) || minutes >= 0, stage + " " + minutes);
        }
        for (FreezeMoment moment : plan.course()) {
            assertTrue(Double.isFinite(moment.middleC()), moment.toString());
            assertTrue(moment.icePercent() >= 0 && moment.icePercent() <= 100);
        }
        for (String remark : plan.remarks()) {
            assertFalse(remark.contains("NaN") || remark.contains("not a number"), remark);
        }
        if (!plan.reaches(Stage.SOFT_SERVE)) {
            assertFalse(plan.remarks().isEmpty());
        }
    }

    @Cases(200)
    void oddMixesInABag(Draw draw) {
        double sugar = draw.doubleIn(0, 60);
        double alcohol = draw.doubleIn(0, 30);
        double salt = draw.doubleIn(0, 6);
        double bathSalt = draw.doubleIn(0, 600);
        answers(
                Freeze.of(curve(sugar, alcohol, salt), 500)
                        .in(Holder.Bag.flat(25))
                        .by(IceAndSalt.of(1500, bathSalt)));
    }

    @Cases(60)
    void oddSizesInAFreezer(Draw draw) {
        double massG = draw.doubleIn(1, 20000);
        double freezerC = draw.doubleIn(-60, -1);
        double startC = draw.doubleIn(-2, 90);
        double overrun = draw.doubleIn(0, 150);
        Freeze freeze =
                Freeze.of(curve(20, 2, 0.2), massG)
                        .by(Cold.fanFreezer(freezerC))
                        .from(startC)
                        .withOverrun(overrun);
        answers(freeze.moved(Motion.every(30)));
        answers(freeze.in(Holder.Box.of(200, 150)));
    }

    @Test
    void plainWaterAndPlainSpirit() {
        answers(Freeze.of(curve(0, 0, 0), 500).in(Holder.Bag.flat(20)).by(IceAndSalt.of(900, 250)));
        answers(Freeze.of(curve(0, 0, 0), 500));
        answers(Freeze.of(curve(0, 40, 0), 500));
        answers(Freeze.of(curve(60, 30, 6), 500)); // freezes colder than the table reaches
        answers(Freeze.of(curve(0, 90, 0), 500));
        Composition spirit = Composition.NOTHING.with(100, Component.ALCOHOL);
        Exception e =
                assertThrows(
                        IllegalArgumentException.class,
                        () -> ThermalCurve.of(ThermalComposition.of(spirit), null));
        assertTrue(e.getMessage().startsWith("waterPercent is 0 %"));
    }
}
