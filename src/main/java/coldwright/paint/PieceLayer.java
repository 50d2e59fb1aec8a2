package coldwright.paint;

import coldwright.figure.Drawing;
import coldwright.figure.Piece;
import coldwright.figure.Tint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * The field with its pieces.
 *
 * @param drawing what is drawn
 * @param moment which moment
 * @param layout where
 */
record PieceLayer(Drawing drawing, int moment, DrawingLayout layout) implements Layer {
    /** A disc smaller than this is one spot of colour, px. */
    private static final double SPOT_PX = 3;

    private static final double LIGHT_SHARE = 0.52;
    private static final double LIGHT_ASIDE = 0.22;
    private static final double EDGE_EMS = 0.075;
    private static final Color HALO = new Color(255, 255, 255, 205);

    @Override
    public void paint(Graphics2D g) {
        DrawingLayout.Box box = layout.field();
        Rectangle2D field = new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height());
        Palette palette = new Palette(drawing.warmth());
        Graphics2D in = (Graphics2D) g.create();
        in.clip(field);
        in.setColor(palette.ground(drawing.ground()));
        in.fill(field);
        if (!drawing.moments().isEmpty()) {
            for (Piece piece : drawing.moments().get(moment).pieces()) {
                paint(in, piece, palette);
            }
        }
        in.dispose();
        g.setColor(Ink.AXIS);
        g.setStroke(new BasicStroke((float) Math.max(0.7, layout.em() * 0.07)));
        g.draw(field);
    }

    private void paint(Graphics2D g, Piece piece, Palette palette) {
        if (piece instanceof Piece.Disc disc) {
            paintDisc(g, disc, palette.of(disc.tint()));
        } else if (piece instanceof Piece.Outline outline) {
            paintOutline(g, outline, palette.of(outline.tint()));
        } else if (piece instanceof Piece.Band band) {
            paintBand(g, band, palette);
        } else if (piece instanceof Piece.Label label) {
            paintLabel(g, label);
        } else {
            throw new AssertionError(piece.getClass());
        }
    }

    private void paintDisc(Graphics2D g, Piece.Disc disc, Palette.Colours colours) {
        double r = disc.radius() * layout.pxPerUnit();
        double x = xPx(disc.x());
        double y = yPx(disc.y());
        g.setColor(colours.fill());
        Ellipse2D round = new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
        g.fill(round);
        if (2 * r < SPOT_PX) {
            return;
        }
        if (disc.tint().role() != Tint.Role.WARMTH) {
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

    private void paintOutline(Graphics2D g, Piece.Outline outline, Palette.Colours colours) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < outline.size(); i++) {
            double x = xPx(outline.x().at(i));
            double y = yPx(outline.y().at(i));
            if (i == 0) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
        path.closePath();
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

    private void paintBand(Graphics2D g, Piece.Band band, Palette palette) {
        double top = yPx(band.from());
        double bottom = yPx(band.to());
        Color upper = palette.of(band.upper()).fill();
        Color lower = palette.of(band.lower()).fill();
        if (upper.equals(lower) || bottom - top < 0.5) {
            g.setColor(upper);
        } else {
            g.setPaint(new GradientPaint(0, (float) top, upper, 0, (float) bottom, lower));
        }
        DrawingLayout.Box box = layout.field();
        double thin = Math.max(bottom - top, band.from() < band.to() ? 0.8 : 0);
        g.fill(new Rectangle2D.Double(box.x(), top, box.width(), thin));
    }

    private void paintLabel(Graphics2D g, Piece.Label label) {
        Type type = Type.of(Math.rint(layout.em() * 0.94));
        double x = xPx(label.x());
        double y = yPx(label.y());
        double h = type.size();
        double width = type.width(label.text());
        g.setColor(HALO);
        g.fill(
                new java.awt.geom.RoundRectangle2D.Double(
                        x - h * 0.35, y - h * 0.72, width + h * 0.7, h * 1.44, h * 0.5, h * 0.5));
        g.setColor(Ink.TEXT);
        type.set(g, label.text(), x, y + h * 0.35);
    }

    private double xPx(double x) {
        return layout.field().x() + x * layout.pxPerUnit();
    }

    private double yPx(double y) {
        return layout.field().y() + y * layout.pxPerUnit();
    }
}
