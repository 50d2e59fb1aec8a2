package coldwright.desk.lesson.model;

import coldwright.lesson.Dial;

import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;

/** A number of a snippet that can be turned. */
public final class DialModel {
    private final SnippetModel snippet;
    private final ReadOnlyDoubleWrapper value = new ReadOnlyDoubleWrapper();
    private Dial dial;

    DialModel(SnippetModel snippet, Dial dial) {
        this.snippet = snippet;
        take(dial);
    }

    /** The text was changed: the number and its range are what it says now. */
    void take(Dial read) {
        dial = read;
        value.set(read.value());
    }

    /**
     * Turns it to the notch nearest to a value, and lets the snippet run with that.
     *
     * @param wanted any value, in the dial's unit
     */
    public void turn(double wanted) {
        put(dial.nearest(wanted));
    }

    /**
     * Turns it by notches.
     *
     * @param count how many; down if negative
     */
    public void turnBy(int count) {
        turn(value.get() + count * dial.step());
    }

    /**
     * Puts it to a value that somebody typed, which need not be a notch.
     *
     * @param exact the value; brought into the range if it lies outside
     */
    public void type(double exact) {
        put(Math.max(dial.least(), Math.min(dial.most(), exact)));
        rest();
    }

    private void put(double now) {
        if (now != value.get()) {
            value.set(now);
            snippet.turned();
        }
    }

    /** It has come to rest: the number is written into the text. */
    public void rest() {
        snippet.rested();
    }

    /** Whether its position is not in the text yet. */
    boolean moved() {
        return value.get() != dial.value();
    }

    /** Its variable, range, notch and unit, as the text declares them. */
    public Dial dial() {
        return dial;
    }

    /** Its position, within the range, in the dial's unit. */
    public ReadOnlyDoubleProperty value() {
        return value.getReadOnlyProperty();
    }
}
