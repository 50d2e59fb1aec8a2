package coldwright.desk.page;

import coldwright.desk.model.Settings;
import coldwright.desk.plate.FileAsk;
import coldwright.desk.plate.Pens;
import coldwright.desk.plate.PlateRoom;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleBooleanProperty;

/** What all views of a page share: the size of the type, where figures stand, what draws them. */
final class PageState {
    private final PlateRoom room;
    private final Settings settings;
    private final BooleanProperty workshop = new SimpleBooleanProperty(false);

    PageState(Pens pens, Settings settings) {
        this.room = new PlateRoom(pens, FileAsk.BY_DIALOG);
        this.settings = settings;
    }

    /** What the learner has set. */
    Settings settings() {
        return settings;
    }

    /** What plates share. */
    PlateRoom room() {
        return room;
    }

    /** The size of the type, pixels. */
    DoubleProperty emPx() {
        return room.emPx();
    }

    /** Whether the lesson is laid out for a room. */
    BooleanProperty workshop() {
        return workshop;
    }

    /** Whether figures stand in a column of their own beside the text. */
    BooleanProperty figuresBeside() {
        return room.figuresBeside();
    }
}
