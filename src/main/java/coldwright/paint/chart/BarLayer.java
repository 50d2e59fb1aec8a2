package coldwright.paint.chart;

import coldwright.figure.Series;
import coldwright.figure.TypesetNumber;
import coldwright.paint.style.FigureFont;
import coldwright.paint.style.PlotArea;
import coldwright.paint.style.SeriesStyle;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * The bars of one series, hatched unless it is the first, with their values if there is room. Bars
 * of an earlier figure are a little wider and have no values.
 */
record BarLayer(Series.Bars some, ChartLayout layout, SeriesStyle ink, int number) {
    private static final double WIDEST_EMS = 5;
    private static final double EARLIER_WIDER = 0.26;
    private static final double HATCH_EMS = 0.5;

    /** Values over bars are this much more precise than the axis. */
    private static final double FINER = 5;

    void paint(Graphics2D g) {
        PlotArea plot = layout.plot();
        BarGroups bars = layout.bars();
        int count = bars.series().size();
        double slot = plot.area().width() / (double) bars.words().size();
        double width = Math.min(slot * BarGroups.SHARE_OF_SLOT / count, layout.em() * WIDEST_EMS);
        double zero = plot.yPx(Math.max(plot.y().from(), Math.min(plot.y().to(), 0)));
        boolean valued = !ink.pale() && valuesFit(width);
        for (int i = 0; i < some.size(); i++) {
            double value = some.values().at(i);
            int place = bars.placeOf(some, i);
            double end = Math.max(-1e4, Math.min(1e4, plot.yPx(value)));
            if (place < 0 || !Double.isFinite(value)) {
                continue;
            }
            double x = plot.xPx(place) + (number - count / 2.0) * width;
            double wider = ink.pale() ? width * EARLIER_WIDER : 0;
            double gap = count > 1 ? width * 0.06 : 0;
            Rectangle2D bar =
                    new Rectangle2D.Double(
                            x + gap - wider / 2,
                            Math.min(zero, end),
                            width - 2 * gap + wider,
                            Math.abs(end - zero));
            g.setColor(ink.color());
            g.fill(bar);
            if (!ink.pale()) {
                hatch(g, bar, ink, layout.em());
            }
            if (valued) {
                setValue(g, value, bar);
            }
        }
    }

    /** The second series has stripes rising to the right, the third falling, and so on. */
    static void hatch(Graphics2D g, Rectangle2D bar, SeriesStyle seriesStyle, double em) {
        int hatch = seriesStyle.hatch();
        if (hatch == 0) {
            return;
        }
        Graphics2D in = (Graphics2D) g.create();
        in.clip(bar);
        in.setColor(seriesStyle.theme().paper());
        in.setStroke(new BasicStroke((float) (em * 0.07)));
        Rectangle2D box = bar;
        double step = em * HATCH_EMS * (hatch > 2 ? 0.6 : 1);
        double lean = hatch % 2 == 1 ? box.getHeight() : -box.getHeight();
        double from = box.getMinX() - box.getHeight();
        for (double x = from; x < box.getMaxX() + box.getHeight(); x += step) {
            in.draw(new Line2D.Double(x, box.getMaxY(), x + lean, box.getMinY()));
        }
        in.dispose();
    }

    private void setValue(Graphics2D g, double value, Rectangle2D bar) {
        FigureFont type = layout.small();
        String text = text(value);
        double end = value < 0 ? bar.getMaxY() : bar.getMinY();
        if (layout.plot().area().contains(bar.getCenterX(), end)) {
            g.setColor(layout.theme().text());
            double y = value < 0 ? end + type.size() * 1.05 : end - type.size() * 0.35;
            type.set(g, text, bar.getCenterX() - type.width(text) / 2, y);
        }
    }

    /** Whether all values fit; if not, none is shown. */
    private boolean valuesFit(double barWidth) {
        List<Series.Bars> series = layout.bars().series();
        if (barWidth < layout.small().size()) {
            return false;
        }
        double widest = 0;
        for (Series.Bars one : series) {
            for (double value : one.values().toArray()) {
                widest = Math.max(widest, layout.small().width(text(value)));
            }
        }
        return widest <= barWidth * (series.size() > 1 ? 1.15 : 1.4);
    }

    private String text(double value) {
        return TypesetNumber.among(value, layout.plot().y().width() / FINER);
    }
}
