package coldwright.desk.layout;

import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** A page that scrolls: a column of text in the middle. */
public class ScrollPage extends ScrollPane {
    private final VBox column = new VBox();

    /** An empty page in a style class; the column's is the same with {@code -column}. */
    protected ScrollPage(String look) {
        getStyleClass().addAll("reading", look);
        column.getStyleClass().addAll("column", look + "-column");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        StackPane sheet = new StackPane(column);
        sheet.getStyleClass().add("sheet");
        setContent(sheet);
    }

    protected final VBox column() {
        return column;
    }

    /** Adds nodes to the end of the column. */
    protected final void add(Node... nodes) {
        column.getChildren().addAll(nodes);
    }
}
