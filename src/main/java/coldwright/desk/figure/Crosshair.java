package coldwright.desk.figure;

import coldwright.desk.figure.model.FigureReadout;
import coldwright.desk.figure.model.FigureReadout.ImagePoint;
import coldwright.desk.messages.TextControls;
import coldwright.paint.style.PlotArea;

import javafx.geometry.Bounds;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;

/** The overlay of a figure: crosshair, readout, and the rectangle to zoom to. */
final class Crosshair {
    private static final double ASIDE_PX = 9;

    private final Line upright = TextControls.styled(new Line(), "cross-line");
    private final Line level = TextControls.styled(new Line(), "cross-line");
    private final Rectangle part = TextControls.styled(new Rectangle(), "zoom-part");
    private final Label words = TextControls.styled(new Label(), "cross-words");

    /** Adds it to a pane whose pixels are the image's. */
    Crosshair(Pane glass) {
        glass.getChildren().addAll(part, upright, level, words);
        glass.getChildren().forEach(one -> one.setManaged(false));
        hide();
        hidePart();
    }

    void show(FigureReadout reading, PlotArea plot) {
        double x = plot.xPx(reading.x());
        double y = plot.yPx(reading.y());
        PlotArea.PixelRect pixelRect = plot.area();
        boolean xSeen = x >= pixelRect.left() && x <= pixelRect.right();
        boolean ySeen = y >= pixelRect.top() && y <= pixelRect.bottom();
        put(upright, x, pixelRect.top(), x, pixelRect.bottom());
        put(level, pixelRect.left(), y, pixelRect.right(), y);
        upright.setVisible(xSeen);
        level.setVisible(ySeen);
        words.setText(reading.words());
        words.autosize();
        Bounds size = words.getLayoutBounds();
        double atX =
                x + ASIDE_PX + size.getWidth() <= pixelRect.right()
                        ? x + ASIDE_PX
                        : x - ASIDE_PX - size.getWidth();
        // away from the readout's line, at the other end of the plot
        boolean inUpperHalf = y < pixelRect.top() + pixelRect.height() / 2.0;
        double atY =
                inUpperHalf
                        ? pixelRect.bottom() - size.getHeight() - ASIDE_PX / 2
                        : pixelRect.top() + ASIDE_PX / 2;
        double rightmost = pixelRect.right() - size.getWidth();
        words.relocate(Math.max(2, Math.min(rightmost, atX)), atY);
        words.setVisible(true);
    }

    private static void put(Line line, double fromX, double fromY, double toX, double toY) {
        line.setStartX(Math.rint(fromX) + 0.5);
        line.setStartY(Math.rint(fromY) + 0.5);
        line.setEndX(Math.rint(toX) + 0.5);
        line.setEndY(Math.rint(toY) + 0.5);
    }

    void hide() {
        upright.setVisible(false);
        level.setVisible(false);
        words.setVisible(false);
    }

    void showPart(ImagePoint from, ImagePoint to) {
        part.setX(Math.min(from.x(), to.x()));
        part.setY(Math.min(from.y(), to.y()));
        part.setWidth(Math.abs(from.x() - to.x()));
        part.setHeight(Math.abs(from.y() - to.y()));
        part.setVisible(true);
    }

    void hidePart() {
        part.setVisible(false);
    }
}
