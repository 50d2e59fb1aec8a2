package coldwright.paint;

import coldwright.figure.Mark;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Lines across the plot with their labels, each label where it meets no other.
 *
 * @param marks the marks
 * @param layout where they are drawn
 */
record MarkLayer(List<Mark> marks, Layout layout) implements Layer {
    private static final int MOST_ROWS = 8;

    @Override
    public void paint(Graphics2D g) {
        List<Rectangle2D> taken = new ArrayList<>();
        Plot plot = layout.plot();
        for (Mark mark : marks) {
            boolean upright = mark.across() == Mark.Across.X;
            if (!(upright ? plot.x() : plot.y()).holds(mark.at())) {
                continue;
            }
            double at = layout.onPixels(upright ? plot.xPx(mark.at()) : plot.yPx(mark.at()));
            drawLine(g, upright, at);
        }
        for (Mark mark : marks) {
            boolean upright = mark.across() == Mark.Across.X;
            if ((upright ? plot.x() : plot.y()).holds(mark.at()) && !mark.label().isBlank()) {
                double at = upright ? plot.xPx(mark.at()) : plot.yPx(mark.at());
                setLabel(g, mark.label().strip(), upright, at, taken);
            }
        }
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

    private void setLabel(
            Graphics2D g, String label, boolean upright, double at, List<Rectangle2D> taken) {
        Plot.Area area = layout.plot().area();
        Type type = layout.small();
        String text = type.cut(label, area.width() * 0.6);
        double width = type.width(text);
        double height = type.size() * 1.25;
        double gap = type.size() * 0.35;
        Rectangle2D box = null;
        for (int row = 0; row < MOST_ROWS; row++) {
            box =
                    upright
                            ? besideUpright(area, at, width, gap, row, height)
                            : besideLevel(area, at, width, gap, row, height);
            Rectangle2D wanted = box;
            if (taken.stream().noneMatch(wanted::intersects)) {
                break;
            }
        }
        taken.add(box);
        g.setColor(layout.ground().halo());
        g.fill(box);
        g.setColor(layout.ground().mark());
        type.set(g, text, box.getX() + gap / 2, box.getMaxY() - type.size() * 0.33);
    }

    private static Rectangle2D besideUpright(
            Plot.Area area, double at, double width, double gap, int row, double height) {
        boolean fits = at + width + 2 * gap <= area.right();
        double x = fits ? at + gap / 2 : at - width - gap * 1.5;
        return new Rectangle2D.Double(x, area.top() + row * height, width + gap, height);
    }

    private static Rectangle2D besideLevel(
            Plot.Area area, double at, double width, double gap, int row, double height) {
        double x = area.right() - (width + gap) * (1 + row % 4) - gap;
        boolean fits = at - height - 1 >= area.top();
        double y = fits == row < 4 ? at - height - 1 : at + 1;
        return new Rectangle2D.Double(Math.max(area.left() + gap, x), y, width + gap, height);
    }
}
