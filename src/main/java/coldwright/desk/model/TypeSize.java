package coldwright.desk.model;

import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;

/** The type size, in per cent of the usual size. */
public final class TypeSize {
    /** The usual size, and the smallest. */
    public static final int USUAL_PERCENT = 100;

    /** The largest size. */
    public static final int MOST_PERCENT = 200;

    private static final int NOTCH_PERCENT = 10;

    private final ReadOnlyIntegerWrapper percent = new ReadOnlyIntegerWrapper(USUAL_PERCENT);

    /**
     * Sets the size.
     *
     * @param wanted per cent; clamped to 100–200
     */
    public void set(int wanted) {
        percent.set(Math.max(USUAL_PERCENT, Math.min(MOST_PERCENT, wanted)));
    }

    /** One notch larger, up to 200 %. */
    public void larger() {
        percent.set(Math.min(MOST_PERCENT, percent.get() + NOTCH_PERCENT));
    }

    /** One notch smaller, down to 100 %. */
    public void smaller() {
        percent.set(Math.max(USUAL_PERCENT, percent.get() - NOTCH_PERCENT));
    }

    /** Back to the usual size. */
    public void usual() {
        percent.set(USUAL_PERCENT);
    }

    /** The size in per cent of the usual one, 100 to 200. */
    public ReadOnlyIntegerProperty percent() {
        return percent.getReadOnlyProperty();
    }
}
