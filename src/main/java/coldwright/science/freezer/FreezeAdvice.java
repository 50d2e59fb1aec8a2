package coldwright.science.freezer;

import coldwright.science.Require;
import coldwright.science.thermal.EnthalpyTable;

import java.util.ArrayList;
import java.util.List;

/** What a cook should mind in a freeze plan, in sentences. */
final class FreezeAdvice {
    private static final double THICK_BAG_MM = 35;
    private static final double WARM_START_C = 12;

    private FreezeAdvice() {}

    static List<String> of(Freeze freeze, FreezePlan plan, FreezeSimulation freezeSimulation) {
        List<String> remarks = new ArrayList<>();
        if (!plan.reaches(Stage.SOFT_SERVE)) {
            remarks.add(whyNot(freeze, freezeSimulation));
        }
        if (freeze.cold() instanceof Cold.Bath cold) {
            remarks.addAll(cold.bath().remarks());
            double spent = freezeSimulation.bathSpentMinutes();
            if (spent >= 0) {
                remarks.add(
                        "the last ice of the bath melts after %s minutes: take more ice and salt, or insulate the bowl"
                                .formatted(whole(spent)));
            }
            remarks.add(
                    "caution: ice with salt burns skin like frost: gloves, and rinse the outside before opening");
        }
        if (freeze.holder().wall().equals(Wall.GLASS)) {
            remarks.add(
                    "caution: glass can crack as the batch swells: leave headroom or use plastic");
        }
        if (freeze.startC() > WARM_START_C) {
            remarks.add(
                    "the mix starts at %s °C: chilled to 4 °C first it freezes sooner and stands no longer warm than it should"
                            .formatted(Require.format(freeze.startC())));
        }
        if (freeze.holder() instanceof Holder.Bag bag && bag.thicknessMm() > THICK_BAG_MM) {
            remarks.add(
                    "a bag %s mm thick freezes slowly: twice as flat takes about half as long"
                            .formatted(Require.format(bag.thicknessMm())));
        }
        int count = freeze.holder().count(plan.volumeL());
        if (count > 1) {
            remarks.add(
                    "the batch of %s L is shared among %s: each freezes as one does"
                            .formatted(Require.formatToTenth(plan.volumeL()), count));
        }
        schedule(freeze, plan, remarks);
        if (plan.reaches(Stage.SOFT_SERVE) && !plan.reaches(Stage.HARD)) {
            remarks.add(notHard(plan));
        }
        remarks.addAll(freeze.curve().notes());
        return List.copyOf(remarks);
    }

    private static void schedule(Freeze freeze, FreezePlan plan, List<String> remarks) {
        List<Double> shakes = plan.shakeAtMinutes();
        if (!shakes.isEmpty()) {
            remarks.add(
                    "shake or stir through %s times, from minute %s to minute %s; then leave it to harden"
                            .formatted(
                                    shakes.size(),
                                    whole(shakes.get(0)),
                                    whole(shakes.get(shakes.size() - 1))));
        } else if (freeze.motion().isStill() && plan.reaches(Stage.SOFT_SERVE)) {
            remarks.add(
                    "left still it grows coarse crystals: shake or stir every 45 minutes from minute %s to minute %s"
                            .formatted(
                                    whole(plan.minutesToThicken()),
                                    whole(plan.minutesToSoftServe())));
        }
    }

    private static String notHard(FreezePlan plan) {
        if (plan.reaches(Stage.SCOOP)) {
            return "it does not get to %s °C in the middle: the freezer is not cold enough to harden it"
                    .formatted(Require.format(Stage.HARD_C));
        }
        FreezeMoment last = plan.course().get(plan.course().size() - 1);
        return "it stays soft in the freezer: at %s °C %s %% of its water is ice, and %s %% makes a scoop"
                .formatted(
                        Require.formatToTenth(last.middleC()),
                        whole(last.icePercent()),
                        whole(Stage.SCOOP.icePercent()));
    }

    private static String whyNot(Freeze freeze, FreezeSimulation freezeSimulation) {
        EnthalpyTable table = freeze.curve().table();
        double half = table.enthalpyAtIceJPerG(Stage.SOFT_SERVE.icePercent());
        double endC = freezeSimulation.bathEndC();
        double ice = freeze.curve().icePercentAt(endC);
        if (Double.isNaN(half) || table.temperatureC(half) < endC + 0.3) {
            String where =
                    Double.isNaN(half)
                            ? "below %s °C".formatted(whole(table.coldestC()))
                            : "at %s °C".formatted(Require.formatToTenth(table.temperatureC(half)));
            return "it stays liquid or slush: half its water would be ice only %s, and the cold is at %s °C, where %s %% is: less alcohol, sugar or salt, or more cold"
                    .formatted(where, Require.formatToTenth(endC), whole(ice));
        }
        return "soft-serve is not reached in the time that was reckoned; the cold ends at %s °C: a thinner batch, more motion or more cold"
                .formatted(Require.formatToTenth(endC));
    }

    private static String whole(double value) {
        return Require.format(Math.rint(value));
    }
}
