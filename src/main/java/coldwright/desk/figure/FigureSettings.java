package coldwright.desk.figure;

import coldwright.figure.UnitConversion;
import coldwright.paint.style.FigureTheme;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;

/**
 * Settings shared by all figures of a page: painter, question for a file, type size in pixels,
 * whether figures are in a column of their own beside the text, units and theme.
 */
public record FigureSettings(
        RenderContext renderContext,
        FileChooserPrompt fileAsk,
        DoubleProperty emPx,
        BooleanProperty figuresBeside,
        ObjectProperty<UnitConversion> units,
        ObjectProperty<FigureTheme> theme) {
    public FigureSettings(RenderContext renderContext, FileChooserPrompt fileAsk) {
        this(
                renderContext,
                fileAsk,
                new SimpleDoubleProperty(18),
                new SimpleBooleanProperty(true),
                new SimpleObjectProperty<>(UnitConversion.AS_IT_IS),
                new SimpleObjectProperty<>(FigureTheme.LIGHT));
    }
}
