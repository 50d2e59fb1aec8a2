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
        List<Rectangle2D> places = beside(mark);
        List<Rectangle2D> apart =
                places.stream().filter(box -> taken.stream().noneMatch(box::intersects)).toList();
        return apart.stream()
                .filter(box -> !occupiedArea.cross(box))
                .findFirst()
                .orElse(apart.isEmpty() ? places.get(0) : apart.get(0));
    }

    /**
     * Right of an upright line, then left of it, from the top down; above a level line, then below
     * it, from the right to the left.
     */
    private List<Rectangle2D> beside(ReferenceLine mark) {
        PlotArea.PixelRect plot = layout.plot().area();
        double at = px(mark);
        double width = layout.small().width(text(mark)) + gap();
        double height = layout.small().size() * HEIGHT_EMS;
        List<Rectangle2D> places = new ArrayList<>();
        if (mark.across() == ReferenceLine.Across.X) {
            double right = at + gap() / 2;
            double left = at - width - gap() / 2;
            List<Double> sides =
                    sides(
                            right,
                            right + width + gap() / 2 <= plot.right(),
                            left,
                            left >= plot.left());
            for (double y = plot.top();
                    places.isEmpty() || y + height <= plot.bottom();
                    y += height) {
                for (double x : sides) {
                    places.add(new Rectangle2D.Double(x, y, width, height));
                }
            }
        } else {
            double above = at - height - 1;
            double below = at + 1;
            List<Double> sides =
                    sides(above, above >= plot.top(), below, below + height <= plot.bottom());
            double farthest = plot.left() + gap();
            double first = Math.max(farthest, plot.right() - width - gap());
            for (double x = first; x >= farthest; x -= width / 2) {
                for (double y : sides) {
                    places.add(new Rectangle2D.Double(x, y, width, height));
                }
            }
        }
        return places;
    }

    /** Those that fit; the second if none does. */
    private static List<Double> sides(
            double first, boolean firstFits, double second, boolean secondFits) {
        return !firstFits ? List.of(second) : secondFits ? List.of(first, second) : List.of(first);
    }
}
