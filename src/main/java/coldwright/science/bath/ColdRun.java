package coldwright.science.bath;

/** A source of cold over time. */
public interface ColdRun {
    /** {@return temperature now, °C} */
    double temperatureC();

    /**
     * Lets time pass.
     *
     * @param seconds how long, s
     * @param batchJ heat that the batch gives off meanwhile, J
     */
    void pass(double seconds, double batchJ);

    /** {@return ice left in the bath, g; not a number if there is no bath} */
    double iceG();

    /** {@return heat that the room has brought so far, J; zero if there is no bath} */
    double fromRoomJ();
}
