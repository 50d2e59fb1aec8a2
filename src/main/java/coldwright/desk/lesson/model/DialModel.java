package coldwright.desk.lesson.model;

import coldwright.lesson.Dial;

import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;

/** A number in a snippet that the learner can turn. */
public final class DialModel {
    private final SnippetModel snippet;
    private final ReadOnlyDoubleWrapper value = new ReadOnlyDoubleWrapper();
    private Dial dial;

    DialModel(SnippetModel snippet, Dial dial) {
        this.snippet = snippet;
        take(dial);
    }

    /** The text was changed: takes its number and range. */
    void take(Dial read) {
        dial = read;
        value.set(read.value());
    }

    /** Turns to the notch nearest to a value in the dial's unit, and runs the snippet with it. */
    public void turn(double wanted) {
        put(dial.nearest(wanted));
    }

    /** Turns it by notches; down if negative. */
    public void turnBy(int count) {
        turn(value.get() + count * dial.step());
    }

    /** Sets a typed value, which need not be a notch; it is clamped to the range. */
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

    /** The dial rests: writes the number into the text. */
    public void rest() {
        snippet.rested();
    }

    /** Whether its position is not in the text yet. */
    boolean moved() {
        return value.get() != dial.value();
    }

    /** Its variable, range, notch and unit, as declared in the text. */
    public Dial dial() {
        return dial;
    }

    /** Its position, within the range, in the dial's unit. */
    public ReadOnlyDoubleProperty value() {
        return value.getReadOnlyProperty();
    }
}
