package coldwright.paint.drawing;

import coldwright.figure.Drawing;
import coldwright.figure.DrawingDescription;
import coldwright.paint.style.FigureFont;
import coldwright.paint.style.FigureFormat;
import coldwright.paint.style.FigureTheme;
import coldwright.paint.style.TextLine;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * The layout of a drawing, in logical pixels: the title at the top, the field as large as fits, the
 * scale bar and the time below it, the temperature legend on its right. {@code lines} are all texts
 * except those in the field.
 */
public record DrawingLayout(
        Rectangle2D field,
        double pxPerUnit,
        double em,
        double barY,
        List<TextLine> lines,
        FigureTheme theme) {
    private static final double PAD_EMS = 0.9;
    private static final double LEGEND_EMS = 5.2;
    private static final double FOOT_EMS = 2.3;
    private static final double ROW_EMS = 1.45;
    private static final double BAR_EMS = 1.8;
    private static final int MOST_ROWS = 2;

    /** The pixel of an x value of the field, from the left. */
    double xPx(double x) {
        return field.getX() + x * pxPerUnit;
    }

    /** The pixel of a y value of the field, from the top. */
    double yPx(double y) {
        return field.getY() + y * pxPerUnit;
    }

    public static DrawingLayout of(Drawing drawing, int moment, FigureFormat format) {
        double em = format.em();
        double pad = em * PAD_EMS;
        List<TextLine> lines = new ArrayList<>();
        double top =
                TextLine.title(drawing.title(), format, 2, lines)
                        + (drawing.title().isBlank() ? 0 : em * 0.5);
        double inner = format.width() - 2 * pad;
        double legend = drawing.warmth().isPresent() ? em * LEGEND_EMS : 0;
        FigureFont type = FigureFont.of(em);
        Foot foot = foot(drawing, moment, type, inner);
        double under = em * (FOOT_EMS + ROW_EMS * foot.rows);
        double roomW = inner - legend;
        double roomH = Math.max(8, format.height() - top - under);
        Drawing.Field field = drawing.field();
        double px = Math.min(roomW / field.width(), roomH / field.height());
        Rectangle2D box =
                new Rectangle2D.Double(
                        Math.rint(pad), Math.rint(top), field.width() * px, field.height() * px);
        double barY = box.getMaxY() + em * 1.1;
        double afterBar =
                box.getX()
                        + drawing.bar().length() * px
                        + type.width(drawing.bar().label())
                        + em * BAR_EMS;
        for (int i = 0; i < foot.words.size(); i++) {
            String text = foot.words.get(i);
            boolean beside = foot.rows == 0;
            double x = beside ? Math.max(afterBar, box.getMaxX() - type.width(text)) : box.getX();
            double y = barY + em * (beside ? 0.35 : 0.35 + ROW_EMS * (i + 1));
            lines.add(new TextLine(text, type, format.theme().text(), x, y));
        }
        return new DrawingLayout(box, px, em, barY, List.copyOf(lines), format.theme());
    }

    /** Time and label: beside the scale bar if those of every moment fit, otherwise below it. */
    private static Foot foot(Drawing drawing, int moment, FigureFont type, double inner) {
        if (drawing.moments().isEmpty()) {
            return new Foot(0, List.of());
        }
        double longest = drawing.bar().length() / drawing.field().width() * inner;
        double bar = longest + type.width(drawing.bar().label()) + type.size() * BAR_EMS;
        boolean beside = true;
        int rows = 1;
        for (int i = 0; i < drawing.moments().size(); i++) {
            String said = accessibleText(drawing, i);
            double width = type.width(said);
            beside &= width <= inner - bar;
            rows = width <= inner ? rows : MOST_ROWS;
        }
        String said = accessibleText(drawing, moment);
        return new Foot(beside ? 0 : rows, type.wrapped(said, inner, beside ? 1 : rows));
    }

    private static String accessibleText(Drawing drawing, int moment) {
        String when = DrawingDescription.time(drawing, moment);
        String said = drawing.moments().get(moment).label();
        return when.isEmpty() || said.isEmpty() ? when + said : when + " · " + said;
    }

    /** Rows below the scale bar, the same at every moment, and the text at this one. */
    private record Foot(int rows, List<String> words) {}
}
