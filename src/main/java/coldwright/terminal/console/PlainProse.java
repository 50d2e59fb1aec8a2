package coldwright.terminal.console;

import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.BulletList;
import org.commonmark.node.Code;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Heading;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Link;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;
import org.commonmark.node.ThematicBreak;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Formats CommonMark as plain lines of a given width. */
public final class PlainProse extends AbstractVisitor {
    private static final int NARROWEST = 20;
    private static final String INDENT = "    ";
    private static final String NO_BREAK = "\u00A0";

    /** The space between a number and its unit, where a line must not break. */
    private static final Pattern BEFORE_UNIT =
            Pattern.compile(
                    "(?<=\\d) (?=(?:°C|%|g|kg|mL|ml|L|µm|mm|cm|kJ|h|min|s)(?:[\\s.,;:)?!]|$))");

    private final int width;
    private final List<String> lines = new ArrayList<>();
    private String margin = "";
    private String firstMargin;
    private StringBuilder words = new StringBuilder();

    private PlainProse(int width) {
        this.width = width;
    }

    /** Formats blocks with an empty line between them, to a width that a long word may exceed. */
    public static List<String> set(List<Node> blocks, int width) {
        PlainProse text = new PlainProse(width);
        blocks.forEach(block -> block.accept(text));
        return text.lines;
    }

    /** Formats one paragraph of plain text. */
    public static List<String> wrap(String text, int width) {
        return behind("", text, width);
    }

    /**
     * Wraps one line if it is longer than a width in characters, which a long word may exceed; the
     * lines after the first are indented like it.
     */
    static List<String> fold(String line, int width) {
        String indent = " ".repeat(line.length() - line.stripLeading().length());
        return length(line) <= width ? List.of(line) : behind(indent, line.strip(), width);
    }

    /** Formats one paragraph of plain text behind a mark, such as that of a choice. */
    public static List<String> behind(String mark, String text, int width) {
        PlainProse setter = new PlainProse(width);
        setter.firstMargin = mark;
        setter.margin = " ".repeat(mark.length());
        setter.words.append(text);
        setter.endParagraph();
        return setter.lines;
    }

    @Override
    public void visit(Heading heading) {
        visitChildren(heading);
        endParagraph();
    }

    @Override
    public void visit(Paragraph paragraph) {
        visitChildren(paragraph);
        endParagraph();
    }

    @Override
    public void visit(BlockQuote quote) {
        within("  | ", "  | ", quote);
    }

    @Override
    public void visit(BulletList list) {
        for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
            within("  • ", INDENT, item);
        }
    }

    @Override
    public void visit(OrderedList list) {
        Integer start = list.getMarkerStartNumber();
        int number = start == null ? 1 : start;
        for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
            String mark = "%3s. ".formatted(number++);
            within(mark, " ".repeat(mark.length()), item);
        }
    }

    @Override
    public void visit(ListItem item) {
        visitChildren(item);
    }

    private void within(String first, String others, Node node) {
        String outer = margin;
        String outerFirst = firstMargin;
        firstMargin = (outerFirst == null ? outer : outerFirst) + first;
        margin = outer + others;
        visitChildren(node);
        margin = outer;
        firstMargin = null;
    }

    @Override
    public void visit(FencedCodeBlock code) {
        verbatim(code.getLiteral());
    }

    @Override
    public void visit(IndentedCodeBlock code) {
        verbatim(code.getLiteral());
    }

    private void verbatim(String literal) {
        part();
        literal.lines().forEach(line -> lines.add((takeMargin() + INDENT + line).stripTrailing()));
    }

    @Override
    public void visit(ThematicBreak rule) {
        part();
        lines.add(takeMargin() + "*  *  *");
    }

    @Override
    public void visit(Text text) {
        words.append(text.getLiteral());
    }

    @Override
    public void visit(Code code) {
        words.append('`').append(code.getLiteral()).append('`');
    }

    @Override
    public void visit(Link link) {
        int before = words.length();
        visitChildren(link);
        String shown = words.substring(before);
        if (!shown.equals(link.getDestination())) {
            words.append(" (").append(link.getDestination()).append(')');
        }
    }

    @Override
    public void visit(SoftLineBreak end) {
        words.append(' ');
    }

    @Override
    public void visit(HardLineBreak end) {
        words.append('\n');
    }

    private void endParagraph() {
        part();
        for (String paragraph : words.toString().split("\n", -1)) {
            fill(paragraph);
        }
        words = new StringBuilder();
    }

    private void fill(String paragraph) {
        StringBuilder line = new StringBuilder(takeMargin());
        int start = line.length();
        int most = Math.max(start + NARROWEST, width);
        String glued = BEFORE_UNIT.matcher(paragraph.strip()).replaceAll(NO_BREAK);
        for (String word : glued.split("[ \t]+", -1)) {
            boolean first = line.length() == start;
            if (!first && length(line) + 1 + length(word) > most) {
                lines.add(line.toString().replace(NO_BREAK, " "));
                line = new StringBuilder(takeMargin());
                start = line.length();
                first = true;
            }
            line.append(first ? "" : " ").append(word);
        }
        lines.add(line.toString().replace(NO_BREAK, " "));
    }

    private static int length(CharSequence text) {
        return (int) text.codePoints().count();
    }

    /** An empty line between blocks, with the margin that both have in common. */
    private void part() {
        if (!lines.isEmpty()) {
            lines.add(firstMargin == null ? margin.stripTrailing() : "");
        }
    }

    private String takeMargin() {
        String taken = firstMargin == null ? margin : firstMargin;
        firstMargin = null;
        return taken;
    }
}
