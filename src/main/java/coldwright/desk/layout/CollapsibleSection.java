package coldwright.desk.layout;

import coldwright.desk.messages.TextControls;

import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;

import java.util.Optional;
import java.util.function.Supplier;

/** A section that a button opens and closes. */
public final class CollapsibleSection extends VBox {
    private final ToggleButton word = new ToggleButton();

    private final Pane under;
    private Node content;

    /**
     * Makes a section, closed, with the texts of the buttons that open and close it; its content is
     * made when it is first opened.
     */
    public CollapsibleSection(String open, String close, Supplier<Node> made) {
        this(open, close, made, Optional.empty());
    }

    /** As above, with its content in another parent if there is one. */
    public CollapsibleSection(
            String open, String close, Supplier<Node> made, Optional<Pane> place) {
        under = place.orElse(this);
        getStyleClass().add("collapsible");
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

    public void setOpen(boolean open) {
        word.setSelected(open);
    }
}
