package coldwright.desk.messages;

import coldwright.desk.glossary.Glossary;

import javafx.beans.value.ObservableValue;
import javafx.geometry.Bounds;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;

import java.util.Objects;
import java.util.stream.Stream;

/** Small controls: buttons and labels. */
public final class TextControls {
    /** Room between a node that is scrolled into view and the edge. */
    private static final double GAP_PX = 12;

    private TextControls() {}

    public static Button button(String word, Runnable action) {
        Button button = new Button(Typography.of(word));
        button.getStyleClass().add("word");
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(event -> action.run());
        return button;
    }

    /** A button with a text of the window, by its key. */
    public static Button command(String key, Runnable action) {
        return button(Messages.of(key), action);
    }

    /** Adds style classes to a node. */
    public static <N extends Node> N styled(N node, String... looks) {
        node.getStyleClass().addAll(looks);
        return node;
    }

    /** Nodes beside each other on one base line, in a style class. */
    public static HBox row(String look, Node... nodes) {
        HBox row = styled(new HBox(nodes), look);
        row.setAlignment(Pos.BASELINE_LEFT);
        return row;
    }

    /**
     * A label that wraps, typeset so that no number breaks apart from its unit. If all of it is a
     * term of the glossary, it is a link to its meaning.
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

    /** Runs an action when a field's text is complete: at Enter, or when it loses the focus. */
    public static void whenTyped(TextField field, Runnable action) {
        field.setOnAction(event -> action.run());
        field.focusedProperty()
                .subscribe(
                        (was, is) -> {
                            if (!is) {
                                action.run();
                            }
                        });
    }

    /**
     * Scrolls a page to a height in pixels of its content, or to the end if the page ends before.
     */
    public static void scroll(ScrollPane page, double y) {
        double more =
                page.getContent().getLayoutBounds().getHeight()
                        - page.getViewportBounds().getHeight();
        page.setVvalue(more <= 0 ? 0 : Math.max(0, Math.min(1, y / more)));
    }

    /**
     * Scrolls a node into view, unless it is visible above the page's covered foot (pixels). What
     * has the focus stays visible.
     */
    public static void reveal(ScrollPane page, Node node, double coveredPx) {
        Bounds bounds = inPage(page, node);
        double top = offset(page);
        double seen = page.getViewportBounds().getHeight() - coveredPx;
        double to = top;
        if (bounds.getMinY() < top) {
            to = bounds.getMinY() - GAP_PX;
        } else if (bounds.getMaxY() > top + seen) {
            to = Math.min(bounds.getMaxY() - seen + GAP_PX, bounds.getMinY() - GAP_PX);
        }
        Node focused = page.getScene().getFocusOwner();
        if (to > top && focused != null && focused != node && isWithin(focused, page)) {
            to = Math.max(top, Math.min(to, inPage(page, focused).getMinY() - GAP_PX));
        }
        if (to != top) {
            scroll(page, to);
        }
    }

    private static Bounds inPage(ScrollPane page, Node node) {
        return page.getContent().sceneToLocal(node.localToScene(node.getBoundsInLocal()));
    }

    /** A node and all that contain it, from the inside out; nothing for null. */
    public static Stream<Node> around(Node node) {
        return Stream.iterate(node, Objects::nonNull, Node::getParent);
    }

    private static boolean isWithin(Node node, ScrollPane page) {
        return around(node).anyMatch(one -> one == page.getContent());
    }

    /** The page's top, pixels of its content. */
    public static double offset(ScrollPane page) {
        double room =
                page.getContent().getLayoutBounds().getHeight()
                        - page.getViewportBounds().getHeight();
        return Math.max(0, room) * page.getVvalue();
    }

    /** Scrolls a node into view on the page that contains it, if any. */
    public static void reveal(Node node, double coveredPx) {
        around(node)
                .filter(one -> one instanceof ScrollPane page && isWithin(node, page))
                .map(ScrollPane.class::cast)
                .findFirst()
                .ifPresent(
                        page -> {
                            page.applyCss();
                            page.layout();
                            reveal(page, node, coveredPx);
                        });
    }

    /** Shows a node only while a condition is true; a hidden node takes no room. */
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
