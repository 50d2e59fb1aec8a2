package coldwright.science.bath;

import coldwright.science.Require;

/** A bath of ice and salt over time, which takes heat from batch and room. Mutable. */
public final class BathRun implements ColdRun {
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
     * <p>A bath without ice takes up little heat, so that a long step would heat it past whatever
     * heats it. It warms at most to the room: it isn't a source of cold any more.
     *
     * @param seconds length of the step, s
     * @param batchJ heat from the batch in that time, J
     */
    @Override
    public void pass(double seconds, double batchJ) {
        Require.notNegative("seconds", seconds, "s");
        double room = bath.roomWPerK() * (bath.roomC() - temperatureC()) * seconds;
        double warmestC = Math.max(bath.roomC(), temperatureC());
        double tooMuchJ = Math.max(0, heatJ + batchJ + room - curve.heatWhenJ(warmestC));
        fromBatchJ += batchJ - tooMuchJ;
        fromRoomJ += room;
        heatJ += batchJ + room - tooMuchJ;
    }

    @Override
    public double temperatureC() {
        return curve.at(heatJ).temperatureC();
    }

    @Override
    public double iceG() {
        return curve.at(heatJ).iceG();
    }

    /** {@return salt undissolved, g} */
    public double looseSaltG() {
        return curve.at(heatJ).looseSaltG();
    }

    /** {@return heat taken from the batch so far, J} */
    public double fromBatchJ() {
        return fromBatchJ;
    }

    @Override
    public double fromRoomJ() {
        return fromRoomJ;
    }
}
