package coldwright.desk.page;

import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** The page's smallest pieces: words to press and words to read. */
final class Words {
    private Words() {}

    /** A word to press. */
    static Button button(String word, Runnable action) {
        Button button = new Button(word);
        button.getStyleClass().add("word");
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(event -> action.run());
        return button;
    }

    /** A text that takes as many lines as it needs. */
    static Label label(String text, String... looks) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().addAll(looks);
        return label;
    }

    /** Shows a node only while something holds; what is not shown takes no room. */
    static <N extends Node> N shown(N node, ObservableValue<Boolean> when) {
        node.visibleProperty().bind(when);
        node.managedProperty().bind(when);
        return node;
    }

    /** Shows a node, or takes it away with its room. */
    static void show(Node node, boolean shown) {
        node.setVisible(shown);
        node.setManaged(shown);
    }
}
