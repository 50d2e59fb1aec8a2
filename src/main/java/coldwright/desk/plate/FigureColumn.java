package coldwright.desk.plate;

import coldwright.desk.model.Pins;
import coldwright.desk.model.StepModel;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;

import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/** The column beside the text: the figures of the step in sight, and all that are pinned. */
public final class FigureColumn extends ScrollPane {
    private final PlateStack stack;
    private final Label empty = Words.label(Say.of("plate.none-yet"), "no-plate");

    /**
     * Makes a column.
     *
     * @param first the step in sight
     * @param room what plates share
     * @param pins the figures that the learner keeps
     */
    public FigureColumn(StepModel first, PlateRoom room, Pins pins) {
        getStyleClass().add("figures");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        stack = new PlateStack(first.drawn(), room, pins, room.figuresBeside(), true);
        VBox box = new VBox(empty, stack);
        box.getStyleClass().add("figures-box");
        setContent(box);
        show(first);
    }

    /**
     * Shows the figures of another step.
     *
     * @param is the step in sight
     */
    public void show(StepModel is) {
        Words.shown(empty, is.awaitsFigure());
        stack.show(is.drawn());
        setVvalue(0);
    }
}
