package coldwright.paint.chart;

import coldwright.figure.Axis;
import coldwright.figure.Figure;
import coldwright.paint.style.AxisTicks;
import coldwright.paint.style.FigureFont;
import coldwright.paint.style.FigureFormat;
import coldwright.paint.style.FigureTheme;
import coldwright.paint.style.PlotArea;
import coldwright.paint.style.TextLine;
import coldwright.paint.style.ValueSpan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The layout of a chart: computed from top, bottom and left inwards; the plot gets the rest. */
public final class ChartLayout {
    private static final double ROW_EMS = 1.5;
    private static final double BETWEEN_Y_TICKS_EMS = 2.3;
    private static final double BETWEEN_X_LABELS_EMS = 1.6;
    private static final int MOST_TICKS = 9;
    private static final int MOST_WORD_LINES = 3;

    /** The share of the height that a legend may take. */
    private static final double LEGEND_SHARE = 0.28;

    private final Figure figure;
    private final Optional<Figure> earlier;
    private final FigureFormat format;
    private final Optional<PlotArea> former;
    private final double em;
    private final FigureFont plain;
    private final FigureFont small;
    private final BarGroups bars;
    private final ChartLegend legend;
    private final List<TextLine> lines = new ArrayList<>();
    private final List<ChartLegend.Placed> samples = new ArrayList<>();
    private AxisTicks xTicks;
    private AxisTicks yTicks;
    private PlotArea plot;

    private ChartLayout(
            Figure figure,
            Optional<Figure> earlier,
            FigureFormat format,
            Optional<PlotArea> former) {
        this.former = former;
        this.figure = figure;
        this.earlier = earlier;
        this.format = format;
        em = format.em();
        plain = FigureFont.of(em);
        small = FigureFont.of(Math.rint(em * 0.94));
        bars = BarGroups.of(figure);
        legend = ChartLegend.of(figure, earlier, plain, format.theme());
    }

    public static ChartLayout of(
            Figure figure,
            Optional<Figure> earlier,
            FigureFormat format,
            Optional<PlotArea> former) {
        ChartLayout layout = new ChartLayout(figure, earlier, format, former);
        layout.make();
        return layout;
    }

    private void make() {
        double pad = em * 0.9;
        double inner = format.width() - 2 * pad;
        double title =
                TextLine.title(figure.title(), format, format.height() < em * 20 ? 2 : 3, lines);
        double top =
                setHead(pad, inner, title + (figure.title().isBlank() ? 0 : em * 0.4)) + em * 0.6;
        double bottom = format.height() - em * 0.55;
        String xCaption = plain.cut(figure.x().caption(), inner);
        double captionBase = bottom - em * 0.2;
        bottom -= xCaption.isBlank() ? 0 : em * 1.5;
        double oneLine = xLabelled() || bars.drawn() ? em * 1.15 : 0;

        List<Figure> both = figures().toList();
        ValueSpan wholeX = AxisRange.x(both);
        ValueSpan x =
                AxisRange.fixedRange(wholeX, figure.x(), former.map(PlotArea::x)).orElse(wholeX);
        ValueSpan wholeY = AxisRange.y(both, x);
        Optional<ValueSpan> heldY =
                AxisRange.fixedRange(wholeY, figure.y(), former.map(PlotArea::y));
        List<String> ends = bars.drawn() ? List.of() : AxisTicks.on(x, MOST_TICKS).labels();
        double last = ends.isEmpty() ? 0 : plain.width(ends.get(ends.size() - 1));
        double rightPad = Math.max(em * 1.3, last / 2 + em * 0.3);
        double plotBottom = bottom - oneLine - tickLength() - em * 0.25;
        double rows = (plotBottom - top) / (em * BETWEEN_Y_TICKS_EMS);
        yTicks =
                heldY.map(span -> AxisTicks.on(span, count(rows)))
                        .orElseGet(() -> ticks(figure.y(), wholeY, count(rows)));
        double left = pad + labelsWidth();
        double width = format.width() - left - rightPad;
        List<List<String>> words = words(width);
        int wordLines = words.stream().mapToInt(List::size).max().orElse(1);
        plotBottom -= (wordLines - 1) * em * 1.2;

        PlotArea.PixelRect pixelRect =
                new PlotArea.PixelRect(
                        (int) Math.round(left),
                        (int) Math.round(top),
                        (int) Math.max(8, Math.round(width)),
                        (int) Math.max(8, Math.round(plotBottom - top)));
        xTicks = xTicksOn(x, pixelRect.width());
        plot = new PlotArea(pixelRect, xTicks.span(), yTicks.span());
        setLabels(words);
        if (!xCaption.isBlank()) {
            double at = Math.max(pad, pixelRect.right() - plain.width(xCaption));
            lines.add(new TextLine(xCaption, plain, theme().text(), at, captionBase));
        }
    }

