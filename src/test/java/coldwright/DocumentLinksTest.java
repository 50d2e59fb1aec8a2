package coldwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.Test;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** Every link in the documents leads to a file, and to a heading of it. */
class DocumentLinksTest {
    private static List<Path> documents() throws IOException {
        List<Path> found = new ArrayList<>(List.of(Path.of("README.md"), Path.of("DEVELOPERS.md")));
        try (Stream<Path> docs = Files.walk(Path.of("docs"))) {
            docs.filter(file -> file.toString().endsWith(".md")).forEach(found::add);
        }
        return found;
    }

    private static Node parse(Path file) throws IOException {
        return Parser.builder().build().parse(Files.readString(file));
    }

    private static String words(Node node) {
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
                });
        return words.toString();
    }

    /** The names of a file's headings, as code hosts make them. */
    private static Set<String> headings(Path file) throws IOException {
        Set<String> names = new HashSet<>();
        parse(file)
                .accept(
                        new AbstractVisitor() {
                            @Override
                            public void visit(Heading heading) {
                                names.add(
                                        words(heading)
                                                .toLowerCase(Locale.ROOT)
                                                .replaceAll("[^\\p{L}\\p{N} _-]", "")
                                                .replace(' ', '-'));
                            }
                        });
        return names;
    }

    private static List<String> links(Path file) throws IOException {
        List<String> targets = new ArrayList<>();
        parse(file)
                .accept(
                        new AbstractVisitor() {
                            @Override
                            public void visit(Link link) {
                                targets.add(link.getDestination());
                            }

                            @Override
                            public void visit(Image image) {
                                targets.add(image.getDestination());
                            }
                        });
        return targets;
    }

    @Test
    void everyLinkLeadsSomewhere() throws IOException {
        List<String> broken = new ArrayList<>();
        int tried = 0;
        for (Path file : documents()) {
            for (String target : links(file)) {
                if (target.matches("(https?|mailto):.*")) {
                    continue;
                }
                tried++;
                String[] parts = target.split("#", 2);
                Path to = parts[0].isEmpty() ? file : file.resolveSibling(parts[0]).normalize();
                if (!Files.exists(to) || parts.length == 2 && !headings(to).contains(parts[1])) {
                    broken.add(file + " -> " + target);
                }
            }
        }
        assertEquals(List.of(), broken);
        assertTrue(tried > 20, "links tried: " + tried);
    }
}
