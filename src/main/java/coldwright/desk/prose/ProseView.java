package coldwright.desk.prose;

import javafx.scene.layout.VBox;

import org.commonmark.node.Node;

import java.util.List;
import java.util.function.Consumer;

/** A block of prose on the page. */
public final class ProseView extends VBox {
    /**
     * Shows parsed blocks.
     *
     * @param blocks CommonMark blocks, in order
     * @param openLink receives the address of a link that the learner follows
     */
    public ProseView(List<Node> blocks, Consumer<String> openLink) {
        getStyleClass().add("prose");
        setFocusTraversable(false);
        ProseRenderer setter = new ProseRenderer(this, openLink);
        blocks.forEach(block -> block.accept(setter));
    }
}
