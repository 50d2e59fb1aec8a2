package coldwright.desk.figure.model;

import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;

/**
 * What the learner did to a lesson's figures: those pinned to compare the next ones with, and the
 * moment at which each drawing is.
 */
public final class PinnedFigures {
    private final ObservableList<PinnedFigure> all = FXCollections.observableArrayList();

    /** Kept because its listeners are attached to it, and its source refers to it weakly. */
    private final ObservableList<PinnedFigure> shown =
            FXCollections.unmodifiableObservableList(all);

    private final Map<Object, Map<Integer, Integer>> moments = new IdentityHashMap<>();

    /** A pinned figure; no two are equal. */
    public static final class PinnedFigure {
        private final ShownFigure shownFigure;
        private final Object place;

        private PinnedFigure(ShownFigure shownFigure, Object place) {
            this.shownFigure = shownFigure;
            this.place = place;
        }

        /** The figure when it was pinned. */
        public ShownFigure drawn() {
            return shownFigure;
        }

        /** The list that it was pinned from, whose figures it is shown under. */
        public Object place() {
            return place;
        }
    }

    /** Pins a figure without its earlier trace from the list {@code place}, if it isn't yet. */
    public void pin(ShownFigure shownFigure, Object place) {
        ShownFigure still = shownFigure.still();
        if (all.stream()
                .noneMatch(
                        pinnedFigure ->
                                pinnedFigure.drawn().equals(still)
                                        && pinnedFigure.place() == place)) {
            all.add(new PinnedFigure(still, place));
        }
    }

    public void unpin(PinnedFigure pinnedFigure) {
        all.remove(pinnedFigure);
    }

    /** Notes the moment at which the figure of an index in a list is. */
    public void setMoment(Object place, int index, int moment) {
        moments.computeIfAbsent(place, one -> new HashMap<>()).put(index, moment);
    }

    /** The moment at which the figure of an index in a list was last; at first 0. */
    public int moment(Object place, int index) {
        return moments.getOrDefault(place, Map.of()).getOrDefault(index, 0);
    }

    /** All pinned figures, in the order in which they were pinned; not to be changed. */
    public ObservableList<PinnedFigure> all() {
        return shown;
    }
}
