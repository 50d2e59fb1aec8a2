package coldwright.science.crystal;

import coldwright.science.Band;
import coldwright.science.Require;
import coldwright.science.Rounded;

import java.util.ArrayList;
import java.util.List;

/** The state of a story: mix table, the three populations of its band, and the curve so far. */
record CrystalState(
        FrozenMixTable mixTable,
        LowMidHigh<GrowthIntegrator.Variant> variants,
        LowMidHigh<CrystalPopulation> crowds,
        double temperatureC,
        List<CrystalMoment> moments) {
    private static final int POINTS_A_LEG = 24;
    private static final double LEAST_ICE_PERCENT = 2;

    CrystalState {
        moments = List.copyOf(moments);
    }

    boolean frozen() {
        return crowds != null;
    }

    /**
     * Follows one leg of the story along the path for each corner of the band, whose middle one
     * gives the clock.
     */
    CrystalState along(LowMidHigh<CoolingPath> legs, GrowthIntegrator.Motion motion, String stage) {
        LowMidHigh<Leg> went = LowMidHigh.of(i -> leg(i, legs.get(i), motion));
        boolean ice =
                went.fine().end != null
                        && went.middle().end != null
                        && went.coarse().end != null
                        && mixTable.icePercent(legs.middle().endC()) >= LEAST_ICE_PERCENT;
        List<CrystalMoment> longer = new ArrayList<>(moments);
        double clock = moments.isEmpty() ? 0 : moments.get(moments.size() - 1).hours();
        CoolingPath path = legs.middle();
        for (int k = moments.isEmpty() ? 0 : 1; k <= POINTS_A_LEG; k++) {
            int at = k;
            double s = path.totalS() * k / POINTS_A_LEG;
            double t = path.at(s);
            longer.add(
                    new CrystalMoment(
                            clock + s / 3600,
                            t,
                            mixTable.icePercent(t),
                            went.band(leg -> leg.meanUm[at]),
                            stage));
        }
        return new CrystalState(
                mixTable, variants, ice ? went.map(Leg::end) : null, path.endC(), longer);
    }

    CrystalState still(CoolingPath leg, String stage) {
        return along(leg, GrowthIntegrator.Motion.STILL, stage);
    }

    CrystalState along(CoolingPath leg, GrowthIntegrator.Motion motion, String stage) {
        return along(LowMidHigh.of(i -> leg), motion, stage);
    }

    /** Refuses a temperature, °C, at which nearly all ice would melt. */
    void requireIce(double wantedC) {
        Require.that(
                mixTable.icePercent(wantedC) >= LEAST_ICE_PERCENT,
                "temperatureC is %s, where nearly all the ice of this mix melts. Choose one well below its freezing point of %s °C.",
                wantedC,
                Rounded.hundredth(mixTable.initialFreezingPointC()));
    }

    Band meanUm() {
        return frozen() ? crowds.band(c -> 2 * c.meanRadiusUm()) : Band.exactly(0);
    }

    private Leg leg(int corner, CoolingPath path, GrowthIntegrator.Motion motion) {
        CrystalPopulation start = frozen() ? crowds.get(corner) : null;
        double[] meanUm = new double[POINTS_A_LEG + 1];
        meanUm[0] = start == null ? 0 : 2 * start.meanRadiusUm();
        int[] reached = {0};
        CrystalPopulation end =
                new GrowthIntegrator(mixTable, variants.get(corner))
                        .follow(
                                start,
                                path,
                                motion,
                                (s, crowd) -> {
                                    int k = (int) (s / path.totalS() * POINTS_A_LEG + 1e-9);
                                    if (k > reached[0]) {
                                        fill(meanUm, reached[0], k, 2 * crowd.meanRadiusUm());
                                        reached[0] = k;
                                    }
                                });
        return new Leg(end, meanUm);
    }

    private static void fill(double[] meanUm, int from, int to, double value) {
        for (int k = from + 1; k <= to; k++) {
            meanUm[k] =
                    meanUm[from] == 0
                            ? (k == to ? value : 0)
                            : meanUm[from] + (value - meanUm[from]) * (k - from) / (to - from);
        }
    }

    private record Leg(CrystalPopulation end, double[] meanUm) {}
}
