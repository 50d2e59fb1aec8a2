package coldwright.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;

/** What can be said of an HTML page's soundness without a browser. */
final class Pages {
    private static final Set<String> FETCHED_BY =
            Set.of("src", "srcset", "data", "poster", "action", "background");

    private Pages() {}

    static Document parsed(String html) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(
                    "http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            return factory.newDocumentBuilder().parse(new InputSource(new StringReader(html)));
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new AssertionError(html, e);
        }
    }

    static List<Element> all(Document page, String name) {
        NodeList found = page.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    /** Language, title, headings in order, pictures with words, tables with heads, no fetching. */
    static void requireSound(String html) {
        Document page = parsed(html);
        assertTrue(page.getDocumentElement().getAttribute("lang").startsWith("en"));
        assertFalse(all(page, "title").get(0).getTextContent().isBlank());
        assertEquals(1, all(page, "main").size());
        assertEquals(1, all(page, "h1").size());
        headings(page);
        pictures(page);
        tables(page);
        structure(page);
        nothingFetched(page);
    }

    /** What HTML allows inside what, as far as a handout uses it, and links that lead somewhere. */
    private static void structure(Document page) {
        Set<String> ids = new HashSet<>();
        for (Element one : all(page, "*")) {
            ids.add(one.getAttribute("id"));
            String inside = ((Node) one).getParentNode().getNodeName();
            if (inside.matches("ul|ol")) {
                assertEquals("li", one.getTagName());
            }
            if (inside.matches("p|h[1-6]|b|i|em|strong|code|span|a")) {
                assertTrue(
                        one.getTagName().matches("a|b|br|code|em|i|img|span|strong|sup"),
                        one.getTagName() + " in " + inside);
            }
            if (inside.equals("table")) {
                assertTrue(one.getTagName().matches("caption|thead|tbody"), one.getTagName());
            }
            assertFalse(one.getTagName().equals("li") && !inside.matches("ul|ol"), "a lone item");
        }
        for (Element link : all(page, "a")) {
            String to = link.getAttribute("href");
            assertTrue(!to.startsWith("#") || ids.contains(to.substring(1)), to);
            assertFalse(link.getTextContent().isBlank());
        }
    }

    private static void headings(Document page) {
        int last = 0;
        for (Element one : all(page, "*")) {
            if (one.getTagName().matches("h[1-6]")) {
                int level = one.getTagName().charAt(1) - '0';
                assertTrue(level <= last + 1, "h" + level + " follows h" + last);
                assertFalse(one.getTextContent().isBlank());
                last = level;
            }
        }
    }

    private static void pictures(Document page) {
        Set<String> ids = new HashSet<>();
        for (Element one : all(page, "*")) {
            if (one.hasAttribute("id")) {
                assertTrue(ids.add(one.getAttribute("id")), one.getAttribute("id"));
            }
        }
        for (Element svg : all(page, "svg")) {
            assertEquals("img", svg.getAttribute("role"));
            String label = svg.getAttribute("aria-label");
            if (label.isBlank()) {
                for (String id : svg.getAttribute("aria-labelledby").split(" ")) {
                    assertTrue(ids.contains(id), "no words for a picture: " + id);
                }
            }
        }
        all(page, "img").forEach(one -> assertFalse(one.getAttribute("alt").isBlank()));
    }

    private static void tables(Document page) {
        for (Element table : all(page, "table")) {
            NodeList heads = table.getElementsByTagName("th");
            assertTrue(heads.getLength() > 0);
            for (int i = 0; i < heads.getLength(); i++) {
                Element head = (Element) heads.item(i);
                assertFalse(head.getAttribute("scope").isBlank());
                assertFalse(head.getTextContent().isBlank());
            }
        }
    }

    private static void nothingFetched(Document page) {
        for (String name : List.of("script", "link", "iframe", "object", "embed", "base")) {
            assertEquals(0, all(page, name).size(), name);
        }
        for (Element one : all(page, "*")) {
            FETCHED_BY.forEach(
                    by ->
                            assertTrue(
                                    !one.hasAttribute(by)
                                            || one.getAttribute(by).startsWith("data:"),
                                    one.getTagName()));
        }
        for (Element style : all(page, "style")) {
            assertFalse(style.getTextContent().matches("(?s).*(@import|url\\().*"));
        }
    }
}
