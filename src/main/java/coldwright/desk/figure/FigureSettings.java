package coldwright.desk.figure;

import coldwright.figure.UnitConversion;
import coldwright.paint.style.FigureTheme;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;

/** What all plates of a page share: what draws them, how large the type is, on what ground. */
public final class FigureSettings {
    private final RenderContext renderContext;
    private final FileChooserPrompt fileChooserPrompt;
    private final DoubleProperty emPx = new SimpleDoubleProperty(18);
    private final BooleanProperty figuresBeside = new SimpleBooleanProperty(true);
    private final ObjectProperty<UnitConversion> units =
            new SimpleObjectProperty<>(UnitConversion.AS_IT_IS);
    private final ObjectProperty<FigureTheme> ground =
            new SimpleObjectProperty<>(FigureTheme.LIGHT);

    /**
     * Makes room for plates.
     *
     * @param renderContext what they are drawn with
     * @param fileChooserPrompt asks where a figure shall be saved
     */
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

    /**
     * The size of the page's type.
     *
     * @return pixels
     */
    public DoubleProperty emPx() {
        return emPx;
    }

    /**
     * Whether figures stand in a column of their own beside the text.
     *
     * @return true at first
     */
    public BooleanProperty figuresBeside() {
        return figuresBeside;
    }

    /**
     * The units in which figures are shown.
     *
     * @return as the figures have them at first
     */
    public ObjectProperty<UnitConversion> units() {
        return units;
    }

    /**
     * What plates are drawn on.
     *
     * @return light at first
     */
    public ObjectProperty<FigureTheme> ground() {
        return ground;
    }
}
