package coldwright.desk.page;

import coldwright.desk.model.Drawn;
import coldwright.desk.model.StepModel;

import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/** The column beside the text: the figures of the step in sight. */
final class FigureColumn extends ScrollPane {
    private final PlateStack stack;
    private final Label empty =
            Words.label(
                    "The figure of this step stands here once its snippet has run.", "no-plate");
    private final ListChangeListener<Drawn> listener = change -> refresh();
    private StepModel step;
    private ObservableList<Drawn> drawn;

    FigureColumn(StepModel first, PageState state) {
        getStyleClass().add("figures");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        stack = new PlateStack(first.drawn(), state, state.figuresBeside());
        VBox box = new VBox(empty, stack);
        box.getStyleClass().add("figures-box");
        setContent(box);
        show(first);
    }

    /** Shows the figures of another step. */
    void show(StepModel is) {
        if (drawn != null) {
            drawn.removeListener(listener);
        }
        step = is;
        drawn = is.drawn();
        drawn.addListener(listener);
        stack.show(drawn);
        setVvalue(0);
        refresh();
    }

    private void refresh() {
        Words.show(empty, drawn.isEmpty() && step.canRun());
    }
}
