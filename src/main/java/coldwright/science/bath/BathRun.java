package coldwright.science.bath;

import coldwright.science.Require;

/** A bath of ice and salt over time, which takes heat from batch and room. Mutable. */
public final class BathRun implements ColdRun {
    private static final double LONGEST_MINUTES = 2880;

    private final IceAndSalt bath;
    private final BathCurve curve;
    private double heatJ;
    private double fromBatchJ;
    private double fromRoomJ;

    BathRun(IceAndSalt bath, BathCurve curve, double heatJ) {
        this.bath = bath;
        this.curve = curve;
        this.heatJ = heatJ;
    }

    /**
     * Lets time pass; the room's heat is calculated at the temperature at the start of the step.
     *
     * @param seconds length of the step, s
     * @param batchJ heat from the batch in that time, J
     */
    @Override
    public void pass(double seconds, double batchJ) {
        Require.notNegative("seconds", seconds, "s");
        double room = bath.roomWPerK() * (bath.roomC() - temperatureC()) * seconds;
        fromBatchJ += batchJ;
        fromRoomJ += room;
        heatJ += batchJ + room;
    }

    @Override
    public double temperatureC() {
        return curve.temperatureC(heatJ);
    }

    @Override
    public double iceG() {
        return curve.iceG(heatJ);
    }

    /** {@return salt undissolved, g} */
    public double looseSaltG() {
        return curve.looseSaltG(heatJ);
    }

    /** {@return heat taken from the batch so far, J} */
    public double fromBatchJ() {
        return fromBatchJ;
    }

    @Override
    public double fromRoomJ() {
        return fromRoomJ;
    }

    /** Whole minutes until it is this warm without a batch, at most two days. */
    double minutesBelow(double limitC) {
        double minutes = 0;
        while (temperatureC() < limitC && minutes < LONGEST_MINUTES) {
            pass(60, 0);
            minutes++;
        }
        return minutes;
    }
}
