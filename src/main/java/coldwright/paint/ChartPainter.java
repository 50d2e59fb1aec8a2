package coldwright.paint;

import coldwright.figure.Figure;
import coldwright.figure.Series;
import coldwright.paint.chart.BarGroups;
import coldwright.paint.chart.ChartBackground;
import coldwright.paint.chart.ChartLayout;
import coldwright.paint.chart.DataLayers;
import coldwright.paint.style.FigureFormat;
import coldwright.paint.style.PixelImage;
import coldwright.paint.style.PlotArea;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Draws figures in the style of a book: white ground, thin axes, quiet grid, and series that differ
 * in colour, dashes and point shapes.
 *
 * <pre>{@code
 * RenderedFigure drawn = ChartPainter.paint(figure, FigureFormat.of(800, 500).withScale(2));
 * }</pre>
 *
 * Needs no display and may be called on any thread.
 */
public final class ChartPainter {
    /** After this many drawings the first chart of a lesson costs little more than later ones. */
    private static final int WARM_UP_ROUNDS = 12;

    private ChartPainter() {}

    public static RenderedFigure paint(Figure figure, FigureFormat format) {
        return paint(figure, Optional.empty(), format, Optional.empty());
    }

    /**
     * Draws a figure over the one of the last run, whose curves stay behind the new ones, pale and
     * thin, on the former plot area's axes while the data fit and fill enough of them. The earlier
     * figure is left out if it has other quantities or kinds of series, or looks the same.
     */
    public static RenderedFigure paint(
            Figure figure,
            Optional<Figure> earlier,
            FigureFormat format,
            Optional<PlotArea> former) {
        Optional<Figure> was = earlier.filter(before -> comparable(figure, before));
        ChartLayout layout = ChartLayout.of(figure, was, format, former);
        BufferedImage image = ChartBackground.image(layout);
        Graphics2D g = image.createGraphics();
        g.scale(format.screenScale(), format.screenScale());
        PixelImage.smooth(g);
        DataLayers.paint(layout, g);
        g.dispose();
        return new RenderedFigure(new PixelImage(image), layout.plot());
    }

    /** Warms up fonts, classes and code in the background; takes part of a second. */
    public static void warmUp() {
        double[] xs = {0, 0.5, 1};
        Figure lines =
                Figure.of("−0.5 °C")
                        .x("a", "%")
                        .y("b", "°C")
                        .band("band", xs, x -> x - 1, x -> x + 1)
                        .points("points", xs, xs)
                        .markX("mark", 0.3);
        Figure was = lines;
        for (int i = 0; i < 4; i++) {
            double slope = i;
            lines = lines.line("line " + i, 0, 1, x -> slope * x);
            was = was.line("line " + i, 0, 1, x -> slope * x * x);
        }
        Figure bars = Figure.of("bars").bars("bars", List.of("a", "b"), new double[] {1, 2});
        for (int i = 0; i < WARM_UP_ROUNDS; i++) {
            FigureFormat format = FigureFormat.of(800, 500).withScale(1 + i % 2);
            paint(lines, Optional.of(was), format, Optional.empty());
        }
        paint(bars, FigureFormat.of(400, 300));
    }

    /** Draws on a ground that is already painted. */
    static void draw(Figure figure, FigureFormat format, Graphics2D g) {
        ChartLayout layout = ChartLayout.of(figure, Optional.empty(), format, Optional.empty());
        ChartBackground.paint(layout, g);
        DataLayers.paint(layout, g);
    }

    /** Whether another figure can be seen through its data. */
    private static boolean overlays(Figure figure) {
        return figure.series().stream()
                .noneMatch(
                        one ->
                                one instanceof Series.HeatMap
                                        || one instanceof Series.Histogram
                                        || one instanceof Series.BoxPlot);
    }

    private static boolean comparable(Figure figure, Figure before) {
        return !before.series().isEmpty()
                && Stream.of(before, figure).allMatch(ChartPainter::overlays)
                && !before.series().equals(figure.series())
                && BarGroups.of(before).drawn() == BarGroups.of(figure).drawn()
                && before.x().caption().equals(figure.x().caption())
                && before.y().caption().equals(figure.y().caption());
    }
}
