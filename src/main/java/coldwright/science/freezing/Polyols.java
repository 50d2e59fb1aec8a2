package coldwright.science.freezing;

/**
 * Sugar alcohols without a freezing table of their own.
 *
 * <p>Norrish's constant K is published for 25 °C (table 3 of an open review, pmc.ncbi.nlm.nih.gov
 * PMC2836749: sorbitol 1.65, xylitol 1.66, erythritol 1.34, mannitol 0.906, glycerol 1.16). Near 0
 * °C it is larger, because these solutions give off heat when diluted: the CRC freezing points give
 * 1.6 for mannitol and 2.3 for glycerol, 0.7 and 1.1 more. Mannitol's 0.7 is added here, by
 * judgement; the fall with concentration is glycerol's. A Japanese measurement (Nippon Shokuhin
 * Kagaku Kogaku Kaishi 44 (1997) 380, abstract read) finds that such polyols freeze slightly above
 * the sugars they come from, as they do here.
 */
final class Polyols {
    static final Validity VALIDITY = Validity.unmeasured("activity", 4);

    private static final double COLD_EXTRA = 0.7;
    private static final double SLOPE = -2.5;
    private static final double MOST_X = 0.3;

    private Polyols() {}

    static SoluteActivity of(double norrishAt25C) {
        return Margules.upTo(MOST_X, norrishAt25C + COLD_EXTRA, SLOPE);
    }
}
