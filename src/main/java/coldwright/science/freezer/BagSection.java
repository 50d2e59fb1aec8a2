package coldwright.science.freezer;

import coldwright.science.Require;
import coldwright.science.bath.BrineHeat;
import coldwright.science.bath.IceAndSalt;
import coldwright.science.freezing.Brine;

import java.util.ArrayList;
import java.util.List;

/**
 * A bag in its bath of ice and salt, cut from the middle outward at one time: the temperature at
 * every depth.
 *
 * <p>Model: the simulation of {@link FreezePlan} itself; only the position of its films is
 * calculated here. A film with a coefficient h is drawn as a still layer k/h thick in which
 * temperature falls linearly (film theory, W. Nernst 1904, W. K. Lewis 1916, from memory): that of
 * the brine with the brine's conductivity, that within a kneaded bag with the content's. In the
 * wall it falls by flux × thickness/conductivity. A still bag has no inner film; it shows the
 * profile of its {@link LayeredBody}. The films' real edges are not sharp; their thickness has the
 * spread of {@link Film}.
 *
 * @param minute time since the bag went into the bath, minutes
 * @param icePercent mean ice in the bag, % of the water
 * @param depth where each part ends
 * @param points temperatures from the middle outward, straight lines between
 * @param bathIceG ice left in the bath, g
 */
public record BagSection(
        double minute, double icePercent, Depth depth, List<Point> points, double bathIceG) {
    private static final double LEAST_FALL_C = 1e-6;

    public BagSection {
        points = List.copyOf(points);
    }

    /**
     * Where the parts end, one after the other from the middle.
     *
     * @param contentMm half the thickness of the content, mm
     * @param wallMm thickness of the wall, mm
     * @param filmMm thickness of the film of brine outside, mm
     */
    public record Depth(double contentMm, double wallMm, double filmMm) {
        /** {@return distance from the middle to the bath, mm} */
        public double bathMm() {
            return contentMm + wallMm + filmMm;
        }
    }

    /**
     * A temperature at a depth.
     *
     * @param fromMiddleMm distance from the middle, mm
     * @param temperatureC °C
     */
    public record Point(double fromMiddleMm, double temperatureC) {}

    /**
     * {@return a bag in a bath of ice and salt at several times, from the start until it leaves the
     * bath: at soft-serve, or for a still bag at the end of the plan}
     *
     * @param moments how many, 2 to 200, evenly spaced in time
     * @throws IllegalArgumentException if the plan is for another holder or another cold
     */
    public static List<BagSection> course(FreezePlan plan, int moments) {
        Require.within("moments", moments, new Require.Range(2, 200, ""));
        Freeze freeze = plan.freeze();
        if (!(freeze.holder() instanceof Holder.Bag bag)
                || !(freeze.cold() instanceof Cold.Bath cold)) {
            throw new IllegalArgumentException(
                    "the batch is in %s, by %s; it must be a bag in ice and salt. Use FreezePlan.bag."
                            .formatted(freeze.holder().words(), freeze.cold().words()));
        }
        List<FreezeMoment> course = plan.course();
        double endMinute = course.get(course.size() - 1).minute();
        if (!freeze.motion().isStill() && plan.reaches(Stage.SOFT_SERVE)) {
            endMinute = plan.minutesToSoftServe();
        }
        List<BagSection> sections = new ArrayList<>();
        int at = 0;
        for (int i = 0; i < moments; i++) {
            double minute = endMinute * i / (moments - 1);
            while (at + 1 < course.size() && course.get(at + 1).minute() <= minute + 1e-9) {
                at++;
            }
            sections.add(cut(plan, bag, cold, course.get(at)));
        }
        return List.copyOf(sections);
    }

    private static BagSection cut(
            FreezePlan plan, Holder.Bag bag, Cold.Bath cold, FreezeMoment moment) {
        double half = bag.thicknessMm() / 2;
        double wall = bag.wall().thicknessMm();
        double film = filmMm(cold, moment.coldC());
        double[] inside = moment.insideC();
        List<Point> points = new ArrayList<>();
        if (plan.freeze().motion().isSteady()) {
            double still = innerFilmMm(plan, moment, half);
            points.add(new Point(0, moment.middleC()));
            points.add(new Point(half - still, moment.middleC()));
            points.add(new Point(half, moment.wallC()));
        } else {
            for (int i = 0; i < inside.length; i++) {
                points.add(new Point(half * i / (inside.length - 1), inside[i]));
            }
        }
        double fall = moment.fluxWPerM2() * wall / 1000 / bag.wall().conductivityWPerMK();
        double outside = Math.max(moment.coldC(), moment.wallC() - fall);
        points.add(new Point(half + wall, outside));
        points.add(new Point(half + wall + film, moment.coldC()));
        return new BagSection(
                moment.minute(),
                moment.icePercent(),
                new Depth(half, wall, film),
                points,
                moment.bathIceG());
    }

    /** Thickness of the layer at the wall that a kneaded content has not mixed in, mm. */
    private static double innerFilmMm(FreezePlan plan, FreezeMoment moment, double half) {
        double fall = moment.middleC() - moment.wallC();
        if (fall < LEAST_FALL_C || moment.fluxWPerM2() <= 0) {
            return 0;
        }
        double middleC = (moment.middleC() + moment.wallC()) / 2;
        double k = plan.curve().conductivityWPerMK(middleC);
        return Math.min(half, 1000 * k * fall / moment.fluxWPerM2());
    }

    private static double filmMm(Cold.Bath cold, double coldC) {
        IceAndSalt bath = cold.bath();
        double salt = Math.min(Brine.EUTECTIC_SALT_PERCENT, bath.saltPercentWhenMelted());
        double k = BrineHeat.conductivityWPerMK(salt, Math.max(-30, Math.min(40, coldC)));
        return 1000 * k / cold.film().coefficientWPerM2K(Reading.LIKELY);
    }

    /**
     * {@return temperature at a depth, °C; the bath's beyond the film}
     *
     * @param fromMiddleMm distance from the middle, mm, zero or more
     */
    public double temperatureC(double fromMiddleMm) {
        Require.notNegative("fromMiddleMm", fromMiddleMm, "mm");
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            if (fromMiddleMm < b.fromMiddleMm()) {
                double share =
                        (fromMiddleMm - a.fromMiddleMm()) / (b.fromMiddleMm() - a.fromMiddleMm());
                return a.temperatureC() + share * (b.temperatureC() - a.temperatureC());
            }
        }
        return bathC();
    }

    /** {@return temperature in the middle, °C} */
    public double middleC() {
        return points.get(0).temperatureC();
    }

    /** {@return temperature of the bath, °C} */
    public double bathC() {
        return points.get(points.size() - 1).temperatureC();
    }
}
