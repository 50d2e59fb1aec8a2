import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.EntityTree;
import com.sun.source.doctree.LinkTree;
import com.sun.source.doctree.LiteralTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.doctree.ReturnTree;
import com.sun.source.doctree.TextTree;

import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The text of a Javadoc comment, without its markup. */
final class DocWords {
    private DocWords() {}

    /** Sentence, parameters and return value. */
    static List<String> all(DocCommentTree doc, String parameters) {
        if (doc == null) {
            return List.of("", parameters, "");
        }
        String returns =
                doc.getBlockTags().stream()
                        .filter(ReturnTree.class::isInstance)
                        .map(tag -> text(((ReturnTree) tag).getDescription()))
                        .findFirst()
                        .orElse("");
        return List.of(sentence(text(doc.getFirstSentence())), parameters, returns);
    }

    /** The text on a parameter; empty if there is none. */
    static String parameter(DocCommentTree doc, String name) {
        return doc == null
                ? ""
                : doc.getBlockTags().stream()
                        .filter(ParamTree.class::isInstance)
                        .map(ParamTree.class::cast)
                        .filter(tag -> tag.getName().getName().contentEquals(name))
                        .map(tag -> text(tag.getDescription()))
                        .findFirst()
                        .orElse("");
    }

    /** Adds a capital and a full stop. */
    static String sentence(String words) {
        String whole = words.isEmpty() || words.endsWith(".") ? words : words + ".";
        return capital(whole);
    }

    private static String capital(String words) {
        return words.isEmpty()
                ? ""
                : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static String text(List<? extends DocTree> trees) {
        StringBuilder text = new StringBuilder();
        for (DocTree tree : trees) {
            if (tree instanceof TextTree plain) {
                text.append(plain.getBody());
            } else if (tree instanceof LiteralTree literal) {
                text.append(literal.getBody().getBody());
            } else if (tree instanceof LinkTree link) {
                String label = text(link.getLabel());
                String target = link.getReference().getSignature().replaceFirst("^#", "");
                text.append(label.isEmpty() ? target.replace('#', '.') : label);
            } else if (tree instanceof ReturnTree returns) {
                text.append(text(returns.getDescription()));
            } else if (tree instanceof EntityTree entity) {
                text.append(
                        Map.of("lt", "<", "gt", ">", "amp", "&", "nbsp", " ")
                                .getOrDefault(entity.getName().toString(), ""));
            }
        }
        return text.toString().replaceAll("\\s+", " ").strip();
    }
}
