package coldwright.desk.figure.model;

import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;

/** Which moment of a drawing is seen, and whether time runs; it never runs by itself. */
public final class Playback {
    /** Moments that pass in a second. */
    public static final double MOMENTS_PER_S = 8;

    private final ReadOnlyIntegerWrapper moment = new ReadOnlyIntegerWrapper(0);
    private final ReadOnlyBooleanWrapper playing = new ReadOnlyBooleanWrapper(false);
    private int count = 1;
    private double since;

    /** Another drawing is shown; it stays at its moment if it has it. */
    void take(int moments) {
        count = Math.max(1, moments);
        if (moment.get() >= count) {
            moment.set(count - 1);
        }
        if (count == 1) {
            playing.set(false);
        }
    }

    /** Lets time run, from the first moment if the last is seen; or stops it. */
    public void press() {
        if (playing.get()) {
            playing.set(false);
        } else if (count > 1) {
            since = 0;
            if (moment.get() == count - 1) {
                moment.set(0);
            }
            playing.set(true);
        }
    }

    /**
     * Time has gone by.
     *
     * @param seconds since the last call; moments that passed meanwhile are skipped
     */
    public void pass(double seconds) {
        if (!playing.get()) {
            return;
        }
        since += seconds * MOMENTS_PER_S;
        int steps = (int) since;
        since -= steps;
        moment.set(Math.min(count - 1, moment.get() + steps));
        if (moment.get() == count - 1) {
            playing.set(false);
        }
    }

    /**
     * Goes to a moment, and stops there.
     *
     * @param wanted from 0; brought into the drawing's moments
     */
    public void goTo(int wanted) {
        playing.set(false);
        moment.set(Math.max(0, Math.min(count - 1, wanted)));
    }

    /**
     * How many moments there are.
     *
     * @return 1 or more
     */
    public int count() {
        return count;
    }

    /**
     * What is seen.
     *
     * @return which moment, from 0
     */
    public ReadOnlyIntegerProperty moment() {
        return moment.getReadOnlyProperty();
    }

    /**
     * Whether time runs.
     *
     * @return true while it does
     */
    public ReadOnlyBooleanProperty playing() {
        return playing.getReadOnlyProperty();
    }
}
