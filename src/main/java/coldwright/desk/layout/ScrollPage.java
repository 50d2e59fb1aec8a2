package coldwright.desk.layout;

import coldwright.desk.messages.TextControls;

import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ScrollPane.ScrollBarPolicy;
import javafx.scene.input.KeyEvent;
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
        addEventHandler(KeyEvent.KEY_PRESSED, event -> Platform.runLater(this::keepFocusInView));
    }

    /** A key has scrolled the page: what it scrolled away loses the focus to the page. */
    private void keepFocusInView() {
        Node focused = getScene() == null ? null : getScene().getFocusOwner();
        boolean away =
                TextControls.around(focused).anyMatch(one -> one == getContent())
                        && !TextControls.isSeen(focused, this);
        if (away) {
            super.requestFocus();
        }
    }

    public final VBox column() {
        return column;
    }

    /** Adds nodes to the end of the column. */
    protected final void add(Node... nodes) {
        column.getChildren().addAll(nodes);
    }
}
