package coldwright.print;

import coldwright.words.Phrase;

import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.renderer.html.HtmlRenderer;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Text, prose and Java as well-formed HTML. */
final class HtmlMarkup {
    private static final HtmlRenderer RENDERER =
            HtmlRenderer.builder()
                    .escapeHtml(true)
                    .sanitizeUrls(true)
                    .attributeProviderFactory(context -> HtmlMarkup::attributes)
                    .build();

    /** The space between a number and its unit, where a line must not break. */
    private static final Pattern BEFORE_UNIT =
            Pattern.compile(
                    "(?<=\\d) (?=(?:°C|%|g|kg|mL|ml|L|µm|mm|cm|kJ|h|min|s)(?:[\\s.,;:)?!<]|$))");

    /** A temperature outside a tag; without this, lines may break within {@code °C}. */
    private static final Pattern DEGREES = Pattern.compile("[\\d.,−–]+\u00A0°[CF](?![^<>]*>)");

    /** Characters that are not allowed in XML text. */
    private static final Pattern UNPRINTABLE =
            Pattern.compile(
                    "[^\\x09\\x0A\\x20-\\x7E\\xA0-\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]");

    private HtmlMarkup() {}

    /** A text of the bundle in the language shown. */
    static String text(String key, Object... values) {
        return Phrase.of("print", key, values).shown();
    }

    static String escaped(String words) {
        return UNPRINTABLE
                .matcher(words)
                .replaceAll("")
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    /** One line of plain text, with numbers and their units kept together. */
    static String line(String words) {
        return kept(escaped(words));
    }

    static String prose(List<Node> blocks) {
        String html = blocks.stream().map(RENDERER::render).collect(Collectors.joining());
        String clean = UNPRINTABLE.matcher(html).replaceAll("");
        return kept(clean);
    }

    private static String kept(String html) {
        String joined = BEFORE_UNIT.matcher(html).replaceAll("\u00A0");
        return DEGREES.matcher(joined).replaceAll("<span class=\"unit\">$0</span>");
    }

    private static void attributes(Node node, String tag, Map<String, String> attributes) {
        if (isCaution(node)) {
            attributes.put("class", "caution");
        }
        boolean block = node instanceof FencedCodeBlock || node instanceof IndentedCodeBlock;
        if (block && tag.equals("code")) {
            attributes.remove("class");
        }
    }

    static boolean isCaution(Node node) {
        return node instanceof BlockQuote && wordsOf(node).startsWith("Caution");
    }

    private static String wordsOf(Node node) {
        StringBuilder words = new StringBuilder();
        node.accept(
                new AbstractVisitor() {
                    @Override
                    public void visit(Text text) {
                        words.append(text.getLiteral());
                    }
                });
        return words.toString();
    }

    /** Java text with syntax colours. */
    static String java(String code) {
        return CodeListing.html(code.stripTrailing());
    }
}
