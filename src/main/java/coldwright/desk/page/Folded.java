package coldwright.desk.page;

import coldwright.desk.say.Words;

import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.VBox;

import java.util.function.Supplier;

/** Something folded away behind a word. */
final class Folded extends VBox {
    private final ToggleButton word = new ToggleButton();

    /**
     * Folds it.
     *
     * @param open what the word says to open it
     * @param close what the word says to fold it again
     * @param content makes what is folded, when it is first opened
     */
    Folded(String open, String close, Supplier<Node> content) {
        getStyleClass().add("folded");
        word.getStyleClass().setAll("word", "quiet-word");
        word.setText(open);
        word.selectedProperty()
                .addListener(
                        (value, was, is) -> {
                            word.setText(is ? close : open);
                            if (is && getChildren().size() == 1) {
                                getChildren().add(content.get());
                            }
                            if (getChildren().size() > 1) {
                                Words.show(getChildren().get(1), is);
                            }
                        });
        getChildren().add(word);
    }

    /** Opens or folds it. */
    void setOpen(boolean open) {
        word.setSelected(open);
    }
}
