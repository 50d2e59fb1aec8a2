package coldwright.paint;

import coldwright.paint.style.PixelImage;
import coldwright.paint.style.ValueSpan;

import java.util.function.IntPredicate;

/** Looks at the pixels of a picture. */
public final class Pixels {
    private Pixels() {}

    public static double luminance(int rgb) {
        return 0.2126 * linear(rgb >> 16 & 0xFF)
                + 0.7152 * linear(rgb >> 8 & 0xFF)
                + 0.0722 * linear(rgb & 0xFF);
    }

    public static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    /** How bright a pixel is in a print without colour, 0 to 255. */
    static int grey(int rgb) {
        return (int)
                Math.round(
                        0.299 * (rgb >> 16 & 0xFF)
                                + 0.587 * (rgb >> 8 & 0xFF)
                                + 0.114 * (rgb & 0xFF));
    }

    /** How many pixels of a column between two rows are such. */
    static int countInColumn(PixelImage picture, int x, ValueSpan rows, IntPredicate such) {
        int count = 0;
        for (int y = (int) rows.from(); y <= rows.to(); y++) {
            count += such.test(picture.rgbAt(x, y)) ? 1 : 0;
        }
        return count;
    }

    static int count(PixelImage picture, IntPredicate such) {
        int count = 0;
        for (int y = 0; y < picture.heightPx(); y++) {
            count += countInRow(picture, y, new ValueSpan(0, picture.widthPx() - 1), such);
        }
        return count;
    }

    static int countInRow(PixelImage picture, int y, ValueSpan columns, IntPredicate such) {
        int count = 0;
        for (int x = (int) columns.from(); x <= columns.to(); x++) {
            count += such.test(picture.rgbAt(x, y)) ? 1 : 0;
        }
        return count;
    }

    /** How often a row changes from such pixels to others or back. */
    static int changesInRow(PixelImage picture, int y, ValueSpan columns, IntPredicate such) {
        int changes = 0;
        boolean last = such.test(picture.rgbAt((int) columns.from(), y));
        for (int x = (int) columns.from() + 1; x <= columns.to(); x++) {
            boolean now = such.test(picture.rgbAt(x, y));
            changes += now == last ? 0 : 1;
            last = now;
        }
        return changes;
    }

    static boolean bluish(int rgb) {
        return (rgb & 0xFF) - (rgb >> 16 & 0xFF) > 24;
    }

    static boolean reddish(int rgb) {
        return (rgb >> 16 & 0xFF) - (rgb & 0xFF) > 24;
    }
}
