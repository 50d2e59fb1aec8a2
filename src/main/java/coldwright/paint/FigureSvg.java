package coldwright.paint;

import coldwright.figure.Drawing;
import coldwright.figure.Exhibit;
import coldwright.figure.ExhibitCodec;
import coldwright.figure.Figure;
import coldwright.figure.FigureDescription;
import coldwright.paint.style.FigureFormat;
import coldwright.paint.style.FigureTheme;

import java.awt.Graphics2D;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.function.Consumer;
import java.util.zip.CRC32;

/** A figure as SVG with selectable text, a title and a description for screen readers. */
final class FigureSvg {
    private FigureSvg() {}

    static String of(Figure figure, FigureFormat format) {
        FigureFormat light = format.withTheme(FigureTheme.LIGHT);
        return of(figure, light, g -> ChartPainter.draw(figure, light, g));
    }

    static String of(Drawing drawing, int moment, FigureFormat format) {
        FigureFormat light = format.withTheme(FigureTheme.LIGHT);
        return of(drawing, light, g -> DrawingPainter.draw(drawing, moment, light, g));
    }

    private static String of(Exhibit figure, FigureFormat format, Consumer<Graphics2D> drawing) {
        SvgPage page = new SvgPage(format, "figure-" + fingerprint(figure));
        drawing.accept(page.graphics());
        return page.finish(figure.title(), FigureDescription.describe(figure));
    }

    /** An ID that depends on the figure's content, so that several figures can be on one page. */
    private static String fingerprint(Exhibit figure) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ExhibitCodec.write(figure, new DataOutputStream(bytes));
        } catch (IOException e) {
            // larger than the limit, but drawable: the part written is enough
            bytes.write(0);
        }
        CRC32 sum = new CRC32();
        sum.update(bytes.toByteArray());
        return Long.toHexString(sum.getValue());
    }
}
