package coldwright.paint;

import coldwright.paint.style.BundledFonts;
import coldwright.paint.style.FigureFont;
import coldwright.paint.style.FigureFormat;

import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.w3c.dom.ls.DOMImplementationLS;
import org.w3c.dom.ls.LSSerializer;

import java.awt.Color;
import java.awt.Graphics2D;

import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;

/** An SVG document: drawn with AWT, then completed with text and written out. */
final class SvgPage {
    static final String SVG = "http://www.w3.org/2000/svg";

    private final FigureFormat format;
    private final String id;
    private final Document document;
    private final SvgStyle style;
    private final SVGGraphics2D graphics;

    /** A white page; all IDs in it begin with its own. */
    SvgPage(FigureFormat format, String id) {
        BundledFonts.useIfAwtFails();
        this.format = format;
        this.id = id;
        document = newDocument();
        style = new SvgStyle(document, id);
        graphics = new SVGGraphics2D(style, false);
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, format.width(), format.height());
    }

    private static Document newDocument() {
        try {
            return DocumentBuilderFactory.newDefaultNSInstance().newDocumentBuilder().newDocument();
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("Java's own XML parser can't be set up", e);
        }
    }

    Graphics2D graphics() {
        return graphics;
    }

    /** The whole document as one {@code svg} element. */
    String finish(String title, String description) {
        Element svg = graphics.getRoot();
        graphics.dispose();
        svg.setAttribute("id", id);
        svg.setAttribute("role", "img");
        svg.setAttribute("aria-labelledby", id + "-title " + id + "-desc");
        svg.setAttribute("width", Integer.toString(format.width()));
        svg.setAttribute("height", Integer.toString(format.height()));
        svg.setAttribute("viewBox", "0 0 %s %s".formatted(format.width(), format.height()));
        Node definitions = svg.getFirstChild(); // definitions of all pages: unused
        svg.insertBefore(words("title", title), definitions);
        svg.insertBefore(words("desc", description), definitions);
        svg.removeChild(definitions);
        fixLengths(svg);
        LSSerializer writer =
                ((DOMImplementationLS) document.getImplementation()).createLSSerializer();
        writer.getDomConfig().setParameter("xml-declaration", false);
        return writer.writeToString(svg);
    }

    private Element words(String name, String text) {
        Element element = document.createElementNS(SVG, name);
        element.setAttribute("id", id + "-" + name);
        element.setTextContent(FigureFont.shown(text));
        return element;
    }

    /** Fixes the width of each text, so that it stays the same with another font. */
    private void fixLengths(Element svg) {
        NodeList texts = svg.getElementsByTagNameNS(SVG, "text");
        for (int i = 0; i < texts.getLength(); i++) {
            Element text = (Element) texts.item(i);
            double size = Double.parseDouble(inherited(text, "font-size").replace("px", ""));
            boolean titles = inherited(text, "font-family").contains("Libertine");
            FigureFont type = titles ? FigureFont.ofTitles(size) : FigureFont.of(size);
            text.setAttribute("textLength", style.doubleString(type.width(text.getTextContent())));
            text.setAttribute("lengthAdjust", "spacingAndGlyphs");
            text.removeAttribute("xml:space");
        }
    }

    private static String inherited(Element element, String attribute) {
        return element.hasAttribute(attribute)
                ? element.getAttribute(attribute)
                : inherited((Element) element.getParentNode(), attribute);
    }
}
