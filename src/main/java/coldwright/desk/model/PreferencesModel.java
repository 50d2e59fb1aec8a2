package coldwright.desk.model;

import coldwright.workbook.settings.BenchLimit;
import coldwright.workbook.settings.Preferences;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

import java.util.function.UnaryOperator;

/** The learner's current preferences; listeners are notified of every change. */
public final class PreferencesModel {
    private final ReadOnlyObjectWrapper<Preferences> preferences;

    /**
     * Preferences with initial values.
     *
     * @param kept the saved values
     */
    public PreferencesModel(Preferences kept) {
        preferences = new ReadOnlyObjectWrapper<>(kept);
    }

    /**
     * Changes the preferences.
     *
     * @param change gives the new ones from the old
     */
    public void change(UnaryOperator<Preferences> change) {
        preferences.set(change.apply(preferences.get()));
    }

    /** Sets a limit; the value is clamped to its range. */
    public void limit(BenchLimit limit, int value) {
        int within = Math.max(limit.least(), Math.min(limit.most(), value));
        change(all -> all.with(limit, within));
    }

    /** The current value of a limit. */
    public int limit(BenchLimit limit) {
        return preferences.get().limit(limit);
    }

    /** All preferences. */
    public ReadOnlyObjectProperty<Preferences> preferences() {
        return preferences.getReadOnlyProperty();
    }
}
