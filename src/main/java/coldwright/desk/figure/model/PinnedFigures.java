package coldwright.desk.figure.model;

import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** Figures of a lesson that the learner keeps on the page to compare the next ones with. */
public final class PinnedFigures {
    private final ObservableList<PinnedFigure> all = FXCollections.observableArrayList();

    /** Kept, since listeners hang on it and it hangs on the other only weakly. */
    private final ObservableList<PinnedFigure> shown =
            FXCollections.unmodifiableObservableList(all);

    /** A figure that was pinned; no two are the same. */
    public static final class PinnedFigure {
        private final ShownFigure shownFigure;
        private final Object place;

        private PinnedFigure(ShownFigure shownFigure, Object place) {
            this.shownFigure = shownFigure;
            this.place = place;
        }

        /**
         * As it stood when it was pinned.
         *
         * @return the figure
         */
        public ShownFigure drawn() {
            return shownFigure;
        }

        /**
         * Which figures it stands under.
         *
         * @return the list that it was pinned from
         */
        public Object place() {
            return place;
        }
    }

    /**
     * Keeps a figure; one that is kept already is not kept twice.
     *
     * @param shownFigure the figure as it stands, without its earlier trace
     * @param place the list that it is pinned from
     */
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

    /**
     * Lets a figure go.
     *
     * @param pinnedFigure one of these
     */
    public void unpin(PinnedFigure pinnedFigure) {
        all.remove(pinnedFigure);
    }

    /**
     * All pins.
     *
     * @return in the order in which they were pinned; not to be changed
     */
    public ObservableList<PinnedFigure> all() {
        return shown;
    }
}
