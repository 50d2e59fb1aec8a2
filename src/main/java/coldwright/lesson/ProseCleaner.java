package coldwright.lesson;

import static coldwright.lesson.FaultList.text;

import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Block;
import org.commonmark.node.Code;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.LinkReferenceDefinition;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.SourceSpan;
import org.commonmark.node.Text;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import java.util.regex.Pattern;

/** Removes CommonMark that isn't shown, and reports it. */
final class ProseCleaner extends AbstractVisitor {
    private static final String COMMENT = "<!--";
    private static final int LONGEST_RULE = 300;
    private static final Pattern TABLE_RULE =
            Pattern.compile("\\|?\\s*:?-{2,}:?\\s*(\\|\\s*:?-+:?\\s*)+\\|?\\s*");

    private final FaultList faults;
    private final IntUnaryOperator lineInFile;
    private final List<VerifiedNumber> verifiedNumbers = new ArrayList<>();

    /** Nodes in which a comment was removed. */
    private final Set<Node> interrupted = new HashSet<>();

    private int line;

    /**
     * A cleaner; {@code lineInFile} maps a parsed line, from 0, to its line in the file, from 1.
     */
    ProseCleaner(FaultList faults, IntUnaryOperator lineInFile) {
        this.faults = faults;
        this.lineInFile = lineInFile;
    }

    /** The verified numbers in the blocks cleaned since the last call. */
    List<VerifiedNumber> takeVerifiedNumbers() {
        List<VerifiedNumber> taken = List.copyOf(verifiedNumbers);
        verifiedNumbers.clear();
        return taken;
    }

    /** The line in the file on which a node begins. */
    static int lineOf(Node node, IntUnaryOperator lineInFile) {
        return node.getSourceSpans().stream()
                .mapToInt(SourceSpan::getLineIndex)
                .map(lineInFile)
                .findFirst()
                .orElse(0);
    }

    /** Whether a node is an author's comment, which isn't shown. */
    static boolean isComment(Node node) {
        return node instanceof HtmlBlock html && html.getLiteral().strip().startsWith(COMMENT);
    }

    /** The words of a heading or of a part of it, without their markup. */
    static String wordsOf(Node node) {
        StringBuilder words = new StringBuilder();
        node.accept(
                new AbstractVisitor() {
                    @Override
                    public void visit(Text text) {
                        words.append(text.getLiteral());
                    }

                    @Override
                    public void visit(Code code) {
                        words.append(code.getLiteral());
                    }

                    @Override
                    public void visit(SoftLineBreak end) {
                        words.append(' ');
                    }
                });
        return words.toString();
    }

    /** Parses CommonMark within a fenced block; its blocks without what isn't shown. */
    List<Node> blocks(String text) {
        List<Node> nodes = new ArrayList<>();
        Node next;
        for (Node block = LessonReader.parser().parse(text).getFirstChild();
                block != null;
                block = next) {
            next = block.getNext();
            clean(block);
            if (block.getParent() != null && !(block instanceof LinkReferenceDefinition)) {
                nodes.add(block);
            }
        }
        return nodes;
    }

    /** Cleans a top-level block and everything within it. */
    void clean(Node block) {
        line = lineOf(block, lineInFile);
        block.accept(this);
    }

    @Override
    protected void visitChildren(Node parent) {
        int here = lineOf(parent, lineInFile);
        line = here > 0 ? here : line;
        super.visitChildren(parent);
        if (interrupted.remove(parent)) {
            joinTexts(parent);
        }
    }

    @Override
    public void visit(HtmlBlock html) {
        if (VerifiedNumberReader.isMeant(html.getLiteral().strip())) {
            addVerifiedNumber(html, html.getLiteral().strip());
        } else if (!isComment(html)) {
            fault(html, text("html.block"));
        }
        html.unlink();
    }

    @Override
    public void visit(HtmlInline html) {
        if (VerifiedNumberReader.isMeant(html.getLiteral())) {
            addVerifiedNumber(html, html.getLiteral());
        } else if (!html.getLiteral().startsWith(COMMENT)) {
            if (!html.getLiteral().startsWith("</")) {
                fault(html, text("html.inline", html.getLiteral()));
            }
            html.insertBefore(new Text(html.getLiteral()));
        }
        interrupted.add(html.getParent());
        html.unlink();
    }

    private void addVerifiedNumber(Node comment, String literal) {
        VerifiedNumberReader.read(wordsBefore(comment), literal, lineHere(comment), faults)
                .ifPresent(verifiedNumbers::add);
    }

    /** The end of the text before a node in its line. */
    private static String wordsBefore(Node node) {
        StringBuilder words = new StringBuilder();
        for (Node one = node.getPrevious();
                one != null && words.length() < VerifiedNumberReader.FAR_BACK;
                one = one.getPrevious()) {
            if (!(one instanceof Text || one instanceof Code || one.getFirstChild() != null)
                    || one instanceof Block) {
                break;
            }
            words.insert(0, wordsOf(one));
        }
        return words.toString();
    }

    /** Joins the texts around comments, so that a number and its unit are one text again. */
    private static void joinTexts(Node parent) {
        for (Node one = parent.getFirstChild(); one != null; one = one.getNext()) {
            if (one instanceof Text first && one.getNext() instanceof Text) {
                StringBuilder all = new StringBuilder(first.getLiteral());
                while (first.getNext() instanceof Text next) {
                    all.append(next.getLiteral());
                    next.unlink();
                }
                first.setLiteral(all.toString());
            }
        }
    }

    @Override
    public void visit(Image image) {
        fault(image, text("image", image.getDestination()));
        visitChildren(image);
        while (image.getFirstChild() != null) {
            image.insertBefore(image.getFirstChild());
        }
        image.unlink();
    }

    @Override
    public void visit(FencedCodeBlock code) {
        BlockKind.of(code.getInfo())
                .filter(word -> word != BlockKind.PLAIN)
                .ifPresent(word -> fault(code, text("block.nested", word.words())));
    }

    @Override
    public void visit(Paragraph paragraph) {
        for (Node node = paragraph.getFirstChild(); node != null; node = node.getNext()) {
            if (node instanceof Text text
                    && text.getLiteral().length() <= LONGEST_RULE
                    && TABLE_RULE.matcher(text.getLiteral()).matches()) {
                fault(text, text("table"));
                break;
            }
        }
        visitChildren(paragraph);
    }

    private void fault(Node node, String words) {
        faults.add(lineHere(node), words);
    }

    private int lineHere(Node node) {
        int own = lineOf(node, lineInFile);
        return own > 0 ? own : line;
    }
}
