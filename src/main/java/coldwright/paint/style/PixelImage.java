package coldwright.paint.style;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

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
