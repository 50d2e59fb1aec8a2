package coldwright.desk.layout;

import coldwright.desk.messages.TextControls;

import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;

import java.util.Optional;
import java.util.function.Supplier;

/** Something folded away behind a word. */
public final class CollapsibleSection extends VBox {
    private final ToggleButton word = new ToggleButton();

    private final Pane under;
    private Node content;

    /**
     * Folds it.
     *
     * @param open what the word says to open it
     * @param close what the word says to fold it again
     * @param made makes what is folded, when it is first opened
     */
    public CollapsibleSection(String open, String close, Supplier<Node> made) {
        this(open, close, made, Optional.empty());
    }

    /**
     * Folds it; what is folded opens at another place, so that its word can stand in a row.
     *
     * @param open what the word says to open it
     * @param close what the word says to fold it again
     * @param made makes what is folded, when it is first opened
     * @param place where it opens; empty for under its word
     */
    public CollapsibleSection(
            String open, String close, Supplier<Node> made, Optional<Pane> place) {
        under = place.orElse(this);
        getStyleClass().add("folded");
        word.getStyleClass().setAll("word", "quiet-word");
        word.setText(open);
        word.selectedProperty()
                .addListener(
                        (value, was, is) -> {
                            word.setText(is ? close : open);
                            if (is && content == null) {
                                content = made.get();
                                under.getChildren().add(content);
                            }
                            if (content != null) {
                                TextControls.show(content, is);
                            }
                        });
        getChildren().add(word);
    }

    /** Opens or folds it. */
    public void setOpen(boolean open) {
        word.setSelected(open);
    }
}
