package coldwright.desk.messages;

import coldwright.desk.glossary.Glossary;

import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;

/** Small controls: buttons and labels. */
public final class TextControls {
    private TextControls() {}

    /**
     * Makes a button.
     *
     * @param word its text
     * @param action what it does
     */
    public static Button button(String word, Runnable action) {
        Button button = new Button(Typography.of(word));
        button.getStyleClass().add("word");
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(event -> action.run());
        return button;
    }

    /**
     * A label that wraps, typeset so that no number breaks apart from its unit. If all of it is a
     * term of the glossary, it is a link to its meaning.
     *
     * @param looks its style classes
     */
    public static Label label(String text, String... looks) {
        Label label = literal(Typography.of(text), looks);
        Glossary.ofThisProgram().term(text).ifPresent(term -> TermLink.on(label, term));
        return label;
    }

    /** A label that wraps, with its text exactly as given, such as Java. */
    public static Label literal(String text, String... looks) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().addAll(looks);
        return label;
    }

    /**
     * Scrolls a page to a height, or to the end if the page ends before.
     *
     * @param page the page
     * @param y new top, pixels of the page's content
     */
    public static void scroll(ScrollPane page, double y) {
        double more =
                page.getContent().getLayoutBounds().getHeight()
                        - page.getViewportBounds().getHeight();
        page.setVvalue(more <= 0 ? 0 : Math.max(0, Math.min(1, y / more)));
    }

    /**
     * Shows a node only while a condition is true; a hidden node takes no room.
     *
     * @param <N> type of the node
     * @param node the node
     * @param when the condition
     * @return the node
     */
    public static <N extends Node> N shown(N node, ObservableValue<Boolean> when) {
        node.visibleProperty().bind(when);
        node.managedProperty().bind(when);
        return node;
    }

    /** Shows a node, or hides it so that it takes no room. */
    public static void show(Node node, boolean shown) {
        node.setVisible(shown);
        node.setManaged(shown);
    }
}
