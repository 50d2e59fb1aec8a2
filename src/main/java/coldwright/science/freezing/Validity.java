package coldwright.science.freezing;

import coldwright.words.Phrase;

/**
 * Range and error of the freezing point of one solute alone in water.
 *
 * @param coldestC coldest freezing point that a source gives, °C; 0 if none gives any
 * @param errorPercent expected error of the depression down to there, % of it
 * @param source source of the model, as a part of a sentence
 */
public record Validity(double coldestC, double errorPercent, Phrase source) {
    /** Expected error beyond the coldest published freezing point, % of the depression. */
    public static final double BEYOND_PERCENT = 5;

    /** No measurements: {@code key} is the end of the words' key of what the model rests on. */
    static Validity unmeasured(String key, double errorPercent) {
        return new Validity(0, errorPercent, Phrase.of("science.freezing", "source." + key));
    }

    /**
     * {@return whether a source gives any freezing point of the solute: false if the model is based
     * on other data or on a similar solute}
     */
    public boolean measured() {
        return coldestC < 0;
    }
}
