package coldwright.paint;

import coldwright.figure.Figure;
import coldwright.figure.Series;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Draws figures as plates of a book: white ground, thin axes, quiet grid, and series that are told
 * apart by colour, dashes and shapes.
 *
 * <pre>{@code
 * Plate plate = ChartPainter.paint(figure, Optional.of(before), Sheet.of(800, 500).withScale(2));
 * }</pre>
 *
 * Needs no display and may be called on any thread.
 */
public final class ChartPainter {
    /** After so many drawings the first curve of a lesson costs little more than later ones. */
    private static final int WARM_UP_ROUNDS = 12;

    private ChartPainter() {}

    /**
     * Draws a figure.
     *
     * @param figure what to draw
     * @param sheet how large and how fine
     * @return the drawing
     */
    public static Plate paint(Figure figure, Sheet sheet) {
        return paint(figure, Optional.empty(), sheet);
    }

    /**
     * Draws a figure over an earlier one: the former curves stay behind the new ones, pale and
     * thin. An earlier figure that counts other things or draws them otherwise is left out, and so
     * is one that shows the same.
     *
     * @param figure what to draw
     * @param earlier the figure as it was at the last run
     * @param sheet how large and how fine
     * @return the drawing
     */
    public static Plate paint(Figure figure, Optional<Figure> earlier, Sheet sheet) {
        BufferedImage image =
                new BufferedImage(
                        sheet.widthPx(), sheet.heightPx(), BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D g = image.createGraphics();
        g.setColor(Ink.GROUND);
        g.fillRect(0, 0, sheet.widthPx(), sheet.heightPx());
        g.scale(sheet.look().screenScale(), sheet.look().screenScale());
        Plot plot = draw(figure, earlier, sheet, g);
        g.dispose();
        return new Plate(new Picture(image), plot);
    }

    /**
     * Pays ahead for what the first drawings cost: fonts, classes, compiled code. Takes part of a
     * second; call it on a thread that nobody waits for.
     */
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
            paint(lines, Optional.of(was), Sheet.of(800, 500).withScale(1 + i % 2));
        }
        paint(bars, Sheet.of(400, 300));
    }

    /** Draws on a ground that is already white. */
    static Plot draw(Figure figure, Optional<Figure> earlier, Sheet sheet, Graphics2D g) {
        Optional<Figure> was = earlier.filter(before -> comparable(figure, before));
        Layout layout = Layout.of(figure, was, sheet);
        Frame.paint(g, layout, layers(layout));
        Fineness.prepare(g);
        layout.lines().forEach(line -> line.paint(g));
        for (Legend.Placed sample : layout.samples()) {
            layout.legend().paint(g, sample, layout.lineWidth());
        }
        return layout.plot();
    }

    private static boolean comparable(Figure figure, Figure before) {
        return !before.series().isEmpty()
                && !before.series().equals(figure.series())
                && Bars.of(before).drawn() == Bars.of(figure).drawn()
                && before.x().caption().equals(figure.x().caption())
                && before.y().caption().equals(figure.y().caption());
    }

    private static List<Layer> layers(Layout layout) {
        List<Layer> layers = new ArrayList<>();
        List<Layer> data = new ArrayList<>();
        List<Series> series = layout.figure().series();
        List<Ink> inks = Ink.of(series);
        for (int i = 0; i < series.size(); i++) {
            if (series.get(i) instanceof Series.Band band) {
                data.add(new BandLayer(band, layout, inks.get(i)));
            }
        }
        layout.earlier().ifPresent(was -> addEarlier(data, was, layout));
        addSeries(data, layout);
        layers.add(AxesLayer.zero(layout, Ink.ZERO));
        layers.add(g -> paintWithin(layout, data, g));
        if (layout.bars().drawn()) {
            layers.add(AxesLayer.zero(layout, Ink.AXIS));
        }
        layers.add(new AxesLayer(layout));
        layers.add(new MarkLayer(layout.figure().marks(), layout));
        return layers;
    }

    /** Data may reach beyond the axes by a line's width, no farther. */
    private static void paintWithin(Layout layout, List<Layer> data, Graphics2D g) {
        Plot.Area area = layout.plot().area();
        int more = (int) Math.ceil(layout.lineWidth());
        Graphics2D within = (Graphics2D) g.create();
        // the value over a bar may stand above the plot
        int above = layout.bars().drawn() ? (int) Math.ceil(layout.em() * 1.3) : more;
        within.clipRect(
                area.left() - more,
                area.top() - above,
                area.width() + 2 * more,
                area.height() + above + above);
        data.forEach(layer -> layer.paint(within));
        within.dispose();
    }

    private static void addEarlier(List<Layer> data, Figure was, Layout layout) {
        List<String> names = layout.figure().series().stream().map(Series::name).toList();
        List<Ink> inks = Ink.of(layout.figure().series());
        List<Ink> ownInks = Ink.of(was.series());
        for (int i = 0; i < was.series().size(); i++) {
            Series one = was.series().get(i);
            int same = names.indexOf(one.name());
            Ink ink = (same < 0 ? ownInks.get(i) : inks.get(same)).earlier();
            if (one instanceof Series.Curve curve) {
                data.add(new CurveLayer(curve, layout, ink, CurveLayer.Points.NONE));
            } else if (one instanceof Series.Dots dots) {
                data.add(new DotLayer(dots, layout, ink));
            } else if (one instanceof Series.Bars bars) {
                data.add(new BarLayer(bars, layout, ink, same < 0 ? i : same));
            }
        }
    }

    private static void addSeries(List<Layer> data, Layout layout) {
        List<Series> series = layout.figure().series();
        int curves = (int) series.stream().filter(Series.Curve.class::isInstance).count();
        int curvesSoFar = 0;
        List<Ink> inks = Ink.of(series);
        for (int i = 0; i < series.size(); i++) {
            Series one = series.get(i);
            if (one instanceof Series.Curve curve) {
                CurveLayer.Points points = new CurveLayer.Points(curves, curvesSoFar++);
                data.add(
                        new CurveLayer(
                                curve,
                                layout,
                                inks.get(i),
                                curves > 1 ? points : CurveLayer.Points.NONE));
            }
        }
        for (int i = 0; i < series.size(); i++) {
            if (series.get(i) instanceof Series.Dots dots) {
                data.add(new DotLayer(dots, layout, inks.get(i)));
            } else if (series.get(i) instanceof Series.Bars bars) {
                data.add(new BarLayer(bars, layout, inks.get(i), i));
            }
        }
    }
}
