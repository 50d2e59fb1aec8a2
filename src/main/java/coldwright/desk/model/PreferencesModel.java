package coldwright.desk.model;

import coldwright.workbook.settings.BenchLimit;
import coldwright.workbook.settings.Preferences;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

import java.util.function.UnaryOperator;

/** The learner's preferences as they stand; who listens is told of every change. */
public final class PreferencesModel {
    private final ReadOnlyObjectWrapper<Preferences> preferences;

    /**
     * Settings.
     *
     * @param kept what was kept of them
     */
    public PreferencesModel(Preferences kept) {
        preferences = new ReadOnlyObjectWrapper<>(kept);
    }

    /**
     * Changes them.
     *
     * @param change gives the new ones from the old
     */
    public void change(UnaryOperator<Preferences> change) {
        preferences.set(change.apply(preferences.get()));
    }

    /**
     * Sets a limit; a value outside of its range is brought to the range's end.
     *
     * @param limit which
     * @param value how much
     */
    public void limit(BenchLimit limit, int value) {
        int within = Math.max(limit.least(), Math.min(limit.most(), value));
        change(all -> all.with(limit, within));
    }

    /**
     * A limit as it stands.
     *
     * @param limit which
     * @return how much
     */
    public int limit(BenchLimit limit) {
        return preferences.get().limit(limit);
    }

    /**
     * All of them.
     *
     * @return the preferences
     */
    public ReadOnlyObjectProperty<Preferences> preferences() {
        return preferences.getReadOnlyProperty();
    }
}
