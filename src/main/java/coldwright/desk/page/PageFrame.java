package coldwright.desk.page;

import coldwright.desk.layout.PageLayout;
import coldwright.desk.messages.TextControls;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;

/** The page that is shown, and the contents: beside it, or over it behind a button. */
final class PageFrame extends BorderPane {
    private final StackPane page = TextControls.styled(new StackPane(), "page");
    private final Label here = TextControls.styled(new Label(), "strip-here");
    private final HBox strip =
            TextControls.row("strip", TextControls.command("contents", this::toggleContents), here);
    private final ContentsView contents;

    PageFrame(ContentsView contents, Node overThePage) {
        this.contents = contents;
        HBox.setHgrow(here, Priority.ALWAYS);
        setCenter(new StackPane(page, overThePage));
    }

    void show(Node one) {
        page.getChildren().setAll(one);
    }

    /** Shows where the reader is. */
    void title(String words) {
        here.setText(words);
    }

    void withoutContents() {
        setLeft(null);
        setTop(null);
    }

    /** Contents beside the page if there is room, or else behind a button above it. */
    void withContents(PageLayout now, double emPx) {
        contents.setPrefWidth(now.contentsBeside() ? now.contentsPx() : 17 * emPx);
        contents.setMaxWidth(contents.getPrefWidth());
        if (now.contentsBeside()) {
            closeContents();
            setLeft(contents);
            setTop(null);
        } else if (getTop() == null) {
            setLeft(null);
            setTop(strip);
        }
    }

    private void toggleContents() {
        if (!closeContents()) {
            page.getChildren().add(contents);
            StackPane.setAlignment(contents, Pos.TOP_LEFT);
            contents.focusHere();
        }
    }

    /** Closes the contents if they cover the page. Returns whether they did. */
    boolean closeContents() {
        boolean covered = page.getChildren().remove(contents);
        if (covered) {
            page.getChildren().get(0).requestFocus();
        }
        return covered;
    }

    void focusContents() {
        if (getLeft() == contents) {
            contents.focusHere();
        } else {
            toggleContents();
        }
    }
}
