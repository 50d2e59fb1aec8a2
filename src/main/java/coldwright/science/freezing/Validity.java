package coldwright.science.freezing;

/**
 * How far the freezing point of one solute alone in water can be trusted.
 *
 * @param coldestC coldest freezing point that a source gives, °C; 0 if none gives any
 * @param errorPercent expected error of the depression down to there, % of it
 * @param source what the model rests on, for a sentence
 */
public record Validity(double coldestC, double errorPercent, String source) {
    /** Expected error beyond the coldest published freezing point, % of the depression. */
    public static final double BEYOND_PERCENT = 5;

    static Validity byAnalogy(String with, double errorPercent) {
        return new Validity(0, errorPercent, "likeness to " + with);
    }

    static Validity derivedFrom(String what, double errorPercent) {
        return new Validity(0, errorPercent, what);
    }

    static Validity fromMemory(String what, double errorPercent) {
        return new Validity(0, errorPercent, what + " (from memory)");
    }

    /**
     * Whether any freezing point of the solute was found.
     *
     * @return false if the model rests on other data or on likeness
     */
    public boolean measured() {
        return coldestC < 0;
    }
}
