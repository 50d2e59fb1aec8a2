package coldwright.desk.prose;

import coldwright.desk.glossary.TermFinder;
import coldwright.desk.messages.TermLink;
import coldwright.desk.messages.TextControls;
import coldwright.desk.messages.Typography;

import javafx.scene.AccessibleRole;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;

import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.BulletList;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Heading;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Link;
import org.commonmark.node.ListBlock;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.ThematicBreak;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

/** Converts parsed CommonMark to nodes, block by block. */
final class ProseRenderer extends AbstractVisitor {
    private final Consumer<String> openLink;
    private final Deque<Pane> boxes = new ArrayDeque<>();
    private final Deque<String> looks = new ArrayDeque<>();
    private final Typography typography = new Typography();
    private final TermFinder terms;
    private TextFlow line;
    private boolean inLink;
    private final StringBuilder accessibleText = new StringBuilder();

    ProseRenderer(Pane box, Consumer<String> openLink, TermFinder terms) {
        this.openLink = openLink;
        this.terms = terms;
        boxes.push(box);
    }

    @Override
    public void visit(Paragraph paragraph) {
        setLine(paragraph, "paragraph");
    }

    @Override
    public void visit(Heading heading) {
        setLine(heading, "heading-" + heading.getLevel());
    }

    private void setLine(Node block, String look) {
        line = TextControls.styled(new TextFlow(), look);
        accessibleText.setLength(0);
        typography.begin();
        visitChildren(block);
        line.setAccessibleRole(AccessibleRole.TEXT);
        line.setAccessibleText(accessibleText.toString());
        boxes.element().getChildren().add(line);
        line = null;
    }

    @Override
    public void visit(BulletList list) {
        setList(list, "•", 0);
    }

    @Override
    public void visit(OrderedList list) {
        Integer first = list.getMarkerStartNumber();
        setList(list, null, first == null ? 1 : first);
    }

    private void setList(ListBlock list, String mark, int first) {
        VBox rows = TextControls.styled(new VBox(), "list", list.isTight() ? "tight" : "loose");
        int number = first;
        for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
            Label label =
                    TextControls.styled(
                            new Label(mark != null ? mark : number++ + "."), "list-mark");
            label.setMinWidth(Region.USE_PREF_SIZE);
            VBox content = TextControls.styled(new VBox(), "list-item");
            HBox.setHgrow(content, Priority.ALWAYS);
            within(content, item);
            HBox row = TextControls.styled(new HBox(label, content), "list-row");
            rows.getChildren().add(row);
        }
        boxes.element().getChildren().add(rows);
    }

    @Override
    public void visit(BlockQuote quote) {
        VBox aside = new VBox();
        String first = firstWords(quote).toLowerCase(Locale.ROOT);
        aside.getStyleClass().addAll("aside", first.startsWith("caution") ? "caution" : "tip");
        within(aside, quote);
        boxes.element().getChildren().add(aside);
    }

    private static String firstWords(Node node) {
        Node first = node;
        while (first.getFirstChild() != null) {
            first = first.getFirstChild();
        }
        return first instanceof org.commonmark.node.Text text ? text.getLiteral() : "";
    }

    private void within(Pane box, Node parent) {
        boxes.push(box);
        visitChildren(parent);
        boxes.pop();
    }

    @Override
    public void visit(FencedCodeBlock code) {
        setListing(code.getLiteral());
    }

    @Override
    public void visit(IndentedCodeBlock code) {
        setListing(code.getLiteral());
    }

    private void setListing(String text) {
        Label listing = TextControls.styled(new Label(text.stripTrailing()), "listing");
        listing.setWrapText(true);
        boxes.element().getChildren().add(listing);
    }

    @Override
    public void visit(ThematicBreak thematicBreak) {
        Region rule = TextControls.styled(new Region(), "rule");
        boxes.element().getChildren().add(rule);
    }

    @Override
    public void visit(Emphasis emphasis) {
        withLook("emphasis", emphasis);
    }

    @Override
    public void visit(StrongEmphasis strong) {
        withLook("strong", strong);
    }

    private void withLook(String look, Node node) {
        looks.push(look);
        visitChildren(node);
        looks.pop();
    }

    @Override
    public void visit(org.commonmark.node.Text text) {
        String set = typography.set(text.getLiteral());
        if (inLink || line.getStyleClass().stream().anyMatch(look -> look.startsWith("heading"))) {
            append(set);
            return;
        }
        for (TermFinder.Piece piece : terms.split(set)) {
            if (piece.term().isPresent()) {
                TermLink link =
                        TextControls.styled(
                                new TermLink(piece.text(), piece.term().get()),
                                looks.toArray(String[]::new));
                accessibleText.append(piece.text());
                line.getChildren().add(link);
            } else {
                append(piece.text());
            }
        }
    }

    @Override
    public void visit(Code code) {
        typography.pass(code.getLiteral());
        looks.push("code");
        append(code.getLiteral());
        looks.pop();
    }

    @Override
    public void visit(SoftLineBreak end) {
        append(typography.set(" "));
    }

    @Override
    public void visit(HardLineBreak end) {
        append(typography.set("\n"));
    }

    @Override
    public void visit(Link link) {
        TextFlow outer = line;
        line = new TextFlow();
        int from = accessibleText.length();
        inLink = true;
        visitChildren(link);
        inLink = false;
        Hyperlink words =
                TextControls.styled(new Hyperlink(accessibleText.substring(from)), "prose-link");
        words.setOnAction(event -> openLink.accept(link.getDestination()));
        line = outer;
        line.getChildren().add(words);
    }

    private void append(String words) {
        Text text = TextControls.styled(new Text(words), "ink");
        text.getStyleClass().addAll(List.copyOf(looks));
        accessibleText.append(words);
        line.getChildren().add(text);
    }
}
