package coldwright.desk.figure;

import coldwright.figure.UnitConversion;
import coldwright.paint.style.FigureTheme;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;

/** Settings shared by all figures of a page: painter, type size, units and theme. */
public final class FigureSettings {
    private final RenderContext renderContext;
    private final FileChooserPrompt fileChooserPrompt;
    private final DoubleProperty emPx = new SimpleDoubleProperty(18);
    private final BooleanProperty figuresBeside = new SimpleBooleanProperty(true);
    private final ObjectProperty<UnitConversion> units =
            new SimpleObjectProperty<>(UnitConversion.AS_IT_IS);
    private final ObjectProperty<FigureTheme> theme = new SimpleObjectProperty<>(FigureTheme.LIGHT);

    public FigureSettings(RenderContext renderContext, FileChooserPrompt fileChooserPrompt) {
        this.renderContext = renderContext;
        this.fileChooserPrompt = fileChooserPrompt;
    }

    RenderContext renderContext() {
        return renderContext;
    }

    FileChooserPrompt fileAsk() {
        return fileChooserPrompt;
    }

    /** The page's type size, pixels. */
    public DoubleProperty emPx() {
        return emPx;
    }

    /** Whether figures are in a column of their own beside the text; initially true. */
    public BooleanProperty figuresBeside() {
        return figuresBeside;
    }

    /** The units in which figures are shown; initially the figures' own. */
    public ObjectProperty<UnitConversion> units() {
        return units;
    }

    /** The figures' theme; initially light. */
    public ObjectProperty<FigureTheme> theme() {
        return theme;
    }
}
