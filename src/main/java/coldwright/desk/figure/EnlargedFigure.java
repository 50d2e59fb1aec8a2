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

/** A figure that fills the window; Escape or a button closes it. */
public final class EnlargedFigure extends VBox {
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
    private Runnable closed = () -> {};

    public EnlargedFigure(FigureSettings room) {
        figureView = FigureView.filling(room);
        getStyleClass().add("enlarged-figure");
        VBox.setVgrow(figureView, Priority.ALWAYS);
        HBox foot = new HBox(back);
        foot.setAlignment(Pos.BASELINE_RIGHT);
        getChildren().addAll(figureView, foot);
    }

    public void show(ShownFigure shownFigure) {
        figureView.show(shownFigure);
    }

    int moment() {
        return figureView.model().play().moment().get();
    }

    /** Shows the moment that another figure shows. */
    void at(int moment) {
        figureView.model().play().goTo(moment);
    }

    /** Covers the whole window; runs {@code whenClosed} and gives a node back the focus. */
    public void open(Node node, Runnable whenClosed) {
        if (node.getScene() != null && node.getScene().getRoot() instanceof Pane root) {
            from = node;
            closed = whenClosed;
            scene = node.getScene();
            scene.addEventFilter(KeyEvent.KEY_PRESSED, escape);
            root.getChildren().add(this);
            figureView.face().requestFocus();
        }
    }

    public void close() {
        if (scene != null) {
            scene.removeEventFilter(KeyEvent.KEY_PRESSED, escape);
            ((Pane) scene.getRoot()).getChildren().remove(this);
            scene = null;
            from.requestFocus();
            closed.run();
        }
    }
}
