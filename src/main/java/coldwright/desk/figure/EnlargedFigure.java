package coldwright.desk.figure;

import coldwright.desk.figure.model.ShownFigure;
import coldwright.desk.messages.TextControls;

import javafx.event.EventHandler;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

import java.util.function.IntConsumer;

/** A figure that fills the window; Escape or a button closes it. */
final class EnlargedFigure extends VBox {
    private final FigureView figureView;
    private final Button back = TextControls.command("figure.close", this::close);
    private final EventHandler<KeyEvent> escape =
            event -> {
                if (event.getCode() == KeyCode.ESCAPE) {
                    event.consume();
                    close();
                }
            };
    private Scene scene;
    private Node from;
    private IntConsumer closed = moment -> {};

    EnlargedFigure(FigureSettings room) {
        figureView = FigureView.filling(room);
        getStyleClass().add("enlarged-figure");
        VBox.setVgrow(figureView, Priority.ALWAYS);
        HBox foot = new HBox(back);
        foot.setAlignment(Pos.BASELINE_RIGHT);
        getChildren().addAll(figureView, foot);
    }

    void show(ShownFigure shownFigure) {
        figureView.show(shownFigure);
    }

    /**
     * Covers the whole window from a moment of a figure on; then gives a node back the focus and
     * {@code whenClosed} the moment.
     */
    void open(ShownFigure shownFigure, int moment, Node node, IntConsumer whenClosed) {
        if (node.getScene() != null && node.getScene().getRoot() instanceof Pane root) {
            show(shownFigure);
            figureView.model().play().goTo(moment);
            from = node;
            closed = whenClosed;
            scene = node.getScene();
            scene.addEventFilter(KeyEvent.KEY_PRESSED, escape);
            root.getChildren().add(this);
            figureView.face().requestFocus();
        }
    }

    private void close() {
        if (scene != null) {
            scene.removeEventFilter(KeyEvent.KEY_PRESSED, escape);
            ((Pane) scene.getRoot()).getChildren().remove(this);
            scene = null;
            from.requestFocus();
            closed.accept(figureView.model().play().moment().get());
        }
    }
}
