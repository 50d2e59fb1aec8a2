package coldwright.paint;

import org.apache.batik.svggen.DefaultExtensionHandler;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGPaintDescriptor;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

import java.awt.Color;
import java.awt.LinearGradientPaint;
import java.awt.Paint;

/** Gradients with several colours, which Batik alone draws black. */
final class SvgGradients extends DefaultExtensionHandler {
    private static final String OPAQUE = "1";

    @Override
    public SVGPaintDescriptor handlePaint(Paint paint, SVGGeneratorContext context) {
        if (!(paint instanceof LinearGradientPaint gradient)) {
            return super.handlePaint(paint, context);
        }
        String id = context.getIDGenerator().generateID("gradient");
        Element element = element("linearGradient", context);
        element.setAttribute("id", id);
        element.setAttribute("gradientUnits", "userSpaceOnUse");
        element.setAttribute("x1", context.doubleString(gradient.getStartPoint().getX()));
        element.setAttribute("y1", context.doubleString(gradient.getStartPoint().getY()));
        element.setAttribute("x2", context.doubleString(gradient.getEndPoint().getX()));
        element.setAttribute("y2", context.doubleString(gradient.getEndPoint().getY()));
        for (int i = 0; i < gradient.getFractions().length; i++) {
            Color color = gradient.getColors()[i];
            Element stop = element("stop", context);
            stop.setAttribute("offset", Float.toString(gradient.getFractions()[i]));
            stop.setAttribute("stop-color", "#%06x".formatted(color.getRGB() & 0xFFFFFF));
            element.appendChild(stop);
        }
        return new SVGPaintDescriptor("url(#" + id + ")", OPAQUE, element);
    }

    private static Element element(String name, SVGGeneratorContext context) {
        Document document = context.getDOMFactory();
        return document.createElementNS(SvgPage.SVG, name);
    }
}
