package coldwright.paint.style;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.HashMap;
import java.util.Map;

/** Rendering hints for drawing. */
public final class Resolution {
    private static final Map<RenderingHints.Key, Object> FINE = new HashMap<>();

    static {
        FINE.put(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        FINE.put(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        FINE.put(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        FINE.put(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    private Resolution() {}

    public static void prepare(Graphics2D g) {
        g.addRenderingHints(FINE);
    }
}
