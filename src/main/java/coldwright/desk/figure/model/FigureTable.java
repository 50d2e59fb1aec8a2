package coldwright.desk.figure.model;

import coldwright.desk.messages.Messages;
import coldwright.figure.Axis;
import coldwright.figure.Drawing;
import coldwright.figure.DrawingDescription;
import coldwright.figure.Exhibit;
import coldwright.figure.Figure;
import coldwright.figure.NumberColumn;
import coldwright.figure.Series;
import coldwright.figure.TypesetNumber;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/**
 * The data of a figure as a table, or the moments of a drawing. Series with the same x values share
 * their column; column heads have units.
 */
public record FigureTable(List<String> columns, List<List<String>> rows) {
    /** A column's numbers resolve its range into this many steps. */
    private static final double FINENESS = 2000;

    public FigureTable {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** Makes the table of a figure or drawing. */
    public static FigureTable of(Exhibit exhibit) {
        if (exhibit instanceof Figure figure) {
            return of(figure);
        } else if (exhibit instanceof Drawing drawing) {
            List<List<String>> rows = new ArrayList<>();
            for (int i = 0; i < drawing.moments().size(); i++) {
                String time = DrawingDescription.time(drawing, i);
                String number = String.valueOf(i + 1);
                rows.add(List.of(time.isEmpty() ? number : time, drawing.moments().get(i).label()));
            }
            return new FigureTable(
                    List.of(Messages.of("table.time"), Messages.of("table.seen")), rows);
        }
        throw new AssertionError(exhibit.getClass());
    }

    private static FigureTable of(Figure figure) {
        List<String> headers = new ArrayList<>();
        List<IntFunction<String>> columns = new ArrayList<>();
        int size = 0;
        NumberColumn lastX = null;
        boolean shared = figure.series().stream().map(FigureTable::xOf).distinct().count() == 1;
        for (Series series : figure.series()) {
            String name = series.name().isBlank() ? "" : series.name().strip() + ": ";
            size = Math.max(size, series.size());
            boolean again = !(series instanceof Series.Bars) && xOf(series).equals(lastX);
            lastX = xOf(series);
            boolean map = series instanceof Series.HeatMap;
            if (!again && !(series instanceof Series.BoxPlot)) {
                headers.add((shared || map ? "" : name) + caption(figure.x(), "x"));
                columns.add(
                        series instanceof Series.Bars bars
                                ? row -> row < bars.size() ? bars.words().get(row) : ""
                                : numbers(lastX));
            }
            String y = caption(figure.y(), "y");
            if (series instanceof Series.Band band) {
                headers.add(name + Messages.of("table.low", y));
                columns.add(numbers(band.low()));
                headers.add(name + Messages.of("table.high", y));
                columns.add(numbers(band.high()));
                continue;
            }
            headers.add(map ? y : name + y);
            columns.add(numbers(series.columns().get(0)));
            if (series instanceof Series.HeatMap cells) {
                headers.add(cells.name());
                columns.add(numbers(cells.values()));
            }
        }
        List<List<String>> rows = new ArrayList<>();
        for (int row = 0; row < size; row++) {
            int at = row;
            rows.add(columns.stream().map(column -> column.apply(at)).toList());
        }
        return new FigureTable(headers, rows);
    }

    /** The x values of a series; none for bars and box plots. */
    private static NumberColumn xOf(Series series) {
        return series instanceof Series.Bars || series instanceof Series.BoxPlot
                ? NumberColumn.of()
                : series.x();
    }

    private static String caption(Axis axis, String otherwise) {
        return axis.caption().isBlank() ? otherwise : axis.caption();
    }

    private static IntFunction<String> numbers(NumberColumn numbers) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double value : numbers.toArray()) {
            if (Double.isFinite(value)) {
                low = Math.min(low, value);
                high = Math.max(high, value);
            }
        }
        double wide = high > low ? high - low : Math.max(1e-9, Math.abs(high));
        double step = Double.isFinite(wide) ? wide / FINENESS : 1;
        return row ->
                row >= numbers.size() || Double.isNaN(numbers.at(row))
                        ? ""
                        : TypesetNumber.of(numbers.at(row), step);
    }
}
