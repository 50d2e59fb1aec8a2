package coldwright.paint.style;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.function.Consumer;

/**
 * A finished image for JavaFX: {@code PixelBuffer} with {@code PixelFormat.getIntArgbPreInstance()}
 * accepts an {@code IntBuffer} around {@link #argbPremultiplied}, without a copy.
 */
public final class PixelImage {
    private final BufferedImage image;

    /** Wraps an image that isn't drawn on any more. */
    public PixelImage(BufferedImage image) {
        if (image.getType() != BufferedImage.TYPE_INT_ARGB_PRE) {
            throw new IllegalArgumentException(
                    "the image is of type %d; it must be TYPE_INT_ARGB_PRE"
                            .formatted(image.getType()));
        }
        this.image = image;
    }

    /** Draws on paper of a format; coordinates are logical pixels. */
    public static PixelImage of(FigureFormat format, Consumer<Graphics2D> drawing) {
        BufferedImage image =
                new BufferedImage(
                        format.widthPx(), format.heightPx(), BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D g = image.createGraphics();
        g.setColor(format.theme().paper());
        g.fillRect(0, 0, format.widthPx(), format.heightPx());
        g.scale(format.screenScale(), format.screenScale());
        drawing.accept(g);
        g.dispose();
        return new PixelImage(image);
    }

    /** Sets the rendering hints for lines and text. */
    public static void smooth(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(
                RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(
                RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    public int widthPx() {
        return image.getWidth();
    }

    public int heightPx() {
        return image.getHeight();
    }

    /**
     * The image's own pixels, row by row from the top; read-only. Each is alpha, red, green, blue
     * from the high byte down, premultiplied by alpha.
     */
    public int[] argbPremultiplied() {
        return ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    }

    /** {@return a pixel's colour: red, green and blue in the low three bytes} */
    public int rgbAt(int xPx, int yPx) {
        return image.getRGB(xPx, yPx) & 0xFFFFFF;
    }

    public BufferedImage image() {
        return image;
    }
}
