package coldwright.desk.prose;

import coldwright.desk.glossary.TermFinder;

import javafx.scene.layout.VBox;

import org.commonmark.node.Node;

import java.util.List;
import java.util.function.Consumer;

/** A block of prose on the page. */
public final class ProseView extends VBox {
    /**
     * Shows parsed CommonMark blocks in order; {@code openLink} receives the address of a link that
     * the learner follows, and {@code terms} makes the first use of each term a link.
     */
    public ProseView(List<Node> blocks, Consumer<String> openLink, TermFinder terms) {
        getStyleClass().add("prose");
        setFocusTraversable(false);
        ProseRenderer setter = new ProseRenderer(this, openLink, terms);
        blocks.forEach(block -> block.accept(setter));
    }
}
