package coldwright.desk.model;

import coldwright.workbook.settings.BenchLimit;
import coldwright.workbook.settings.Preferences;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

import java.util.function.UnaryOperator;

/** The learner's current preferences; listeners are notified of every change. */
public final class PreferencesModel {
    private static final int USUAL_TYPE_PERCENT = 100;
    private static final int MOST_TYPE_PERCENT = 200;
    private static final int NOTCH_PERCENT = 10;

    private final ReadOnlyObjectWrapper<Preferences> preferences;

    /** Preferences with the saved values. */
    public PreferencesModel(Preferences kept) {
        preferences = new ReadOnlyObjectWrapper<>(kept);
    }

    /** Changes the preferences to those that a function gives from the current ones. */
    public void change(UnaryOperator<Preferences> change) {
        preferences.set(change.apply(preferences.get()));
    }

    /** Sets a limit; the value is clamped to its range. */
    public void limit(BenchLimit limit, int value) {
        int within = Math.max(limit.least(), Math.min(limit.most(), value));
        change(all -> all.with(limit, within));
    }

    public int limit(BenchLimit limit) {
        return preferences.get().limit(limit);
    }

    /** The type size, per cent of the usual one, 100 to 200. */
    public int typePercent() {
        return typeWithin(preferences.get().typeSizePercent());
    }

    /** One notch larger, up to 200 %. */
    public void largerType() {
        type(typePercent() + NOTCH_PERCENT);
    }

    /** One notch smaller, down to 100 %. */
    public void smallerType() {
        type(typePercent() - NOTCH_PERCENT);
    }

    /** Back to the usual type size. */
    public void usualType() {
        type(USUAL_TYPE_PERCENT);
    }

    private void type(int percent) {
        change(all -> all.withTypeSizePercent(typeWithin(percent)));
    }

    private static int typeWithin(int percent) {
        return Math.max(USUAL_TYPE_PERCENT, Math.min(MOST_TYPE_PERCENT, percent));
    }

    public ReadOnlyObjectProperty<Preferences> preferences() {
        return preferences.getReadOnlyProperty();
    }
}
