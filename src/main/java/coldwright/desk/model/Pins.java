package coldwright.desk.model;

import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** Figures of a lesson that the learner keeps on the page to compare the next ones with. */
public final class Pins {
    private final ObservableList<Pin> all = FXCollections.observableArrayList();

    /** Kept, since listeners hang on it and it hangs on the other only weakly. */
    private final ObservableList<Pin> shown = FXCollections.unmodifiableObservableList(all);

    /** A figure that was pinned; no two are the same. */
    public static final class Pin {
        private final Drawn drawn;
        private final Object place;

        private Pin(Drawn drawn, Object place) {
            this.drawn = drawn;
            this.place = place;
        }

        /**
         * As it stood when it was pinned.
         *
         * @return the figure
         */
        public Drawn drawn() {
            return drawn;
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
     * @param drawn the figure as it stands, without its earlier trace
     * @param place the list that it is pinned from
     */
    public void pin(Drawn drawn, Object place) {
        Drawn still = drawn.still();
        if (all.stream().noneMatch(pin -> pin.drawn().equals(still) && pin.place() == place)) {
            all.add(new Pin(still, place));
        }
    }

    /**
     * Lets a figure go.
     *
     * @param pin one of these
     */
    public void unpin(Pin pin) {
        all.remove(pin);
    }

    /**
     * All pins.
     *
     * @return in the order in which they were pinned; not to be changed
     */
    public ObservableList<Pin> all() {
        return shown;
    }
}
