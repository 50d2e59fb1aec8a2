package coldwright.science.bath;

import coldwright.science.Require;
import coldwright.science.freezing.Brine;

import java.util.ArrayList;
import java.util.List;

/** What a cook should mind in a bath of ice and salt, in sentences. */
final class BathAdvice {
    /** Salt much beyond this lies undissolved to the end, % of ice and salt. */
    private static final double PLENTY_PERCENT = Brine.EUTECTIC_SALT_PERCENT;

    /** A bath that ends warmer than this freezes slowly, °C (judgement). */
    private static final double WEAK_C = -10;

    /** Ice colder than this comes dry from a freezer, °C (judgement). */
    private static final double DRY_C = -2;

    private BathAdvice() {}

    static List<String> of(IceAndSalt bath) {
        List<String> remarks = new ArrayList<>();
        if (bath.saltG() == 0) {
            remarks.add("no salt: the bath stays at 0 °C, where no mix with sugar in it freezes");
        } else if (bath.saltPercentWhenMelted() > PLENTY_PERCENT) {
            double allWaterG = bath.iceG() + bath.waterG();
            double spare = bath.saltG() - allWaterG * PLENTY_PERCENT / (100 - PLENTY_PERCENT);
            remarks.add(
                    "too much salt: about %s g lies undissolved while there is ice, and makes the bath no colder than −21.1 °C"
                            .formatted(Require.format(Math.rint(spare))));
        } else if (bath.lastIceC() > WEAK_C) {
            double share = 100 * bath.saltG() / (bath.iceG() + bath.saltG());
            remarks.add(
                    "little salt (%s %% of ice and salt): as the ice melts the bath warms to %s °C; three to five times as much ice as salt by mass keeps it colder"
                            .formatted(
                                    Require.formatToTenth(share),
                                    Require.formatToTenth(bath.lastIceC())));
        }
        if (bath.iceC() < DRY_C && bath.waterG() == 0) {
            remarks.add(
                    "lumps straight from the freezer are dry and take salt slowly: a splash of water and a stir start the bath");
        }
        return List.copyOf(remarks);
    }
}
