package coldwright.science.freezer;

import coldwright.science.Rounded;
import coldwright.science.thermal.EnthalpyTable;
import coldwright.words.Phrase;

import java.util.ArrayList;
import java.util.List;

/** Advice on a freeze plan. */
final class FreezeAdvice {
    private static final double THICK_BAG_MM = 35;
    private static final double WARM_START_C = 12;

    /** Temperature of a fridge, °C. */
    private static final double CHILLED_C = 4;

    private FreezeAdvice() {}

    static List<Phrase> of(Freeze freeze, FreezePlan plan, FreezeSimulation freezeSimulation) {
        List<Phrase> comments = new ArrayList<>();
        if (!plan.reaches(Stage.SOFT_SERVE)) {
            comments.add(whyNot(freeze, freezeSimulation));
        }
        if (freeze.cold() instanceof Cold.Bath cold) {
            comments.addAll(cold.bath().comments());
            double spent = freezeSimulation.bathSpentMinutes();
            if (spent >= 0) {
                comments.add(phrase("bath-spent", spent));
            }
            comments.add(phrase("caution-brine"));
        }
        if (freeze.holder().wall().equals(Wall.GLASS)) {
            comments.add(phrase("caution-glass"));
        }
        if (freeze.startC() > WARM_START_C) {
            comments.add(phrase("warm-start", freeze.startC(), CHILLED_C));
        }
        if (freeze.holder() instanceof Holder.Bag bag && bag.thicknessMm() > THICK_BAG_MM) {
            comments.add(phrase("thick-bag", bag.thicknessMm()));
        }
        int count = freeze.holder().count(plan.volumeL());
        if (count > 1) {
            comments.add(phrase("shared", Rounded.tenth(plan.volumeL()), count));
        }
        schedule(freeze, plan, comments);
        if (plan.reaches(Stage.SOFT_SERVE) && !plan.reaches(Stage.HARD)) {
            comments.add(notHard(plan));
        }
        comments.addAll(freeze.curve().comments());
        return List.copyOf(comments);
    }

    private static void schedule(Freeze freeze, FreezePlan plan, List<Phrase> comments) {
        List<Double> shakes = plan.shakeAtMinutes();
        if (!shakes.isEmpty()) {
            comments.add(
                    phrase("shake", shakes.size(), shakes.get(0), shakes.get(shakes.size() - 1)));
        } else if (freeze.motion().isStill() && plan.reaches(Stage.SOFT_SERVE)) {
            comments.add(phrase("still", plan.minutesToThicken(), plan.minutesToSoftServe()));
        }
    }

    private static Phrase notHard(FreezePlan plan) {
        if (plan.reaches(Stage.SCOOP)) {
            return phrase("not-hardened", Stage.HARD_C);
        }
        FreezeMoment last = plan.course().get(plan.course().size() - 1);
        return phrase(
                "stays-soft",
                Rounded.tenth(last.middleC()),
                last.icePercent(),
                Stage.SCOOP.icePercent());
    }

    private static Phrase whyNot(Freeze freeze, FreezeSimulation freezeSimulation) {
        EnthalpyTable table = freeze.curve().table();
        double half = table.enthalpyAtIceJPerG(Stage.SOFT_SERVE.icePercent());
        double endC = freezeSimulation.bathEndC();
        if (Double.isNaN(half) || table.temperatureC(half) < endC + 0.3) {
            Phrase where =
                    Double.isNaN(half)
                            ? phrase("below", table.coldestC())
                            : phrase("at", Rounded.tenth(table.temperatureC(half)));
            return phrase(
                    "stays-liquid", where, Rounded.tenth(endC), freeze.curve().icePercentAt(endC));
        }
        return phrase("not-in-time", Rounded.tenth(endC));
    }

    static Phrase phrase(String key, Object... values) {
        return Phrase.of("science.freezer", key, values);
    }
}
