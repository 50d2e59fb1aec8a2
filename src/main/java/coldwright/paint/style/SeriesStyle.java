package coldwright.paint.style;

import coldwright.figure.Series;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The style of a series: colour, dashes and point shape, each enough to distinguish it.
 *
 * <p>The colours are our choice and order from two published sets for all kinds of colour vision:
 * blue, vermilion and reddish purple from M. Okabe and K. Ito, "Color Universal Design (CUD): How
 * to make figures and presentations that are friendly to Colorblind people", 2002, modified 2008
 * (jfly.uni-koeln.de/color); green, wine and indigo from the set "muted" of P. Tol, "Colour
 * Schemes", SRON Technical Note SRON/EPS/TN/09-002, 2012 (values as packages of colour schemes
 * quote them; the note itself was not opened). On a dark page they are sky blue of the former and
 * lighter colours of Tol's sets "bright", "light" and "muted"; for high contrast darker ones of our
 * own. Only colours with a contrast of at least 3 to 1 against their ground were taken, 4 to 1 on a
 * dark page and 5 to 1 for high contrast.
 *
 * @param dash lengths of strokes and gaps in line widths; empty for a solid line
 * @param pale whether it is for an earlier figure
 */
public record SeriesStyle(
        Color color, List<Float> dash, PointShape shape, boolean pale, FigureTheme theme) {
    /** The share of the colour in an earlier curve; the rest is paper. */
    static final double EARLIER_SHARE = 0.45;

    /** The share of the colour in the area of a band. */
    private static final double BAND_SHARE = 0.2;

    private static final Map<FigureTheme, List<Color>> COLORS =
            Map.of(
                    FigureTheme.LIGHT,
                    // blue, vermilion, green, wine, reddish purple, indigo
                    colors(0x0072B2, 0xD55E00, 0x117733, 0x882255, 0xCC79A7, 0x332288),
                    FigureTheme.DARK,
                    // sky blue, red, pear, pink, sand, olive
                    colors(0x56B4E9, 0xEE6677, 0xBBCC33, 0xFFAABB, 0xEEDD88, 0x999933),
                    FigureTheme.CONTRAST,
                    // blue, brown, ochre, black, night blue, grey
                    colors(0x0072B2, 0x5B2C00, 0x8A6B00, 0x000000, 0x222255, 0x555555));

    private static final int COUNT = 6;

    private static final List<List<Float>> DASHES =
            List.of(
                    List.of(),
                    List.of(5f, 2.2f),
                    List.of(1.2f, 1.7f),
                    List.of(7f, 1.8f, 1.2f, 1.8f),
                    List.of(9f, 3.2f),
                    List.of(3f, 1.5f, 1.2f, 1.5f, 1.2f, 1.5f));

    /**
     * The style of one series.
     *
     * @param number index in the figure, for the colour
     * @param place index among its own kind, for dashes and shape: a single line is solid
     */
    public static SeriesStyle of(int number, int place, FigureTheme figureTheme) {
        int round = place / COUNT;
        PointShape[] shapes = PointShape.values();
        return new SeriesStyle(
                COLORS.get(figureTheme).get(number % COUNT),
                DASHES.get((place + round) % DASHES.size()),
                shapes[(place + round) % shapes.length],
                false,
                figureTheme);
    }

    /** The styles of all series of a figure, in their order. */
    public static List<SeriesStyle> of(List<Series> series, FigureTheme figureTheme) {
        List<SeriesStyle> inks = new ArrayList<>();
        Map<Class<?>, Integer> places = new HashMap<>();
        for (Series one : series) {
            int place = places.merge(one.getClass(), 1, Integer::sum) - 1;
            inks.add(of(inks.size(), place, figureTheme));
        }
        return inks;
    }

    public BasicStroke stroke(float width) {
        if (dash.isEmpty()) {
            return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
        }
        float[] lengths = new float[dash.size()];
        for (int i = 0; i < dash.size(); i++) {
            lengths[i] = dash.get(i) * width;
        }
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, lengths, 0);
    }

    /** The pale style for the earlier figure. */
    public SeriesStyle earlier() {
        return new SeriesStyle(theme.paler(color, EARLIER_SHARE), dash, shape, true, theme);
    }

    /** The hatching of bars: none, rising, falling, then again but closer. */
    public int hatch() {
        return DASHES.indexOf(dash) % 5;
    }

    public Color band() {
        return theme.paler(color, BAND_SHARE);
    }

    private static List<Color> colors(int... rgb) {
        return IntStream.of(rgb).mapToObj(Color::new).toList();
    }
}
