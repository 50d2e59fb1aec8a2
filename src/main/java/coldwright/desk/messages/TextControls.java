package coldwright.desk.messages;

import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;

/** The page's smallest pieces: words to press and words to read. */
public final class TextControls {
    private TextControls() {}

    /**
     * A word to press.
     *
     * @param word what it says
     * @param action what it does
     * @return the word
     */
    public static Button button(String word, Runnable action) {
        Button button = new Button(word);
        button.getStyleClass().add("word");
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(event -> action.run());
        return button;
    }

    /**
     * A text that takes as many lines as it needs.
     *
     * @param text what it says
     * @param looks its names in the style sheet
     * @return the text
     */
    public static Label label(String text, String... looks) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().addAll(looks);
        return label;
    }

    /**
     * Scrolls a page to a height; as far as it goes if it ends before.
     *
     * @param page what scrolls
     * @param y what shall be at the top, pixels of the page's content
     */
    public static void scroll(ScrollPane page, double y) {
        double more =
                page.getContent().getLayoutBounds().getHeight()
                        - page.getViewportBounds().getHeight();
        page.setVvalue(more <= 0 ? 0 : Math.max(0, Math.min(1, y / more)));
    }

    /**
     * Shows a node only while something holds; what is not shown takes no room.
     *
     * @param <N> what it is
     * @param node the node
     * @param when what must hold
     * @return the node
     */
    public static <N extends Node> N shown(N node, ObservableValue<Boolean> when) {
        node.visibleProperty().bind(when);
        node.managedProperty().bind(when);
        return node;
    }

    /**
     * Shows a node, or takes it away with its room.
     *
     * @param node the node
     * @param shown whether it is shown
     */
    public static void show(Node node, boolean shown) {
        node.setVisible(shown);
        node.setManaged(shown);
    }
}
