package coldwright.desk.batch;

import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;

import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/**
 * A tile with a title, a small picture and a caption; pressing it leads to the large figure. Not a
 * JavaFX button, whose height ignores wrapped text.
 */
final class FigureTile extends VBox {
    private final String title;
    private final Runnable go;
    private final StackPane picture = new StackPane();
    private final Label words = TextControls.label("", "brew-tile-words");

    FigureTile(String title, Runnable go) {
        this.title = title;
        this.go = go;
        picture.getStyleClass().add("brew-tile-picture");
        getChildren().addAll(TextControls.label(title, "brew-tile-title"), picture, words);
        getStyleClass().add("brew-tile");
        // its column decides how wide it is, also after the window has become narrower
        setMinWidth(0);
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.BUTTON);
        setOnMouseClicked(event -> go.run());
        setOnKeyPressed(
                event -> {
                    if (event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.SPACE) {
                        event.consume();
                        go.run();
                    }
                });
    }

    /** Shows a picture with a caption. */
    void show(Node is, String below) {
        show(is, below, below);
    }

    /** Shows a picture with a caption and a text for screen readers. */
    void show(Node is, String below, String told) {
        picture.getChildren().setAll(is);
        words.setText(below);
        TextControls.show(words, !below.isEmpty());
        setAccessibleText(Messages.of("batch.tile.to", title, told));
    }

    @Override
    public void executeAccessibleAction(AccessibleAction action, Object... parameters) {
        if (action == AccessibleAction.FIRE) {
            go.run();
        } else {
            super.executeAccessibleAction(action, parameters);
        }
    }
}
