package coldwright.desk.figure;

import coldwright.desk.figure.model.PinnedFigures;
import coldwright.desk.layout.KeyScrolling;
import coldwright.desk.lesson.model.StepModel;
import coldwright.desk.messages.TextControls;

import javafx.scene.control.ScrollPane;
import javafx.scene.control.ScrollPane.ScrollBarPolicy;
import javafx.scene.layout.VBox;

/** The column beside the text: the figures of the step in sight, and all pinned ones. */
public final class FigureColumn extends ScrollPane {
    private final FigureStack stack;
    private final EmptyPad empty = new EmptyPad();

    /** Makes a column, first for the step in sight. */
    public FigureColumn(StepModel first, FigureSettings room, PinnedFigures pinnedFigures) {
        getStyleClass().add("figures");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        stack = new FigureStack(first.drawn(), room, pinnedFigures, room.figuresBeside(), true);
        VBox box = TextControls.styled(new VBox(empty, stack), "figures-box");
        setContent(box);
        KeyScrolling.keepFocusInView(this, this::requestFocus);
        show(first);
    }

    /** Shows the figures of another step. */
    public void show(StepModel is) {
        empty.show(is);
        TextControls.shown(empty, is.awaitsFigure());
        stack.show(is.drawn());
        setVvalue(0);
    }
}
