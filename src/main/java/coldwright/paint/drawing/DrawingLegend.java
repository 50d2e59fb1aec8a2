package coldwright.paint.drawing;

import coldwright.figure.Drawing;
import coldwright.paint.style.AxisTicks;
import coldwright.paint.style.ColourScale;
import coldwright.paint.style.FigureFont;
import coldwright.paint.style.ValueSpan;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;

/** The scale bar under the field and, if there is one, the temperature scale on its right. */
public record DrawingLegend(Drawing drawing, DrawingLayout layout) {
    private static final double BETWEEN_TICKS_EMS = 2.4;
    private static final double WIDTH_EMS = 1.1;

    public void paint(Graphics2D g) {
        paintBar(g);
        drawing.warmth().ifPresent(scale -> paintWarmth(g, scale));
    }

    private void paintBar(Graphics2D g) {
        double em = layout.em();
        double left = layout.field().getX();
        double right = left + drawing.bar().length() * layout.pxPerUnit();
        double y = layout.barY();
        double end = em * 0.28;
        g.setColor(layout.theme().text());
        g.setStroke(
                new BasicStroke((float) (em * 0.14), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        g.draw(new Line2D.Double(left, y, right, y));
        g.setStroke(new BasicStroke((float) (em * 0.1)));
        g.draw(new Line2D.Double(left, y - end, left, y + end));
        g.draw(new Line2D.Double(right, y - end, right, y + end));
        FigureFont.of(em).set(g, drawing.bar().label(), right + em * 0.6, y + em * 0.35);
    }

    private void paintWarmth(Graphics2D g, Drawing.TemperatureScale scale) {
        double em = layout.em();
        Rectangle2D field = layout.field();
        FigureFont type = FigureFont.of(Math.rint(em * 0.94));
        double x = field.getMaxX() + em * 1.2;
        double top = field.getY() + em * 1.5;
        double bottom = field.getMaxY();
        double wide = scale.warmestC() - scale.coldestC();
        Rectangle2D strip = new Rectangle2D.Double(x, top, em * WIDTH_EMS, bottom - top);
        ColourScale.paint(g, strip, DrawingPalette.SCALE, false);
        g.setStroke(new BasicStroke((float) Math.max(0.7, em * 0.07)));
        g.setColor(layout.theme().axis());
        g.draw(strip);
        g.setColor(layout.theme().text());
        type.set(g, "°C", x, field.getY() + em * 0.8);
        int most = (int) Math.max(2, Math.min(9, (bottom - top) / (em * BETWEEN_TICKS_EMS)));
        AxisTicks axisTicks = AxisTicks.on(new ValueSpan(scale.coldestC(), scale.warmestC()), most);
        for (int i = 0; i < axisTicks.count(); i++) {
            double y = bottom - (axisTicks.value(i) - scale.coldestC()) / wide * (bottom - top);
            double right = x + em * WIDTH_EMS;
            g.setColor(layout.theme().axis());
            g.draw(new Line2D.Double(right, y, right + em * 0.3, y));
            g.setColor(layout.theme().text());
            type.set(g, axisTicks.labels().get(i), right + em * 0.5, y + em * 0.33);
        }
    }
}
