package coldwright.desk.layout;

import coldwright.desk.figure.FigureSettings;
import coldwright.desk.figure.FileChooserPrompt;
import coldwright.desk.figure.RenderContext;
import coldwright.desk.model.PreferencesModel;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;

/** State shared by all views of a page: type size, place of the figures, and preferences. */
public final class PageState {
    private final FigureSettings figureSettings;
    private final PreferencesModel settings;
    private final DoubleProperty coveredPx = new SimpleDoubleProperty(0);
    private final BooleanProperty classroom = new SimpleBooleanProperty(false);

    public PageState(RenderContext renderContext, PreferencesModel settings) {
        this.figureSettings = new FigureSettings(renderContext, FileChooserPrompt.BY_DIALOG);
        this.settings = settings;
    }

    public PreferencesModel settings() {
        return settings;
    }

    public FigureSettings figureSettings() {
        return figureSettings;
    }

    /** Type size, pixels. */
    public DoubleProperty emPx() {
        return figureSettings.emPx();
    }

    /** Height of the page's foot that a notice covers, pixels. */
    public DoubleProperty coveredPx() {
        return coveredPx;
    }

    /** Whether the lesson is in classroom view. */
    public BooleanProperty classroom() {
        return classroom;
    }

    /** Whether figures are in a column of their own beside the text. */
    public BooleanProperty figuresBeside() {
        return figureSettings.figuresBeside();
    }
}
