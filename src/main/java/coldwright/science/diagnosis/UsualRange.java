package coldwright.science.diagnosis;

import coldwright.science.crystal.Texture;
import coldwright.science.freezer.Stage;
import coldwright.science.sensory.Firmness;
import coldwright.words.Phrase;

/**
 * The usual range of a measure, with its source.
 *
 * @param least lower end, in the measure's unit; minus infinity for none
 * @param most upper end, in the measure's unit; infinity for none
 * @param slack how far beyond an end counts as one whole step off, same unit
 * @param source source of the ends
 */
record UsualRange(double least, double most, double slack, Phrase source) {
    private static final Phrase MEMORY = source("memory");
    private static final Phrase PRACTICE = source("practice");

    static final UsualRange ICE_AT_SERVING =
            new UsualRange(
                    Firmness.SCOOPABLE_LEAST_ICE_PERCENT,
                    Firmness.SCOOPABLE_MOST_ICE_PERCENT,
                    5,
                    MEMORY);
    static final UsualRange ICE_WHEN_CHURNED =
            new UsualRange(
                    Stage.SOFT_SERVE.icePercent(), Double.POSITIVE_INFINITY, 15, source("churned"));
    static final UsualRange CRYSTALS =
            new UsualRange(0, Texture.SMOOTH.upToUm(), 15, source("smooth"));
    static final UsualRange FAT = new UsualRange(10, 20, 4, PRACTICE);
    static final UsualRange SOLIDS_WITH_MILK = new UsualRange(36, 42, 4, MEMORY);
    static final UsualRange SOLIDS_OF_SORBET = new UsualRange(26, 34, 4, MEMORY);
    static final UsualRange PROTEIN_PER_WATER = new UsualRange(4, 9, 1.5, PRACTICE);
    static final UsualRange STABILISER = new UsualRange(0.2, 0.5, 0.2, MEMORY);
    static final UsualRange STARCH = new UsualRange(0, 2, 1, PRACTICE);
    static final UsualRange SWEETNESS_WITH_MILK = new UsualRange(13, 17, 2, MEMORY);
    static final UsualRange SWEETNESS_OF_SORBET = new UsualRange(18, 30, 3, MEMORY);

    static Phrase source(String key) {
        return Phrase.of(ExpectedFindings.AREA, "source." + key);
    }

    /** Number of steps by which a value exceeds the upper end; zero inside. */
    double above(double value) {
        return Math.max(0, (value - most) / slack);
    }

    /** Number of steps by which a value is below the lower end; zero inside. */
    double below(double value) {
        return Math.max(0, (least - value) / slack);
    }
}
