package coldwright.science.freezer;

import coldwright.science.bath.IceAndSalt;
import coldwright.science.bath.Vessel;
import coldwright.science.freezing.Brine;
import coldwright.science.thermal.EnthalpyTable;

/** How much ice and salt a batch needs. */
final class BathRequirement {
    /** How much colder than the batch the bath should still be at the end, °C (judgement). */
    private static final double DRIVE_C = 8;

    private static final double HALF_AN_HOUR = 30;

    private BathRequirement() {}

    static IceAndSalt of(Freeze freeze, double minutes) {
        EnthalpyTable table = freeze.curve().table();
        double half = table.enthalpyAtIceJPerG(Stage.SOFT_SERVE.icePercent());
        double softC = Double.isNaN(half) ? table.coldestC() : table.temperatureC(half);
        double coldest = Brine.EUTECTIC_C + 0.5;
        double endC = Math.max(coldest, Math.min(-2, softC - DRIVE_C));
        double reachedC = Math.max(softC, endC);
        double heatJ =
                freeze.massG()
                        * (table.enthalpyJPerG(freeze.startC()) - table.enthalpyJPerG(reachedC));
        Vessel vessel = Vessel.BARE_BOWL;
        double roomC = 20;
        if (freeze.cold() instanceof Cold.Bath cold) {
            vessel = cold.bath().vessel();
            roomC = cold.bath().roomC();
        }
        double seconds = 60 * (minutes >= 0 ? minutes : HALF_AN_HOUR);
        IceAndSalt bath = IceAndSalt.leastFor(heatJ, endC);
        for (int i = 0; i < 6; i++) {
            double meanC = 0.5 * (Brine.EUTECTIC_C + endC);
            double room = bath.in(vessel).roomWPerK() * (roomC - meanC) * seconds;
            bath = IceAndSalt.leastFor(heatJ + room, endC);
        }
        return bath.in(vessel).roomAt(roomC);
    }
}
