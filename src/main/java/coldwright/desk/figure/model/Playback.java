package coldwright.desk.figure.model;

import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;

/** The current moment of a drawing, and whether it plays; it never starts by itself. */
public final class Playback {
    /** Speed, moments per second. */
    public static final double MOMENTS_PER_S = 8;

    private final ReadOnlyIntegerWrapper moment = new ReadOnlyIntegerWrapper(0);
    private final ReadOnlyBooleanWrapper playing = new ReadOnlyBooleanWrapper(false);
    private int count = 1;
    private double since;

    /** Takes another drawing; the moment stays if the drawing has it. */
    void take(int moments) {
        count = Math.max(1, moments);
        if (moment.get() >= count) {
            moment.set(count - 1);
        }
        if (count == 1) {
            playing.set(false);
        }
    }

    /** Starts from the current moment, or from the first if the last is shown; or stops. */
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

    /** Advances the time by seconds since the last call; skips moments passed meanwhile. */
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

    /** Goes to a moment from 0, clamped to the drawing's, and stops there. */
    public void goTo(int wanted) {
        playing.set(false);
        moment.set(Math.max(0, Math.min(count - 1, wanted)));
    }

    /** The number of moments, 1 or more. */
    public int count() {
        return count;
    }

    /** The current moment, from 0. */
    public ReadOnlyIntegerProperty moment() {
        return moment.getReadOnlyProperty();
    }

    public ReadOnlyBooleanProperty playing() {
        return playing.getReadOnlyProperty();
    }
}
