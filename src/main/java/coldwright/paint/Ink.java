package coldwright.paint;

import coldwright.figure.Series;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How the series of a figure are told apart: by colour, by dashes and by the shape of their points,
 * so that each holds alone.
 *
 * <p>The colours are our choice and order from two published sets for all kinds of colour vision:
 * blue, vermilion and reddish purple from M. Okabe and K. Ito, "Color Universal Design (CUD): How
 * to make figures and presentations that are friendly to Colorblind people", 2002, modified 2008
 * (jfly.uni-koeln.de/color); green, wine and indigo from the set "muted" of P. Tol, "Colour
 * Schemes", SRON Technical Note SRON/EPS/TN/09-002, 2012 (values as packages of colour schemes
 * quote them; the note itself was not opened). Only colours with a contrast of at least 3 to 1
 * against white were taken.
 *
 * @param color the colour
 * @param dash lengths of strokes and gaps in widths of the line; empty for an unbroken line
 * @param shape the shape of a point
 * @param pale whether it draws an earlier trace
 */
record Ink(Color color, List<Float> dash, PointShape shape, boolean pale) {
    static final Color GROUND = Color.WHITE;
    static final Color TEXT = new Color(0x26292B);
    static final Color QUIET_TEXT = new Color(0x53585C);
    static final Color AXIS = new Color(0x6F7579);
    static final Color ZERO = new Color(0xB4B9BB);
    static final Color GRID = new Color(0xE5E8E8);
    static final Color MARK = new Color(0x53585C);

    /** How much of the colour is left in an earlier trace; the rest is white. */
    static final double EARLIER_SHARE = 0.45;

    /** How much of the colour is left in the ground of a band. */
    private static final double BAND_SHARE = 0.2;

    private static final Color[] COLORS = {
        new Color(0x0072B2), // blue
        new Color(0xD55E00), // vermilion
        new Color(0x117733), // green
        new Color(0x882255), // wine
        new Color(0xCC79A7), // reddish purple
        new Color(0x332288), // indigo
    };

    private static final List<List<Float>> DASHES =
            List.of(
                    List.of(),
                    List.of(5f, 2.2f),
                    List.of(1.2f, 1.7f),
                    List.of(7f, 1.8f, 1.2f, 1.8f),
                    List.of(9f, 3.2f),
                    List.of(3f, 1.5f, 1.2f, 1.5f, 1.2f, 1.5f));

    /**
     * The ink of one series.
     *
     * @param number which series of the figure it is, for the colour
     * @param place which of its own kind it is, for dashes and shape: a line alone is unbroken
     */
    static Ink of(int number, int place) {
        int round = place / COLORS.length;
        PointShape[] shapes = PointShape.values();
        return new Ink(
                COLORS[number % COLORS.length],
                DASHES.get((place + round) % DASHES.size()),
                shapes[(place + round) % shapes.length],
                false);
    }

    /** The inks of all series of a figure, in their order. */
    static List<Ink> of(List<Series> series) {
        List<Ink> inks = new ArrayList<>();
        Map<Class<?>, Integer> places = new HashMap<>();
        for (Series one : series) {
            inks.add(of(inks.size(), places.merge(one.getClass(), 1, Integer::sum) - 1));
        }
        return inks;
    }

    BasicStroke stroke(float width) {
        if (dash.isEmpty()) {
            return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
        }
        float[] lengths = new float[dash.size()];
        for (int i = 0; i < dash.size(); i++) {
            lengths[i] = dash.get(i) * width;
        }
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, lengths, 0);
    }

    /** The same ink as it was: pale. */
    Ink earlier() {
        return new Ink(paler(EARLIER_SHARE), dash, shape, true);
    }

    /** How bars are hatched: not at all, rising, falling, then again but closer. */
    int hatch() {
        return DASHES.indexOf(dash) % 5;
    }

    Color band() {
        return paler(BAND_SHARE);
    }

    private Color paler(double share) {
        return new Color(
                mixed(color.getRed(), share),
                mixed(color.getGreen(), share),
                mixed(color.getBlue(), share));
    }

    private static int mixed(int channel, double share) {
        return (int) Math.round(255 - (255 - channel) * share);
    }
}
