package coldwright.paint.chart;

import coldwright.figure.Figure;
import coldwright.figure.Series;
import coldwright.paint.style.ColourScale;
import coldwright.paint.style.FigureFont;
import coldwright.paint.style.FigureTheme;
import coldwright.paint.style.SeriesStyle;
import coldwright.words.Words;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The legend: a sample and a name for each series, in their order, the earlier figure once and
 * last; in rows above the plot, where they cover no data.
 */
record ChartLegend(List<Entry> entries, FigureFont type, FigureTheme theme) {
    private static final double SAMPLE_EMS = 2.1;
    private static final double SMALL_SAMPLE_EMS = 0.85;
    private static final double AFTER_SAMPLE_EMS = 0.5;
    private static final double BETWEEN_EMS = 1.5;

    /** A sample of one kind of series, and its name. */
    record Entry(String name, Class<? extends Series> kind, SeriesStyle ink) {}

    /** An entry at its position; y is the base line of its name. */
    record Placed(Entry entry, double x, double y) {}

    static ChartLegend of(
            Figure figure, Optional<Figure> earlier, FigureFont type, FigureTheme figureTheme) {
        List<Entry> entries = new ArrayList<>();
        List<Series> all = figure.series();
        List<SeriesStyle> inks = SeriesStyle.of(all, figureTheme);
        for (int i = 0; i < all.size(); i++) {
            String name =
                    all.get(i) instanceof Series.HeatMap map
                            ? map.caption()
                            : all.get(i).name().strip();
            if (!name.isBlank() && !(all.get(i) instanceof Series.BoxPlot)) {
                entries.add(new Entry(name, all.get(i).getClass(), inks.get(i)));
            }
        }
        if (earlier.isEmpty() && entries.size() == 1 && saysNothingNew(figure, entries.get(0))) {
            entries.clear();
        }
        earlier.ifPresent(
                was ->
                        entries.add(
                                new Entry(
                                        Words.of("paint").shown("earlier"),
                                        was.series().get(0).getClass(),
                                        SeriesStyle.of(0, 0, figureTheme).earlier())));
        return new ChartLegend(entries, type, figureTheme);
    }

    private static boolean saysNothingNew(Figure figure, Entry only) {
        List<String> said = List.of(figure.title(), figure.y().label());
        return figure.series().size() == 1
                && said.stream()
                        .anyMatch(
                                words ->
                                        words.strip().equalsIgnoreCase(only.name())
                                                || (only.kind() == Series.Bars.class
                                                                || only.kind()
                                                                        == Series.Histogram.class)
                                                        && !words.isBlank());
    }

    private double sampleWidth(Entry entry) {
        boolean small = entry.kind() != Series.Curve.class && entry.kind() != Series.HeatMap.class;
        return type.size() * (small ? SMALL_SAMPLE_EMS : SAMPLE_EMS);
    }

    private double width(Entry entry) {
        return sampleWidth(entry) + type.size() * AFTER_SAMPLE_EMS + type.width(entry.name());
    }

    /** The width of all entries in one row. */
    double width() {
        double gaps = type.size() * BETWEEN_EMS * Math.max(0, entries.size() - 1);
        return entries.stream().mapToDouble(this::width).sum() + gaps;
    }

    /** The entries in one row, from its left end. */
    List<Placed> inOneRow(double x, double y) {
        List<Placed> placed = new ArrayList<>();
        double at = x;
        for (Entry entry : entries) {
            placed.add(new Placed(entry, at, y));
            at += width(entry) + type.size() * BETWEEN_EMS;
        }
        return placed;
    }

    /** The entries in columns, with as many rows as allowed; those that don't fit are left out. */
    List<Placed> inColumns(double x, double y, Room room) {
        double widest = 0;
        for (Entry entry : entries) {
            widest = Math.max(widest, Math.min(width(entry), room.width()));
        }
        double between = type.size() * BETWEEN_EMS;
        int columns = (int) Math.max(1, (room.width() + between) / (widest + between));
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < entries.size() && i / columns < room.rows(); i++) {
            Entry entry = entries.get(i);
            int row = i / columns;
            double forName = widest - sampleWidth(entry) - type.size() * AFTER_SAMPLE_EMS;
            placed.add(
                    new Placed(
                            new Entry(
                                    type.cut(entry.name(), forName + 0.5),
                                    entry.kind(),
                                    entry.ink()),
                            x + i % columns * (widest + between),
                            y + row * room.rowHeight()));
        }
        return placed;
    }

    /** The room for columns. */
    record Room(double width, int rows, double rowHeight) {}

    void paint(Graphics2D g, Placed placed, double lineWidth) {
        Entry entry = placed.entry();
        double wide = sampleWidth(entry);
        double middle = placed.y() - type.size() * 0.34;
        double x = placed.x();
        double size = type.size() * 0.62;
        Rectangle2D box = new Rectangle2D.Double(x, middle - size * 0.55, wide, size * 1.1);
        g.setColor(entry.ink().color());
        if (entry.kind() == Series.Curve.class) {
            double width = entry.ink().pale() ? lineWidth * CurveLayer.EARLIER_WIDTH : lineWidth;
            g.setStroke(entry.ink().stroke((float) width));
            g.draw(new Line2D.Double(x, middle, x + wide, middle));
        } else if (entry.kind() == Series.Dots.class) {
            entry.ink().shape().fill(g, x + wide / 2, middle, size);
        } else if (entry.kind() == Series.HeatMap.class) {
            ColourScale.paint(g, box, theme.scale(), true);
        } else if (entry.kind() == Series.Band.class) {
            g.setColor(entry.ink().band());
            g.fill(box);
            g.setColor(entry.ink().color());
            g.setStroke(new BasicStroke((float) lineWidth / 2));
            g.draw(new Line2D.Double(x, box.getMinY(), x + wide, box.getMinY()));
            g.draw(new Line2D.Double(x, box.getMaxY(), x + wide, box.getMaxY()));
        } else {
            g.fill(box);
            if (!entry.ink().pale()) {
                BarLayer.hatch(g, box, entry.ink(), type.size());
            }
        }
        g.setColor(theme.text());
        type.set(g, entry.name(), x + wide + type.size() * AFTER_SAMPLE_EMS, placed.y());
    }
}
