package coldwright.desk.page;

import coldwright.desk.model.Settings;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;

/** What all views of a page share: the size of the type, where figures stand, what draws them. */
final class PageState {
    private final Pens pens;
    private final Settings settings;
    private final DoubleProperty emPx = new SimpleDoubleProperty();
    private final BooleanProperty workshop = new SimpleBooleanProperty(false);
    private final BooleanProperty figuresBeside = new SimpleBooleanProperty(true);

    PageState(Pens pens, Settings settings) {
        this.pens = pens;
        this.settings = settings;
    }

    /** What the learner has set. */
    Settings settings() {
        return settings;
    }

    Pens pens() {
        return pens;
    }

    /** The size of the type, pixels. */
    DoubleProperty emPx() {
        return emPx;
    }

    /** Whether the lesson is laid out for a room. */
    BooleanProperty workshop() {
        return workshop;
    }

    /** Whether figures stand in a column of their own beside the text. */
    BooleanProperty figuresBeside() {
        return figuresBeside;
    }
}
