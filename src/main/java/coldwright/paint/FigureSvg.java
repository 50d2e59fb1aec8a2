package coldwright.paint;

import coldwright.figure.Drawing;
import coldwright.figure.Exhibit;
import coldwright.figure.ExhibitCodec;
import coldwright.figure.Figure;
import coldwright.figure.FigureText;

import org.jfree.svg.SVGGraphics2D;
import org.jfree.svg.ViewBox;

import java.awt.Color;
import java.awt.Graphics2D;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32;

/** A figure as SVG: letters as text, title and description for those who can't see it. */
final class FigureSvg {
    private static final Pattern TEXT =
            Pattern.compile("<text ([^>]*font-size: ([\\d.]+)px;[^>]*)>([^<]*)</text>");

    private FigureSvg() {}

    static String of(Figure figure, Sheet sheet) {
        Sheet light = sheet.withGround(Ground.LIGHT);
        return of(figure, light, g -> ChartPainter.draw(figure, light, g));
    }

    static String of(Drawing drawing, int moment, Sheet sheet) {
        Sheet light = sheet.withGround(Ground.LIGHT);
        return of(drawing, light, g -> DrawingPainter.draw(drawing, moment, light, g));
    }

    private static String of(Exhibit figure, Sheet sheet, Consumer<Graphics2D> drawing) {
        SVGGraphics2D g = new SVGGraphics2D(sheet.width(), sheet.height());
        String id = "figure-" + fingerprint(figure);
        g.setDefsKeyPrefix(id + "-");
        g.setFontFunction(FigureSvg::family);
        g.setGeomDoubleConverter(FigureSvg::hundredths);
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, sheet.width(), sheet.height());
        drawing.accept(g);
        String svg =
                g.getSVGElement(
                        id, true, new ViewBox(0, 0, sheet.width(), sheet.height()), null, null);
        g.dispose();
        int open = svg.indexOf('>', svg.indexOf("<svg"));
        return svg.substring(0, open)
                + " role=\"img\" aria-labelledby=\"%s-title %s-desc\">".formatted(id, id)
                + element("title", id, figure.title())
                + element("desc", id, FigureText.describe(figure))
                + withLengths(svg.substring(open + 1));
    }

    /** Holds each text to the width that it was set for, also where another font stands in. */
    private static String withLengths(String svg) {
        return TEXT.matcher(svg)
                .replaceAll(
                        text -> {
                            double size = Double.parseDouble(text.group(2));
                            Type type =
                                    text.group(1).contains("Libertine")
                                            ? Type.ofTitles(size)
                                            : Type.of(size);
                            String letters =
                                    text.group(3)
                                            .replace("&lt;", "<")
                                            .replace("&gt;", ">")
                                            .replace("&amp;", "&");
                            return Matcher.quoteReplacement(
                                    "<text textLength='%s' lengthAdjust='spacingAndGlyphs' %s>%s</text>"
                                            .formatted(
                                                    hundredths(type.width(letters)),
                                                    text.group(1),
                                                    text.group(3)));
                        });
    }

    private static String element(String name, String id, String text) {
        return "<%s id=\"%s-%s\">%s</%s>".formatted(name, id, name, escaped(text), name);
    }

    private static String escaped(String text) {
        return Type.shown(text).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    /** The fonts to take where those of this program are not at hand. */
    private static String family(String family) {
        return family.startsWith("Lato")
                ? "Lato, \"Open Sans\", \"Segoe UI\", sans-serif"
                : family.startsWith("Linux Libertine")
                        ? "\"Linux Libertine O\", \"Linux Libertine\", Georgia, serif"
                        : "sans-serif";
    }

    private static String hundredths(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.endsWith(".00") ? text.substring(0, text.length() - 3) : text;
    }

    /** The same for the same figure, another for another, so that two can stand on one page. */
    private static String fingerprint(Exhibit figure) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ExhibitCodec.write(figure, new DataOutputStream(bytes));
        } catch (IOException e) {
            // larger than may be sent, but it can be drawn: the part written will do
            bytes.write(0);
        }
        CRC32 sum = new CRC32();
        sum.update(bytes.toByteArray());
        return Long.toHexString(sum.getValue());
    }
}
