package coldwright.desk.lesson;

import coldwright.desk.figure.FigureSettings;
import coldwright.desk.figure.FileChooserPrompt;
import coldwright.desk.figure.RenderContext;
import coldwright.desk.model.PreferencesModel;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;

/**
 * State shared by all views of a page: that of its figures, the preferences, the height of the
 * page's foot that a notice covers (pixels), and whether the lesson is in classroom view.
 */
public record PageState(
        FigureSettings figureSettings,
        PreferencesModel settings,
        DoubleProperty coveredPx,
        BooleanProperty classroom) {
    public PageState(RenderContext renderContext, PreferencesModel settings) {
        this(
                new FigureSettings(renderContext, FileChooserPrompt.BY_DIALOG),
                settings,
                new SimpleDoubleProperty(0),
                new SimpleBooleanProperty(false));
    }

    /** Type size, pixels. */
    public DoubleProperty emPx() {
        return figureSettings.emPx();
    }
}
