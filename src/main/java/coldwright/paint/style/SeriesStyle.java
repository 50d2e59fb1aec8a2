package coldwright.paint.style;

import coldwright.figure.Series;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The style of a series: colour, dashes and point shape, each enough to distinguish it.
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
        PointShape[] shapes = PointShape.values();
        int look = place + place / DASHES.size();
        return new SeriesStyle(
                figureTheme.series().get(number % figureTheme.series().size()),
                DASHES.get(look % DASHES.size()),
                shapes[look % shapes.length],
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
        return new SeriesStyle(
                FigureTheme.mixed(theme.paper(), color, EARLIER_SHARE), dash, shape, true, theme);
    }

    /** The hatching of bars: none, rising, falling, then again but closer. */
    public int hatch() {
        return DASHES.indexOf(dash) % 5;
    }

    public Color band() {
        return FigureTheme.mixed(theme.paper(), color, BAND_SHARE);
    }
}
