package coldwright.paint.chart;

import coldwright.figure.ReferenceLine;
import coldwright.paint.style.FigureFont;
import coldwright.paint.style.PlotArea;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reference lines with their labels. A label avoids other labels and curves if possible. */
public record ReferenceLineLayer(List<ReferenceLine> marks, ChartLayout layout) {
    private static final double GAP_EMS = 0.35;
    private static final double HEIGHT_EMS = 1.25;

    void paint(Graphics2D g) {
        for (ReferenceLine mark : marks) {
            if (inSight(mark)) {
                drawLine(g, mark.across() == ReferenceLine.Across.X, layout.snap(px(mark)));
            }
        }
        places().forEach((mark, box) -> setLabel(g, text(mark), box));
    }

    private boolean inSight(ReferenceLine mark) {
        PlotArea plot = layout.plot();
        return (mark.across() == ReferenceLine.Across.X ? plot.x() : plot.y()).contains(mark.at());
    }

    private double px(ReferenceLine mark) {
        PlotArea plot = layout.plot();
        return mark.across() == ReferenceLine.Across.X ? plot.xPx(mark.at()) : plot.yPx(mark.at());
    }

    private String text(ReferenceLine mark) {
        return layout.small().cut(mark.label().strip(), layout.plot().area().width() * 0.6);
    }

    private double gap() {
        return layout.small().size() * GAP_EMS;
    }

    private void drawLine(Graphics2D g, boolean upright, double at) {
        PlotArea.PixelRect pixelRect = layout.plot().area();
        float width = (float) layout.axisWidth();
        float dash = (float) (layout.em() * 0.28);
        g.setColor(layout.theme().mark());
        g.setStroke(
                new BasicStroke(
                        width,
                        BasicStroke.CAP_BUTT,
                        BasicStroke.JOIN_MITER,
                        10,
                        new float[] {dash, dash},
                        0));
        g.draw(
                upright
                        ? new Line2D.Double(at, pixelRect.bottom(), at, pixelRect.top())
                        : new Line2D.Double(pixelRect.left(), at, pixelRect.right(), at));
    }

    private void setLabel(Graphics2D g, String label, Rectangle2D box) {
        FigureFont type = layout.small();
        g.setColor(layout.theme().halo());
        g.fill(box);
        g.setColor(layout.theme().mark());
        type.set(
                g,
                label,
                box.getX() + type.size() * GAP_EMS / 2,
                box.getMaxY() - type.size() * 0.33);
    }

    /** The positions of the labels, in the order of the marks; unlabelled marks are left out. */
    public Map<ReferenceLine, Rectangle2D> places() {
        Map<ReferenceLine, Rectangle2D> placed = new LinkedHashMap<>();
        List<ReferenceLine> named =
                marks.stream().filter(m -> inSight(m) && !m.label().isBlank()).toList();
        if (!named.isEmpty()) {
            OccupiedArea occupiedArea = new OccupiedArea(layout);
            named.forEach(mark -> placed.put(mark, place(mark, placed.values(), occupiedArea)));
        }
        return placed;
    }

    /** The first free position; else the first that is only on a curve; else the first. */
    private Rectangle2D place(
            ReferenceLine mark, Collection<Rectangle2D> taken, OccupiedArea occupiedArea) {
        List<Rectangle2D> places =
                mark.across() == ReferenceLine.Across.X ? besideUpright(mark) : besideLevel(mark);
        List<Rectangle2D> apart =
                places.stream().filter(box -> taken.stream().noneMatch(box::intersects)).toList();
        return apart.stream()
                .filter(box -> !occupiedArea.cross(box))
                .findFirst()
                .orElse(apart.isEmpty() ? places.get(0) : apart.get(0));
    }

    /** Right of the line, then left of it, from the top down. */
    private List<Rectangle2D> besideUpright(ReferenceLine mark) {
        PlotArea.PixelRect pixelRect = layout.plot().area();
        double at = px(mark);
        double gap = gap();
        Rectangle2D size = size(mark);
        double right = at + gap / 2;
        double left = at - size.getWidth() - gap / 2;
        List<Double> sides = new ArrayList<>();
        if (right + size.getWidth() + gap / 2 <= pixelRect.right()) {
            sides.add(right);
        }
        if (left >= pixelRect.left() || sides.isEmpty()) {
            sides.add(left);
        }
        List<Rectangle2D> places = new ArrayList<>();
        for (double y = pixelRect.top();
                places.isEmpty() || y + size.getHeight() <= pixelRect.bottom();
                y += size.getHeight()) {
            for (double x : sides) {
                places.add(at(size, x, y));
            }
        }
        return places;
    }

    /** Above the line, then below it, from the right to the left. */
    private List<Rectangle2D> besideLevel(ReferenceLine mark) {
        PlotArea.PixelRect pixelRect = layout.plot().area();
        double at = px(mark);
        Rectangle2D size = size(mark);
        double above = at - size.getHeight() - 1;
        List<Double> sides = new ArrayList<>();
        if (above >= pixelRect.top()) {
            sides.add(above);
        }
        if (at + 1 + size.getHeight() <= pixelRect.bottom() || sides.isEmpty()) {
            sides.add(at + 1);
        }
        List<Rectangle2D> places = new ArrayList<>();
        double farthest = pixelRect.left() + gap();
        double first = Math.max(farthest, pixelRect.right() - size.getWidth() - gap());
        for (double x = first; x >= farthest; x -= size.getWidth() / 2) {
            for (double y : sides) {
                places.add(at(size, x, y));
            }
        }
        return places;
    }

    /** The size of a label, with a margin. */
    private Rectangle2D size(ReferenceLine mark) {
        FigureFont type = layout.small();
        return new Rectangle2D.Double(
                0, 0, type.width(text(mark)) + gap(), type.size() * HEIGHT_EMS);
    }

    private static Rectangle2D at(Rectangle2D size, double x, double y) {
        return new Rectangle2D.Double(x, y, size.getWidth(), size.getHeight());
    }
}
