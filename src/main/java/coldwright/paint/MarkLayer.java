package coldwright.paint;

import coldwright.figure.Mark;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Lines across the plot with their labels, each label where it meets no other and lies on no curve,
 * if any place is free.
 *
 * @param marks the marks
 * @param layout where they are drawn
 */
record MarkLayer(List<Mark> marks, Layout layout) implements Layer {
    private static final double GAP_EMS = 0.35;
    private static final double HEIGHT_EMS = 1.25;

    @Override
    public void paint(Graphics2D g) {
        for (Mark mark : marks) {
            if (inSight(mark)) {
                drawLine(g, mark.across() == Mark.Across.X, layout.onPixels(px(mark)));
            }
        }
        places().forEach((mark, box) -> setLabel(g, text(mark), box));
    }

    private boolean inSight(Mark mark) {
        Plot plot = layout.plot();
        return (mark.across() == Mark.Across.X ? plot.x() : plot.y()).holds(mark.at());
    }

    private double px(Mark mark) {
        Plot plot = layout.plot();
        return mark.across() == Mark.Across.X ? plot.xPx(mark.at()) : plot.yPx(mark.at());
    }

    private String text(Mark mark) {
        return layout.small().cut(mark.label().strip(), layout.plot().area().width() * 0.6);
    }

    private double gap() {
        return layout.small().size() * GAP_EMS;
    }

    private double height() {
        return layout.small().size() * HEIGHT_EMS;
    }

    private void drawLine(Graphics2D g, boolean upright, double at) {
        Plot.Area area = layout.plot().area();
        float width = (float) layout.axisWidth();
        float dash = (float) (layout.em() * 0.28);
        g.setColor(layout.ground().mark());
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
                        ? new Line2D.Double(at, area.bottom(), at, area.top())
                        : new Line2D.Double(area.left(), at, area.right(), at));
    }

    private void setLabel(Graphics2D g, String label, Rectangle2D box) {
        Type type = layout.small();
        g.setColor(layout.ground().halo());
        g.fill(box);
        g.setColor(layout.ground().mark());
        type.set(
                g,
                label,
                box.getX() + type.size() * GAP_EMS / 2,
                box.getMaxY() - type.size() * 0.33);
    }

    /** The labels in their places, in the order of the marks; a mark without one is left out. */
    Map<Mark, Rectangle2D> places() {
        Map<Mark, Rectangle2D> placed = new LinkedHashMap<>();
        List<Mark> named = marks.stream().filter(m -> inSight(m) && !m.label().isBlank()).toList();
        if (!named.isEmpty()) {
            Strokes strokes = Strokes.of(layout);
            named.forEach(mark -> placed.put(mark, place(mark, placed.values(), strokes)));
        }
        return placed;
    }

    /** The first place that is free; failing that one on a curve, failing that the first. */
    private Rectangle2D place(Mark mark, Collection<Rectangle2D> taken, Strokes strokes) {
        List<Rectangle2D> places =
                mark.across() == Mark.Across.X ? besideUpright(mark) : besideLevel(mark);
        List<Rectangle2D> apart =
                places.stream().filter(box -> taken.stream().noneMatch(box::intersects)).toList();
        return apart.stream()
                .filter(box -> !strokes.cross(box))
                .findFirst()
                .orElse(apart.isEmpty() ? places.get(0) : apart.get(0));
    }

    /** Right of the line, then left of it, from the top down. */
    private List<Rectangle2D> besideUpright(Mark mark) {
        Plot.Area area = layout.plot().area();
        double at = px(mark);
        double gap = gap();
        double width = layout.small().width(text(mark)) + gap;
        double height = height();
        double right = at + gap / 2;
        double left = at - width - gap / 2;
        List<Double> sides = new ArrayList<>();
        if (right + width + gap / 2 <= area.right()) {
            sides.add(right);
        }
        if (left >= area.left() || sides.isEmpty()) {
            sides.add(left);
        }
        List<Rectangle2D> places = new ArrayList<>();
        for (double y = area.top(); places.isEmpty() || y + height <= area.bottom(); y += height) {
            for (double x : sides) {
                places.add(new Rectangle2D.Double(x, y, width, height));
            }
        }
        return places;
    }

    /** Above the line, then below it, from the right to the left. */
    private List<Rectangle2D> besideLevel(Mark mark) {
        Plot.Area area = layout.plot().area();
        double at = px(mark);
        double gap = gap();
        double width = layout.small().width(text(mark)) + gap;
        double height = height();
        List<Double> sides = new ArrayList<>();
        if (at - height - 1 >= area.top()) {
            sides.add(at - height - 1);
        }
        if (at + 1 + height <= area.bottom() || sides.isEmpty()) {
            sides.add(at + 1);
        }
        List<Rectangle2D> places = new ArrayList<>();
        double farthest = area.left() + gap;
        double first = Math.max(farthest, area.right() - width - gap);
        for (double x = first; x >= farthest; x -= width / 2) {
            for (double y : sides) {
                places.add(new Rectangle2D.Double(x, y, width, height));
            }
        }
        return places;
    }
}
