package coldwright.paint.drawing;

import coldwright.figure.Drawing;
import coldwright.figure.Piece;
import coldwright.figure.Tint;
import coldwright.paint.style.FigureFont;
import coldwright.paint.style.FigureTheme;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;

/** The field with its pieces at one moment. */
public record PieceLayer(Drawing drawing, int moment, DrawingLayout layout) {
    /** A smaller disc is drawn as a plain spot, px. */
    private static final double SPOT_PX = 5;

    /** A smaller disc has no highlight, px. */
    private static final double PLAIN_PX = 9;

    private static final double LIGHT_SHARE = 0.6;
    private static final double LIGHT_ASIDE = 0.13;
    private static final double EDGE_EMS = 0.075;
    private static final Color HALO = new Color(255, 255, 255, 205);

    public void paint(Graphics2D g) {
        Rectangle2D field = layout.field();
        DrawingPalette palette = new DrawingPalette(drawing.warmth());
        Graphics2D in = (Graphics2D) g.create();
        in.clip(field);
        in.setColor(palette.ground(drawing.ground()));
        in.fill(field);
        if (!drawing.moments().isEmpty()) {
            List<Rectangle2D> labels = new ArrayList<>();
            for (Piece piece : drawing.moments().get(moment).pieces()) {
                paint(in, piece, palette, labels);
            }
        }
        in.dispose();
        g.setColor(layout.theme().axis());
        g.setStroke(new BasicStroke((float) Math.max(0.7, layout.em() * 0.07)));
        g.draw(field);
    }

    private void paint(
            Graphics2D g, Piece piece, DrawingPalette palette, List<Rectangle2D> labels) {
        if (piece instanceof Piece.Disc disc) {
            paintDisc(g, disc, palette.of(disc.tint()));
        } else if (piece instanceof Piece.Outline outline) {
            paintOutline(g, outline, palette.of(outline.tint()));
        } else if (piece instanceof Piece.Band band) {
            paintBand(g, band, palette);
        } else if (piece instanceof Piece.Label label) {
            paintLabel(g, label, labels);
        } else {
            throw new AssertionError(piece.getClass());
        }
    }

    private void paintDisc(Graphics2D g, Piece.Disc disc, DrawingPalette.Colours colours) {
        double r = disc.radius() * layout.pxPerUnit();
        double x = layout.xPx(disc.x());
        double y = layout.yPx(disc.y());
        g.setColor(colours.fill());
        Ellipse2D round = new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
        g.fill(round);
        if (2 * r < SPOT_PX) {
            return;
        }
        if (disc.tint().role() != Tint.Role.WARMTH && 2 * r >= PLAIN_PX) {
            double light = r * LIGHT_SHARE;
            double aside = r * LIGHT_ASIDE;
            g.setColor(colours.light());
            g.fill(
                    new Ellipse2D.Double(
                            x - aside - light, y - aside - light, 2 * light, 2 * light));
        }
        g.setColor(colours.edge());
        g.setStroke(new BasicStroke((float) Math.min(layout.em() * EDGE_EMS, r * 0.2)));
        g.draw(round);
    }

    private void paintOutline(Graphics2D g, Piece.Outline outline, DrawingPalette.Colours colours) {
        Path2D path = SmoothOutline.of(outline, layout);
        g.setColor(colours.fill());
        g.fill(path);
        g.setColor(colours.edge());
        g.setStroke(
                new BasicStroke(
                        (float) (layout.em() * EDGE_EMS),
                        BasicStroke.CAP_ROUND,
                        BasicStroke.JOIN_ROUND));
        g.draw(path);
    }

    private void paintBand(Graphics2D g, Piece.Band band, DrawingPalette palette) {
        // on whole pixels, so that no ground shows between adjacent bands
        double top = Math.rint(layout.yPx(band.from()));
        double bottom =
                Math.max(Math.rint(layout.yPx(band.to())), band.from() < band.to() ? top + 1 : top);
        Color upper = palette.of(band.upper()).fill();
        Color lower = palette.of(band.lower()).fill();
        if (upper.equals(lower) || bottom - top < 2) {
            g.setColor(upper);
        } else {
            g.setPaint(new GradientPaint(0, (float) top, upper, 0, (float) bottom, lower));
        }
        Rectangle2D box = layout.field();
        g.fill(new Rectangle2D.Double(box.getX(), top, box.getWidth(), bottom - top));
    }

    /** Draws a label, moved into the field, or nothing if it would cover another. */
    private void paintLabel(Graphics2D g, Piece.Label label, List<Rectangle2D> labels) {
        FigureFont type = FigureFont.of(Math.rint(layout.em() * 0.94));
        Rectangle2D box = layout.field();
        double h = type.size();
        double width = type.width(label.text());
        double x = Math.min(layout.xPx(label.x()), box.getMaxX() - width - h * 0.6);
        double y = layout.yPx(label.y());
        RoundRectangle2D plate =
                new RoundRectangle2D.Double(
                        x - h * 0.35, y - h * 0.72, width + h * 0.7, h * 1.44, h * 0.5, h * 0.5);
        boolean fits = x >= box.getX() && plate.getMinY() >= box.getY();
        if (!fits || labels.stream().anyMatch(plate::intersects)) {
            return;
        }
        labels.add(plate.getBounds2D());
        g.setColor(HALO);
        g.fill(plate);
        g.setColor(FigureTheme.LIGHT.text());
        type.set(g, label.text(), x, y + h * 0.35);
    }
}