    /** The y axis' caption and the legend: in one row if both fit, else one above the other. */
    private double setHead(double pad, double inner, double top) {
        double y = top;
        String caption = plain.cut(figure.y().caption(), inner);
        boolean captioned = !caption.isBlank();
        double room = inner - (captioned ? plain.width(caption) + em * 2 : 0);
        if (legend.width() <= room && !legend.entries().isEmpty()) {
            double x = captioned ? pad + inner - legend.width() : pad;
            samples.addAll(legend.inOneRow(x, y + em));
            y += captioned ? 0 : em * ROW_EMS;
        } else if (legend.width() <= inner && !legend.entries().isEmpty()) {
            samples.addAll(legend.inOneRow(pad, y + em));
            y += em * ROW_EMS;
        } else {
            double row = em * ROW_EMS;
            int rows = (int) Math.max(1, format.height() * LEGEND_SHARE / row);
            samples.addAll(legend.inColumns(pad, y + em, new ChartLegend.Room(inner, rows, row)));
            y = samples.isEmpty() ? y : samples.get(samples.size() - 1).y() - em + row;
        }
        if (captioned) {
            lines.add(new TextLine(caption, plain, theme().text(), pad, y + em));
            y += em * ROW_EMS;
        }
        return y;
    }

    private static int count(double most) {
        return (int) Math.max(2, Math.min(MOST_TICKS, Math.round(most)));
    }

    private static AxisTicks ticks(Axis axis, ValueSpan span, int count) {
        AxisTicks out = AxisTicks.letOut(span, count);
        double from = axis.from().isPresent() ? span.from() : out.span().from();
        double to = axis.to().isPresent() ? span.to() : out.span().to();
        return new AxisTicks(ValueSpan.around(from, to), out.step());
    }

    private AxisTicks xTicksOn(ValueSpan span, double width) {
        for (int most = MOST_TICKS + 1; most > 1; most--) {
            AxisTicks axisTicks = AxisTicks.on(span, most);
            double widest = axisTicks.labels().stream().mapToDouble(plain::width).max().orElse(0);
            double step = axisTicks.step() / span.width() * width;
            if (widest + em * BETWEEN_X_LABELS_EMS <= step) {
                return axisTicks;
            }
        }
        return AxisTicks.on(span, 1);
    }

    private double labelsWidth() {
        if (!yLabelled()) {
            return 0;
        }
        double widest = yTicks.labels().stream().mapToDouble(plain::width).max().orElse(0);
        return widest + tickLength() + em * 0.35;
    }

    private List<List<String>> words(double width) {
        double slot = width / bars.words().size();
        return (slot < em ? List.<String>of() : bars.words())
                .stream().map(word -> plain.wrapped(word, slot * 0.94, MOST_WORD_LINES)).toList();
    }

    private void setLabels(List<List<String>> words) {
        double gap = tickLength() + em * 0.35;
        if (yLabelled()) {
            List<String> labels = yTicks.labels();
            for (int i = 0; i < labels.size(); i++) {
                double x = plot.area().left() - gap - plain.width(labels.get(i));
                double y = plot.yPx(yTicks.value(i)) + em * 0.36;
                lines.add(new TextLine(labels.get(i), plain, theme().quietText(), x, y));
            }
        }
        double y = plot.area().bottom() + tickLength() + em * 1.1;
        if (xLabelled()) {
            List<String> labels = xTicks.labels();
            for (int i = 0; i < labels.size(); i++) {
                setCentred(labels.get(i), plot.xPx(xTicks.value(i)), y);
            }
        }
        for (int i = 0; i < words.size(); i++) {
            for (int line = 0; line < words.get(i).size(); line++) {
                setCentred(words.get(i).get(line), plot.xPx(i), y + line * em * 1.2);
            }
        }
    }

    private void setCentred(String text, double middle, double y) {
        double x = middle - plain.width(text) / 2;
        lines.add(new TextLine(text, plain, theme().quietText(), x, y));
    }

    Figure figure() {
        return figure;
    }

    FigureFormat format() {
        return format;
    }

    Optional<Figure> earlier() {
        return earlier;
    }

    BarGroups bars() {
        return bars;
    }

    ChartLegend legend() {
        return legend;
    }

    List<TextLine> lines() {
        return lines;
    }

    List<ChartLegend.Placed> samples() {
        return samples;
    }

    AxisTicks xTicks() {
        return xTicks;
    }

    AxisTicks yTicks() {
        return yTicks;
    }

    public PlotArea plot() {
        return plot;
    }

    FigureFont small() {
        return small;
    }

    double em() {
        return em;
    }

    /** Whether the y axis has numbers; an axis of an empty figure has none. */
    boolean yLabelled() {
        return !figure.series().isEmpty() || figure.y().from().isPresent();
    }

    boolean xLabelled() {
        return !bars.drawn() && (!figure.series().isEmpty() || figure.x().from().isPresent());
    }

    FigureTheme theme() {
        return format.theme();
    }

    double tickLength() {
        return em * 0.35;
    }

    double lineWidth() {
        return em * 0.155;
    }

    /** The figure and the earlier one behind it. */
    Stream<Figure> figures() {
        return Stream.concat(Stream.of(figure), earlier.stream());
    }

    /** The width of a thin line that fills whole pixels of the screen. */
    double axisWidth() {
        double scale = format.screenScale();
        return Math.max(1, Math.round(em / 13 * scale)) / scale;
    }

    /** The nearest position where a thin line fills whole pixels. */
    double snap(double place) {
        double scale = format.screenScale();
        boolean odd = Math.round(axisWidth() * scale) % 2 == 1;
        return (odd ? Math.floor(place * scale) + 0.5 : Math.rint(place * scale)) / scale;
    }
}
