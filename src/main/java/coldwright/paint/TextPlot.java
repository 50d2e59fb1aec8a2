package coldwright.paint;

import coldwright.figure.Figure;
import coldwright.figure.NumberColumn;
import coldwright.figure.ReferenceLine;
import coldwright.figure.Series;
import coldwright.figure.TypesetNumber;
import coldwright.paint.chart.AxisRange;
import coldwright.paint.chart.BarGroups;
import coldwright.paint.style.ValueSpan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A figure as lines of text for a terminal: small, to show trends rather than values. Each series
 * has a letter, which the lines below the plot explain; bars are horizontal, followed by their
 * values.
 */
public final class TextPlot {
    private static final int HIGH = 14;
    private static final int LEAST_WIDE = 24;
    private static final int MOST_WIDE = 60;
    private static final int MOST_WORD = 24;

    private final Figure figure;
    private final boolean plain;
    private final int width;

    private TextPlot(Figure figure, int width, boolean plain) {
        this.figure = figure;
        this.width = width;
        this.plain = plain;
    }

    /**
     * Draws a figure as lines of text, none if there are no data; in ASCII if {@code plain}. A line
     * has at most {@code width} characters, which is 40 or more.
     */
    public static List<String> of(Figure figure, int width, boolean plain) {
        boolean empty = figure.series().stream().allMatch(series -> series.size() == 0);
        if (empty) {
            return List.of();
        }
        if (figure.series().get(0) instanceof Series.Histogram bins) {
            return new TextPlot(barsOf(bins, figure), width, plain).bars();
        }
        TextPlot plot = new TextPlot(figure, width, plain);
        if (figure.series().get(0) instanceof Series.BoxPlot) {
            return plot.boxes();
        }
        return BarGroups.of(figure).drawn() ? plot.bars() : plot.field();
    }

    private static Figure barsOf(Series.Histogram bins, Figure figure) {
        double width = (bins.to() - bins.from()) / bins.size();
        List<String> words = new ArrayList<>();
        for (int i = 0; i < bins.size(); i++) {
            double from = bins.from() + i * width;
            String to = TypesetNumber.plain(from + width, width * 5);
            words.add(TypesetNumber.plain(from, width * 5) + "–" + to + " " + figure.x().unit());
        }
        return Figure.of(figure.title())
                .y(figure.y().label(), figure.y().unit())
                .bars(bins.name(), words, bins.counts().toArray());
    }

    /** A line for each box: from the least to the largest, the middle half thick. */
    private List<String> boxes() {
        ValueSpan y = AxisRange.y(List.of(figure), AxisRange.x(List.of(figure)));
        List<String> lines = new ArrayList<>(List.of(figure.y().caption()));
        int margin =
                Math.min(
                        MOST_WORD,
                        BarGroups.of(figure).words().stream()
                                .mapToInt(String::length)
                                .max()
                                .orElse(0));
        int wide = Math.max(LEAST_WIDE, Math.min(MOST_WIDE, width - margin - 2));
        for (Series series : figure.series()) {
            char[] line = " ".repeat(wide).toCharArray();
            if (series instanceof Series.BoxPlot box && Double.isFinite(box.quantile(0.5))) {
                Arrays.fill(
                        line,
                        place(y, box.quantile(0), wide),
                        place(y, box.quantile(1), wide) + 1,
                        plain ? '-' : '─');
                Arrays.fill(
                        line,
                        place(y, box.quantile(0.25), wide),
                        place(y, box.quantile(0.75), wide) + 1,
                        plain ? '=' : '█');
                line[place(y, box.quantile(0.5), wide)] = '|';
            }
            String name =
                    series.name().length() > margin
                            ? series.name().substring(0, margin)
                            : series.name();
            lines.add(
                    (" ".repeat(margin - name.length()) + name + " " + new String(line))
                            .stripTrailing());
        }
        lines.add(" ".repeat(margin + 1) + ends(y, wide));
        return lines;
    }

    private static String ends(ValueSpan span, int wide) {
        String from = TypesetNumber.among(span.from(), span.width());
        String to = TypesetNumber.among(span.to(), span.width());
        return from + " ".repeat(Math.max(1, wide - from.length() - to.length())) + to;
    }

