package coldwright.science.bath;

import coldwright.science.Rounded;
import coldwright.science.freezing.Brine;
import coldwright.words.Phrase;

import java.util.ArrayList;
import java.util.List;

/** Advice on a bath of ice and salt. */
final class BathAdvice {
    /** Salt far beyond this stays undissolved to the end, % of ice and salt. */
    private static final double PLENTY_PERCENT = Brine.EUTECTIC_SALT_PERCENT;

    /** A bath that ends warmer than this freezes slowly, °C (judgement). */
    private static final double WEAK_C = -10;

    /** Ice colder than this comes dry from a freezer, °C (judgement). */
    private static final double DRY_C = -2;

    private BathAdvice() {}

    static List<Phrase> of(IceAndSalt bath) {
        List<Phrase> comments = new ArrayList<>();
        if (bath.saltG() == 0) {
            comments.add(phrase("no-salt"));
        } else if (bath.saltPercentWhenMelted() > PLENTY_PERCENT) {
            double allWaterG = bath.iceG() + bath.waterG();
            double spare = bath.saltG() - allWaterG * PLENTY_PERCENT / (100 - PLENTY_PERCENT);
            comments.add(phrase("much-salt", spare));
        } else if (bath.lastIceC() > WEAK_C) {
            double share = 100 * bath.saltG() / (bath.iceG() + bath.saltG());
            comments.add(
                    phrase("little-salt", Rounded.tenth(share), Rounded.tenth(bath.lastIceC())));
        }
        if (bath.iceC() < DRY_C && bath.waterG() == 0) {
            comments.add(phrase("dry-ice-lumps"));
        }
        return List.copyOf(comments);
    }

    private static Phrase phrase(String key, Object... values) {
        return Phrase.of("science.bath", key, values);
    }
}
