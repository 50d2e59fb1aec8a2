package coldwright.paint.drawing;

import coldwright.figure.NumberColumn;
import coldwright.figure.Piece;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;

/** The path around an outline, round where its corners are blunt and sharp where they are sharp. */
final class SmoothOutline {
    /** The cosine of the sharpest turn, 80°, that is drawn round. A rectangle stays one. */
    private static final double BLUNT = 0.17;

    private SmoothOutline() {}

    static Path2D of(Piece.Outline outline, DrawingLayout layout) {
        Path2D path = new Path2D.Double();
        path.moveTo(layout.xPx(outline.x().at(0)), layout.yPx(outline.y().at(0)));
        for (int i = 0; i < outline.size(); i++) {
            Point2D from = point(outline, i, layout);
            Point2D to = point(outline, i + 1, layout);
            Point2D after = pull(outline, i, layout);
            Point2D before = pull(outline, i + 1, layout);
            path.curveTo(
                    from.getX() + after.getX(),
                    from.getY() + after.getY(),
                    to.getX() - before.getX(),
                    to.getY() - before.getY(),
                    to.getX(),
                    to.getY());
        }
        path.closePath();
        return path;
    }

    /** The way to a corner's control point: a sixth of that between its neighbours, or none. */
    private static Point2D pull(Piece.Outline outline, int i, DrawingLayout layout) {
        Point2D before = point(outline, i - 1, layout);
        Point2D here = point(outline, i, layout);
        Point2D after = point(outline, i + 1, layout);
        double along =
                (here.getX() - before.getX()) * (after.getX() - here.getX())
                        + (here.getY() - before.getY()) * (after.getY() - here.getY());
        boolean blunt = along >= BLUNT * before.distance(here) * here.distance(after);
        return new Point2D.Double(
                blunt ? (after.getX() - before.getX()) / 6 : 0,
                blunt ? (after.getY() - before.getY()) / 6 : 0);
    }

    private static Point2D point(Piece.Outline outline, int i, DrawingLayout layout) {
        NumberColumn x = outline.x();
        int at = Math.floorMod(i, outline.size());
        return new Point2D.Double(layout.xPx(x.at(at)), layout.yPx(outline.y().at(at)));
    }
}
