package coldwright.paint.style;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/**
 * Finished pixels, ready for JavaFX: an {@code IntBuffer} around {@link #argbPremultiplied} is what
 * a {@code PixelBuffer} with {@code PixelFormat.getIntArgbPreInstance()} takes, with no copy.
 */
public final class PixelImage {
    private final BufferedImage image;

    /** Takes an image that nobody draws on any more. */
    public PixelImage(BufferedImage image) {
        if (image.getType() != BufferedImage.TYPE_INT_ARGB_PRE) {
            throw new IllegalArgumentException(
                    "the image is of type %d; it must be TYPE_INT_ARGB_PRE"
                            .formatted(image.getType()));
        }
        this.image = image;
    }

    /**
     * How wide it is.
     *
     * @return pixels of the screen
     */
    public int widthPx() {
        return image.getWidth();
    }

    /**
     * How high it is.
     *
     * @return pixels of the screen
     */
    public int heightPx() {
        return image.getHeight();
    }

    /**
     * The picture's own pixels, row by row from the top; for reading only.
     *
     * @return one number for each pixel: alpha, red, green, blue from the high byte down, the
     *     colours multiplied by alpha
     */
    public int[] argbPremultiplied() {
        return ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    }

    /**
     * One pixel.
     *
     * @param xPx from the left
     * @param yPx from the top
     * @return red, green and blue in the low three bytes
     */
    public int rgbAt(int xPx, int yPx) {
        return image.getRGB(xPx, yPx) & 0xFFFFFF;
    }

    public BufferedImage image() {
        return image;
    }
}
