package coldwright.desk.layout;

import coldwright.desk.figure.FigureSettings;
import coldwright.desk.figure.FileChooserPrompt;
import coldwright.desk.figure.RenderContext;
import coldwright.desk.model.PreferencesModel;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleBooleanProperty;

/** What all views of a page share: the size of the type, where figures stand, what draws them. */
public final class PageState {
    private final FigureSettings room;
    private final PreferencesModel settings;
    private final BooleanProperty classroom = new SimpleBooleanProperty(false);

    public PageState(RenderContext renderContext, PreferencesModel settings) {
        this.room = new FigureSettings(renderContext, FileChooserPrompt.BY_DIALOG);
        this.settings = settings;
    }

    /** What the learner has set. */
    public PreferencesModel settings() {
        return settings;
    }

    /** What plates share. */
    public FigureSettings room() {
        return room;
    }

    /** The size of the type, pixels. */
    public DoubleProperty emPx() {
        return room.emPx();
    }

    /** Whether the lesson is laid out for a room. */
    public BooleanProperty classroom() {
        return classroom;
    }

    /** Whether figures stand in a column of their own beside the text. */
    public BooleanProperty figuresBeside() {
        return room.figuresBeside();
    }
}
