package coldwright.science.crystal;

import coldwright.science.mix.Component;
import coldwright.science.mix.Mix;

import java.util.function.BiConsumer;

/** Integrates a crystal population along a path of temperatures, step by step. */
final class GrowthIntegrator {
    /** Largest share by which the ice may change in one step. */
    private static final double ICE_STEP = 0.04;

    /** Largest share of the mean crystal volume that coarsening may move in one step. */
    private static final double RIPEN_STEP = 0.03;

    /** Spread of the first crystals, natural log of the radius; by judgement. */
    private static final double SEED_SPREAD = 0.3;

    /** Crystals of this radius break at the stated rate, µm. */
    private static final double BREAKAGE_REFERENCE_RADIUS_UM = 50;

    /** Radius of a broken dendrite arm as it leaves the wall, µm; by judgement, 1 to 4. */
    private static final double LEAST_SEED_UM = 2;

    /** A batch with more of its water frozen than this no longer moves, % (half is seen). */
    private static final double STIFF_ICE_PERCENT = 52;

    /** Below this share of the ice at the end there are too few crystals to count. */
    private static final double FIRST_ICE = 0.01;

    private static final double CUBES_PER_ML = 1e12 * 3 / (4 * Math.PI);

    private static final double STABILISER_SLOWS = 1.2;
    private static final double STABILISED_PERCENT = 0.05;

    private final FrozenMixTable mixTable;
    private final Variant variant;

    GrowthIntegrator(FrozenMixTable frozenMixTable, Variant variant) {
        this.mixTable = frozenMixTable;
        this.variant = variant;
    }

    /** Finest, middle and coarsest outcome that the constants allow for a mix. */
    static LowMidHigh<Variant> corners(Mix mix) {
        boolean stabilised = mix.composition().percent(Component.STABILISER) >= STABILISED_PERCENT;
        double rate = stabilised ? 1 / STABILISER_SLOWS : 1;
        return new LowMidHigh<>(
                new Variant(rate / 2, 3, 0.25),
                new Variant(rate, 1, 0.5),
                new Variant(rate * 2, 1.0 / 3, 1));
    }

    /**
     * Follows a path from the crystals at the start to those at the end, each null if there are
     * none. The watcher receives the time since the start, s, and the crystals, after every step.
     */
    CrystalPopulation follow(
            CrystalPopulation start,
            CoolingPath path,
            Motion motion,
            BiConsumer<Double, CrystalPopulation> watcher) {
        CrystalPopulation crowd = start == null ? null : start.copy();
        double first = FIRST_ICE * cubes(path.endC());
        double s = 0;
        double temperatureC = path.at(0);
        while (s < path.totalS()) {
            double growth = variant.rate * mixTable.growthUm3PerS(temperatureC);
            double step = path.nextBendS(s) - s;
            if (crowd != null) {
                step = Math.min(step, calmStepS(crowd, growth, path, s));
            }
            double next = s + step >= path.totalS() ? path.totalS() : s + step;
            double nextC = path.at(next);
            double wanted = cubes(nextC);
            if (crowd == null) {
                if (wanted > first && wanted > 0) {
                    crowd = CrystalPopulation.logNormal(seedUm(motion, nextC), SEED_SPREAD, wanted);
                }
            } else {
                advance(crowd, new Step(growth, next - s, wanted, nextC), motion);
            }
            s = next;
            temperatureC = nextC;
            if (crowd != null) {
                watcher.accept(s, crowd);
            }
        }
        return crowd;
    }

    private void advance(CrystalPopulation crowd, Step step, Motion motion) {
        double fresh = step.wanted - crowd.sumCubes();
        boolean moves = mixTable.icePercent(step.temperatureC) < STIFF_ICE_PERCENT;
        if (moves && fresh > 0 && motion.wallShare > 0) {
            crowd.seed(seedUm(motion, step.temperatureC), SEED_SPREAD, motion.wallShare * fresh);
        }
        crowd.grow(step.growth * step.seconds, screening(crowd), step.wanted);
        if (moves && motion.breakagePerS > 0) {
            crowd.breakUp(
                    motion.breakagePerS * variant.breakage * step.seconds,
                    BREAKAGE_REFERENCE_RADIUS_UM);
        }
        crowd.refine();
    }

    private double calmStepS(CrystalPopulation crowd, double growth, CoolingPath path, double s) {
        double now = crowd.sumCubes();
        double meanCube = now / crowd.count();
        double beta = screening(crowd);
        double speed = 3 * growth * (1 + beta * Math.cbrt(meanCube));
        double step = RIPEN_STEP * meanCube / speed;
        for (int i = 0; i < 40; i++) {
            double change = Math.abs(cubes(path.at(Math.min(s + step, path.totalS()))) - now);
            if (change <= ICE_STEP * now) {
                break;
            }
            step *= Math.max(0.3, 0.9 * ICE_STEP * now / change);
        }
        return step;
    }

    /** β of Marqusee and Ross: how the neighbours steepen each crystal's field, 1/µm. */
    private double screening(CrystalPopulation crowd) {
        double perUm3 = crowd.sumRadii() / (mixTable.volumeMlPerG() * 1e12);
        return Math.sqrt(4 * Math.PI * perUm3);
    }

    /** Radius that crystals at the wall reach by coarsening before they are swept away, µm. */
    private double seedUm(Motion motion, double temperatureC) {
        double growth = variant.rate * mixTable.growthUm3PerS(temperatureC);
        return Math.max(LEAST_SEED_UM, Math.cbrt(Lsw.RATE_SHARE * growth * motion.clearedEveryS));
    }

    private double cubes(double temperatureC) {
        return mixTable.iceMlPerG(temperatureC) * CUBES_PER_ML;
    }

    /**
     * How the batch is moved.
     *
     * @param clearedEveryS time between two sweeps of the cold wall, s
     * @param wallShare share of new ice that forms at the wall as small crystals, the rest grows on
     *     existing crystals; zero for still freezing
     * @param breakagePerS share of crystals of 50 µm radius that break in a second
     */
    record Motion(double clearedEveryS, double wallShare, double breakagePerS) {
        static final Motion STILL = new Motion(60, 0, 0);

        /** Half of the new ice forms at the swept wall (judgement). */
        static Motion swept(double clearedEveryS, double breakagePerS) {
            return new Motion(clearedEveryS, 0.5, breakagePerS);
        }

        boolean moved() {
            return wallShare > 0;
        }

        /** Blades: a crystal of 100 µm breaks about once a second; by judgement. */
        static final Motion BLENDER = new Motion(60, 0, 1);
    }

    /**
     * One corner of the band.
     *
     * @param rate factor on the growth constant
     * @param breakage factor on breakage
     * @param time factor on the local freezing time in still freezing
     */
    record Variant(double rate, double breakage, double time) {}

    private record Step(double growth, double seconds, double wanted, double temperatureC) {}
}
