package coldwright.desk.layout;

import coldwright.desk.messages.TextControls;

import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ScrollPane.ScrollBarPolicy;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** A page that scrolls: a column of text in the middle. */
public class ScrollPage extends ScrollPane {
    private final VBox column = TextControls.styled(new VBox(), "column");

    /** An empty page in a style class; the column's is the same with {@code -column}. */
    @SuppressWarnings("this-escape") // no page overrides what JavaFX's own methods call
    public ScrollPage(String look) {
        getStyleClass().addAll("reading", look);
        column.getStyleClass().add(look + "-column");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        StackPane sheet = TextControls.styled(new StackPane(column), "sheet");
        setContent(sheet);
        KeyScrolling.keepFocusInView(this, super::requestFocus);
    }

    public final VBox column() {
        return column;
    }

    /** Adds nodes to the end of the column. */
    protected final void add(Node... nodes) {
        column.getChildren().addAll(nodes);
    }
}
