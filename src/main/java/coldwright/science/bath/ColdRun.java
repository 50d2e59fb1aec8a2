package coldwright.science.bath;

/** A source of cold over time; by default one that keeps its temperature. */
public interface ColdRun {
    /** {@return temperature now, °C} */
    double temperatureC();

    /**
     * Lets time pass.
     *
     * @param seconds how long, s
     * @param batchJ heat that the batch gives off meanwhile, J
     */
    default void pass(double seconds, double batchJ) {}

    /** {@return ice left in the bath, g; not a number if there is no bath} */
    default double iceG() {
        return Double.NaN;
    }

    /** {@return heat that the room has brought so far, J; zero if there is no bath} */
    default double fromRoomJ() {
        return 0;
    }
}
