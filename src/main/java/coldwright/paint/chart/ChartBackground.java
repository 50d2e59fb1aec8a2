package coldwright.paint.chart;

import coldwright.paint.style.PixelImage;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The background of a chart: paper, grid, axis numbers, title and legend.
 *
 * <p>While a dial turns, only the data change. So the last few backgrounds are cached as pixels,
 * and a chart with the same background starts from a copy.
 */
public final class ChartBackground {
    /** Cache size: a few figures change with one dial. */
    private static final int KEPT = 4;

    /** Larger backgrounds, such as those of files, aren't cached. */
    private static final int MOST_PIXELS = 2_000_000;

    /** By everything that a background depends on. */
    private static final Map<List<Object>, int[]> LATEST =
            new LinkedHashMap<>(KEPT, 0.75f, true) {
                @Override
                protected boolean removeEldestEntry(Map.Entry<List<Object>, int[]> eldest) {
                    return size() > KEPT;
                }
            };

    private ChartBackground() {}

    /** A new image with the background on it. */
    public static BufferedImage image(ChartLayout layout) {
        List<Object> key =
                List.of(
                        layout.format(),
                        layout.plot(),
                        layout.xTicks(),
                        layout.yTicks(),
                        layout.bars().drawn(),
                        List.copyOf(layout.lines()),
                        List.copyOf(layout.samples()));
        int[] kept;
        synchronized (LATEST) {
            kept = LATEST.get(key);
        }
        if (kept == null) {
            PixelImage image = PixelImage.of(layout.format(), g -> paint(layout, g));
            if (image.argbPremultiplied().length <= MOST_PIXELS) {
                synchronized (LATEST) {
                    LATEST.put(key, image.argbPremultiplied().clone());
                }
            }
            return image.image();
        }
        BufferedImage image =
                new BufferedImage(
                        layout.format().widthPx(),
                        layout.format().heightPx(),
                        BufferedImage.TYPE_INT_ARGB_PRE);
        System.arraycopy(kept, 0, new PixelImage(image).argbPremultiplied(), 0, kept.length);
        return image;
    }

    /** Draws the background on a ground that is already painted. */
    public static void paint(ChartLayout layout, Graphics2D g) {
        ChartFrame.paint(g, layout);
        PixelImage.smooth(g);
        AxesLayer.zero(g, layout, layout.theme().zero());
        layout.lines().forEach(line -> line.paint(g));
        for (ChartLegend.Placed sample : layout.samples()) {
            layout.legend().paint(g, sample, layout.lineWidth());
        }
    }
}
