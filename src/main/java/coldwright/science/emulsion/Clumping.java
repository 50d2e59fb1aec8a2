package coldwright.science.emulsion;

import coldwright.science.Require;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/**
 * A field of globules while it is whisked: which ones have stuck together at a given time, and
 * where.
 *
 * <p>{@link Churning} gives the share that has clumped, to within one globule. Which globules stick
 * is random, and they stay stuck. The shape of the clusters is judgement, because the model gives
 * no number of them: one cluster for each {@value #GLOBULES_A_CLUSTER} globules in view; a globule
 * that sticks joins the nearest cluster on the side it comes from and overlaps it by {@value #NECK}
 * of the smaller radius, like globules that share a neck of fat but keep their shape (partial
 * coalescence).
 */
public final class Clumping {
    static final double GLOBULES_A_CLUSTER = 22;
    static final double NECK = 0.25;

    private static final double STEP_OF_RADIUS = 0.15;

    private final GlobuleField fresh;
    private final List<Integer> order = new ArrayList<>();
    private final Globule[] stuck;
    private final double[] fatUm3UpTo;

    private Clumping(GlobuleField fresh) {
        this.fresh = fresh;
        stuck = new Globule[fresh.globules().size()];
        fatUm3UpTo = new double[stuck.length];
    }

    /**
     * Prepares a field to be whisked.
     *
     * @param fresh the field before
     * @param seed any number; another makes other globules stick
     */
    public static Clumping of(GlobuleField fresh, long seed) {
        Clumping clumping = new Clumping(fresh);
        clumping.stick(new Random(seed));
        return clumping;
    }

    /**
     * {@return the field when a share of the fat has clumped; that is the nearest that whole
     * globules can give}
     *
     * @param clumpedPercent % of the fat, 0 to 100, as {@link Churning#clumpedPercent} gives it
     */
    public GlobuleField at(double clumpedPercent) {
        Require.within("clumpedPercent", clumpedPercent, new Require.Range(0, 100, "% of the fat"));
        List<Globule> now = new ArrayList<>(fresh.globules());
        double all = stuck.length == 0 ? 0 : fatUm3UpTo[stuck.length - 1];
        double wanted = clumpedPercent / 100 * all;
        double before = 0;
        for (int i = 0; i < stuck.length; i++) {
            if ((before + fatUm3UpTo[i]) / 2 > wanted) {
                break;
            }
            now.set(order.get(i), stuck[order.get(i)]);
            before = fatUm3UpTo[i];
        }
        return new GlobuleField(fresh.slide(), now);
    }

    private void stick(Random random) {
        List<Globule> globules = fresh.globules();
        double[] lot = random.doubles(globules.size()).toArray();
        for (int i = 0; i < globules.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingDouble(i -> lot[i]));
        int clusters = (int) Math.max(1, Math.round(globules.size() / GLOBULES_A_CLUSTER));
        List<List<Globule>> members = new ArrayList<>();
        double fat = 0;
        for (int i = 0; i < order.size(); i++) {
            int which = order.get(i);
            Globule home = globules.get(which);
            fat += home.volumeUm3();
            fatUm3UpTo[i] = fat;
            List<Globule> nearest =
                    members.stream()
                            .min(Comparator.comparingDouble(one -> apart(one.get(0), home)))
                            .orElse(null);
            boolean founds = i % 2 == 0 && members.size() < clusters;
            if (nearest == null || founds) {
                nearest = new ArrayList<>();
                members.add(nearest);
                stuck[which] = new Globule(home.xUm(), home.yUm(), home.radiusUm(), true);
            } else {
                stuck[which] = joined(nearest, home);
            }
            nearest.add(stuck[which]);
        }
    }

    /** Moves a globule towards the first of a cluster until it overlaps a member by the neck. */
    private static Globule joined(List<Globule> cluster, Globule home) {
        Globule middle = cluster.get(0);
        double dx = middle.xUm() - home.xUm();
        double dy = middle.yUm() - home.yUm();
        double way = apart(middle, home);
        double step = Math.max(1e-6, home.radiusUm() * STEP_OF_RADIUS);
        for (double gone = 0; gone < way; gone += step) {
            double x = home.xUm() + dx * gone / way;
            double y = home.yUm() + dy * gone / way;
            for (Globule member : cluster) {
                double neck = NECK * Math.min(member.radiusUm(), home.radiusUm());
                double touching = member.radiusUm() + home.radiusUm() - neck;
                if (Math.hypot(member.xUm() - x, member.yUm() - y) <= touching) {
                    return new Globule(x, y, home.radiusUm(), true);
                }
            }
        }
        return new Globule(middle.xUm(), middle.yUm(), home.radiusUm(), true);
    }

    private static double apart(Globule one, Globule other) {
        return Math.hypot(one.xUm() - other.xUm(), one.yUm() - other.yUm());
    }
}