    private List<String> field() {
        ValueSpan x = AxisRange.x(List.of(figure));
        ValueSpan y = AxisRange.y(List.of(figure), x);
        String top = TypesetNumber.among(y.to(), y.width());
        String bottom = TypesetNumber.among(y.from(), y.width());
        int margin = Math.max(top.length(), bottom.length());
        int wide = Math.max(LEAST_WIDE, Math.min(MOST_WIDE, width - margin - 2));
        char[][] grid = new char[HIGH][wide];
        Arrays.stream(grid).forEach(row -> Arrays.fill(row, ' '));
        marks(grid, x, y);
        List<Series> all = figure.series();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i) instanceof Series.HeatMap map) {
                shade(grid, map, x, y);
            } else {
                draw(grid, all.get(i), letter(i), new ValueSpan[] {x, y});
            }
        }
        List<String> lines = new ArrayList<>();
        lines.add(figure.y().caption());
        for (int row = 0; row < HIGH; row++) {
            String label = row == 0 ? top : row == HIGH - 1 ? bottom : "";
            String line = " ".repeat(margin - label.length()) + label + " " + (plain ? '|' : '│');
            lines.add((line + new String(grid[row])).stripTrailing());
        }
        lines.add(" ".repeat(margin + 1) + (plain ? "+" : "└") + (plain ? "-" : "─").repeat(wide));
        lines.add(" ".repeat(margin + 2) + ends(x, wide));
        lines.add(" ".repeat(margin + 2) + figure.x().caption());
        for (int i = 0; i < all.size(); i++) {
            String indent = " ".repeat(margin + 2);
            if (all.get(i) instanceof Series.HeatMap map) {
                lines.add(indent + shades().strip() + "  " + map.caption());
            } else if (!all.get(i).name().isBlank() || all.size() > 1) {
                lines.add(indent + letter(i) + "  " + all.get(i).name());
            }
        }
        return lines;
    }

    private static char letter(int index) {
        return (char) ('a' + index % 26);
    }

    private void marks(char[][] grid, ValueSpan x, ValueSpan y) {
        for (ReferenceLine mark : figure.marks()) {
            boolean upright = mark.across() == ReferenceLine.Across.X;
            int column = place(x, mark.at(), grid[0].length);
            int row = HIGH - 1 - place(y, mark.at(), HIGH);
            if (upright && x.contains(mark.at())) {
                for (char[] line : grid) {
                    line[column] = plain ? ':' : '┊';
                }
            } else if (!upright && y.contains(mark.at())) {
                Arrays.fill(grid[row], plain ? '.' : '┄');
            }
        }
    }

    private static int place(ValueSpan span, double value, int count) {
        return (int) Math.max(0, Math.min(count - 1, Math.rint(span.shareOf(value) * (count - 1))));
    }

    /** Draws points, and a curve in every column that it crosses. */
    private static void draw(char[][] grid, Series series, char letter, ValueSpan[] axes) {
        int wide = grid[0].length;
        NumberColumn xs = series.x();
        for (NumberColumn ys : series.columns()) {
            for (int i = 0; i < xs.size(); i++) {
                dot(grid, xs.at(i), ys.at(i), letter, axes);
                boolean joined = i > 0 && !(series instanceof Series.Dots);
                double wayX = joined ? xs.at(i) - xs.at(i - 1) : 0;
                double wayY = joined ? ys.at(i) - ys.at(i - 1) : 0;
                double steps = Math.abs(wayX) / axes[0].width() * wide;
                int between = Double.isFinite(steps) ? (int) Math.min(wide, steps) : 0;
                for (int k = 1; k <= between; k++) {
                    double left = 1 - k / (between + 1.0);
                    dot(grid, xs.at(i) - left * wayX, ys.at(i) - left * wayY, letter, axes);
                }
            }
        }
    }

    private String shades() {
        return plain ? " .:*#" : " ░▒▓█";
    }

    /** Shades the cells of a heat map, from blank for little to full for much. */
    private void shade(char[][] grid, Series.HeatMap map, ValueSpan x, ValueSpan y) {
        NumberColumn across = Series.HeatMap.edges(map.x());
        NumberColumn up = Series.HeatMap.edges(map.y());
        int columns = map.x().distinct().size();
        int rows = map.size() / columns;
        for (int row = 0; row < HIGH; row++) {
            for (int column = 0; column < grid[row].length; column++) {
                double atX = x.at((column + 0.5) / grid[row].length);
                double atY = y.at((HIGH - row - 0.5) / HIGH);
                double i =
                        Math.floor((atX - across.at(0)) / (across.at(1) - across.at(0)) * columns);
                double k = Math.floor((atY - up.at(0)) / (up.at(1) - up.at(0)) * rows);
                if (i >= 0 && i < columns && k >= 0 && k < rows) {
                    double value = map.values().at((int) k * columns + (int) i);
                    double share =
                            (value - map.range().getMin())
                                    / (map.range().getMax() - map.range().getMin());
                    grid[row][column] =
                            Double.isNaN(share)
                                    ? ' '
                                    : shades().charAt((int) Math.min(4, share * 5));
                }
            }
        }
    }

    private static void dot(char[][] grid, double x, double y, char letter, ValueSpan[] axes) {
        if (axes[0].contains(x) && axes[1].contains(y)) {
            grid[HIGH - 1 - place(axes[1], y, HIGH)][place(axes[0], x, grid[0].length)] = letter;
        }
    }

    private List<String> bars() {
        BarGroups bars = BarGroups.of(figure);
        ValueSpan y = AxisRange.y(List.of(figure), AxisRange.x(List.of(figure)));
        double most = Math.max(Math.abs(y.from()), Math.abs(y.to()));
        List<String> lines = new ArrayList<>(List.of(figure.y().caption()));
        int margin = bars.words().stream().mapToInt(String::length).max().orElse(0);
        int wide = Math.min(MOST_WORD, margin);
        int room = Math.max(LEAST_WIDE, Math.min(MOST_WIDE, width - wide - 14)) - 4;
        for (Series.Bars one : bars.series()) {
            if (bars.series().size() > 1) {
                lines.add(one.name());
            }
            for (int i = 0; i < one.size(); i++) {
                double value = one.values().at(i);
                double share = Double.isFinite(value) ? Math.min(1, Math.abs(value) / most) : 0;
                String word = one.words().get(i);
                String cut = word.length() > wide ? word.substring(0, wide) : word;
                lines.add(
                        " ".repeat(wide - cut.length())
                                + cut
                                + " "
                                + (plain ? "#" : "█").repeat((int) Math.rint(share * room))
                                + " "
                                + TypesetNumber.plain(value, y.width()));
            }
        }
        return lines;
    }
}
