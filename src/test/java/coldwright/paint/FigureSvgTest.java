package coldwright.paint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Drawing;
import coldwright.figure.Figure;
import coldwright.figure.Piece;
import coldwright.figure.Tint;
import coldwright.paint.drawing.DrawingPalette;
import coldwright.paint.style.FigureFont;
import coldwright.paint.style.FigureFormat;
import coldwright.paint.style.FigureTheme;

import org.junit.jupiter.api.Test;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

import javax.xml.parsers.DocumentBuilderFactory;

/** The form of the SVG files, whatever draws them. */
class FigureSvgTest {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final FigureFormat SHEET = FigureFormat.of(700, 500);
    private static final Pattern LINK = Pattern.compile("url\\(#([^)]+)\\)");
    private static final Pattern NUMBER = Pattern.compile("-?\\d*\\.?\\d+");
    private static final Set<String> GEOMETRY =
            Set.of(
                    "d",
                    "x",
                    "y",
                    "x1",
                    "x2",
                    "y1",
                    "y2",
                    "cx",
                    "cy",
                    "r",
                    "rx",
                    "ry",
                    "width",
                    "height",
                    "points",
                    "textLength",
                    "transform",
                    "stroke-width",
                    "stroke-dasharray");

    private static final Figure FIGURE =
            Figure.of("Sugar & <ice>")
                    .x("sugar & more", "%")
                    .y("freezing point", "°C")
                    .line("sucrose < all", 0, 40, x -> -x * x / 300)
                    .line("other", 0, 40, x -> -x / 3)
                    .points("measured", new double[] {10, 20}, new double[] {-0.7, -1.4})
                    .band("spread", new double[] {0, 40}, x -> -x / 10 - 1, x -> -x / 10)
                    .markX("eutectic", 23.3);
    private static final Figure BARS =
            Figure.of("Bars")
                    .y("solids", "%")
                    .bars("a", List.of("rum", "milk"), new double[] {36, 12});
    private static final Drawing WARM =
            Drawing.of("Warm", new Drawing.Field(100, 70, "mm"), new Drawing.ScaleBar(20, "20 mm"))
                    .warmth(-18, 20)
                    .at(
                            new Drawing.Moment(
                                    1,
                                    "s",
                                    "",
                                    List.of(
                                            new Piece.Band(
                                                    0, 70, Tint.warmth(-18), Tint.warmth(20)),
                                            new Piece.Disc(30, 30, 9, Tint.of(Tint.Role.FAT)),
                                            new Piece.Label(30, 60, "a & <b>"))));

    private static List<String> all() {
        return List.of(
                FigureFiles.svg(FIGURE, SHEET),
                FigureFiles.svg(BARS, SHEET),
                FigureFiles.svg(WARM, 0, SHEET));
    }

    @Test
    void everyTextHasItsWidthAndAFontToFallBackOn() throws Exception {
        for (String svg : all()) {
            for (Element text : elements(svg, "text")) {
                String family = inherited(text, "font-family");
                double size = Double.parseDouble(inherited(text, "font-size").replace("px", ""));
                boolean title = family.contains("Libertine");
                FigureFont type = title ? FigureFont.ofTitles(size) : FigureFont.of(size);
                assertEquals(
                        type.width(text.getTextContent()),
                        Double.parseDouble(text.getAttribute("textLength")),
                        0.0051,
                        text.getTextContent());
                assertTrue(family.endsWith(title ? "serif" : "sans-serif"), family);
                assertEquals("spacingAndGlyphs", text.getAttribute("lengthAdjust"));
            }
        }
    }

    @Test
    void nothingIsOfAnotherNamespace() throws Exception {
        for (String svg : all()) {
            for (Element one : elements(svg, "*")) {
                assertEquals(SVG, one.getNamespaceURI());
                for (Attr attribute : attributes(one)) {
                    assertTrue(
                            !attribute.getName().contains(":"),
                            one + " has " + attribute.getName());
                }
            }
        }
    }

    @Test
    void namesAreUniqueBeginWithTheFiguresAndAreFound() throws Exception {
        for (String svg : all()) {
            String figure = elements(svg, "*").get(0).getAttribute("id");
            Set<String> ids = new TreeSet<>();
            for (Element one : elements(svg, "*")) {
                if (one.hasAttribute("id")) {
                    assertTrue(ids.add(one.getAttribute("id")), one.getAttribute("id"));
                    assertTrue(one.getAttribute("id").startsWith(figure));
                }
            }
            Matcher links = LINK.matcher(svg);
            assertTrue(links.find());
            do {
                assertTrue(ids.contains(links.group(1)), links.group(1) + " is missing");
            } while (links.find());
        }
    }

    @Test
    void lengthsAreRoundedToHundredths() throws Exception {
        for (String svg : all()) {
            for (Element one : elements(svg, "*")) {
                for (Attr attribute : attributes(one)) {
                    if (GEOMETRY.contains(attribute.getName())) {
                        Matcher numbers = NUMBER.matcher(attribute.getValue());
                        while (numbers.find()) {
                            int point = numbers.group().indexOf('.');
                            assertTrue(
                                    point < 0 || numbers.group().length() - point <= 3,
                                    one + " " + attribute);
                        }
                    }
                }
            }
        }
    }

    @Test
    void theScaleOfWarmthHasThePalettesColours() throws Exception {
        DrawingPalette palette = new DrawingPalette(WARM.warmth());
        List<Element> scale = new ArrayList<>();
        for (Element gradient : elements(FigureFiles.svg(WARM, 0, SHEET), "linearGradient")) {
            NodeList stops = gradient.getElementsByTagName("stop");
            for (int i = 0; i < stops.getLength(); i++) {
                scale.add((Element) stops.item(i));
            }
        }
        List<Element> last = scale.subList(scale.size() - 12, scale.size());
        for (int i = 0; i < last.size(); i++) {
            int rgb = palette.at(-18 + 38 * ((i + 1) / 2) / 6.0).getRGB() & 0xFFFFFF;
            String name = "rgb(%d,%d,%d)".formatted(rgb >> 16, rgb >> 8 & 255, rgb & 255);
            assertEquals(name, last.get(i).getAttribute("stop-color"));
        }
    }

    @Test
    void manyThreadsWriteTheSameAsOne() {
        List<String> alone = all();
        IntStream.range(0, 24).parallel().forEach(i -> assertEquals(alone, all()));
    }

    /** A page that is dark on the screen is white in a file. */
    @Test
    void theGroundIsLight() {
        assertEquals(
                FigureFiles.svg(FIGURE, SHEET),
                FigureFiles.svg(FIGURE, SHEET.withTheme(FigureTheme.DARK)));
        assertFalse(FigureFiles.svg(FIGURE, SHEET).startsWith("<?xml"), "it can be within HTML");
    }

    private static List<Element> elements(String svg, String name) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        Document document =
                factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        NodeList found = document.getElementsByTagNameNS("*", name);
        assertTrue(found.getLength() > 0, name + " is missing");
        return IntStream.range(0, found.getLength())
                .mapToObj(i -> (Element) found.item(i))
                .toList();
    }

    private static List<Attr> attributes(Element element) {
        NamedNodeMap all = element.getAttributes();
        return IntStream.range(0, all.getLength()).mapToObj(i -> (Attr) all.item(i)).toList();
    }

    private static String inherited(Element element, String attribute) {
        return element.hasAttribute(attribute)
                ? element.getAttribute(attribute)
                : inherited((Element) element.getParentNode(), attribute);
    }
}
