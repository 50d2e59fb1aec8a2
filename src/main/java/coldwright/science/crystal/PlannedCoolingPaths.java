package coldwright.science.crystal;

import coldwright.science.freezer.FreezeMoment;
import coldwright.science.freezer.FreezePlan;
import coldwright.science.freezer.Motion;
import coldwright.science.freezer.Reading;
import coldwright.science.freezer.Stage;

import java.util.ArrayList;
import java.util.List;

/** Cooling paths from a freeze plan: the fast reading gives the finest corner of the band. */
record PlannedCoolingPaths(FrozenMixTable mixTable, FreezePlan plan) {
    LowMidHigh<CoolingPath> paths() {
        return new LowMidHigh<>(path(Reading.FAST), path(Reading.LIKELY), path(Reading.SLOW));
    }

    GrowthIntegrator.Motion motion() {
        Motion motion = plan.freeze().motion();
        Method like = motion.blade().clearanceMm() > 0 ? Method.MACHINE : Method.BAG;
        return Double.isFinite(motion.secondsBetweenTurns())
                ? GrowthIntegrator.Motion.swept(
                        motion.secondsBetweenTurns(), like.motion().breakagePerS())
                : GrowthIntegrator.Motion.STILL;
    }

    /** Temperatures from the mean ice, so that the ice of both models is the same. */
    private CoolingPath path(Reading reading) {
        List<double[]> points = new ArrayList<>();
        double end =
                plan.freeze().motion().secondsBetweenTurns() < 60
                        ? plan.minutesTo(Stage.SOFT_SERVE)
                        : 0;
        for (FreezeMoment moment : plan.course(reading)) {
            double s = moment.minute() * 60;
            double t =
                    moment.icePercent() > 0
                            ? mixTable.temperatureAtIcePercent(moment.icePercent())
                            : Math.max(moment.middleC(), mixTable.initialFreezingPointC());
            if (points.isEmpty() || s > points.get(points.size() - 1)[0]) {
                points.add(new double[] {s, t});
            }
            if (end > 0 && moment.icePercent() >= Stage.SOFT_SERVE.icePercent()) {
                break;
            }
        }
        return CoolingPath.along(
                points.stream().mapToDouble(p -> p[0]).toArray(),
                points.stream().mapToDouble(p -> p[1]).toArray());
    }
}
