package coldwright.desk.plate;

import coldwright.figure.InUnits;
import coldwright.paint.Ground;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;

/** What all plates of a page share: what draws them, how large the type is, on what ground. */
public final class PlateRoom {
    private final Pens pens;
    private final FileAsk fileAsk;
    private final DoubleProperty emPx = new SimpleDoubleProperty(18);
    private final BooleanProperty figuresBeside = new SimpleBooleanProperty(true);
    private final ObjectProperty<InUnits> units = new SimpleObjectProperty<>(InUnits.AS_IT_IS);
    private final ObjectProperty<Ground> ground = new SimpleObjectProperty<>(Ground.LIGHT);

    /**
     * Makes room for plates.
     *
     * @param pens what they are drawn with
     * @param fileAsk asks where a figure shall be saved
     */
    public PlateRoom(Pens pens, FileAsk fileAsk) {
        this.pens = pens;
        this.fileAsk = fileAsk;
    }

    Pens pens() {
        return pens;
    }

    FileAsk fileAsk() {
        return fileAsk;
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
    public ObjectProperty<InUnits> units() {
        return units;
    }

    /**
     * What plates are drawn on.
     *
     * @return light at first
     */
    public ObjectProperty<Ground> ground() {
        return ground;
    }
}
