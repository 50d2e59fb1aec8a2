package coldwright.paint;

import coldwright.figure.Axis;
import coldwright.figure.Figure;
import coldwright.figure.NumberColumn;
import coldwright.figure.Series;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/** A figure's data as a table. */
final class FigureCsv {
    private final List<String> headers = new ArrayList<>();
    private final List<IntFunction<String>> columns = new ArrayList<>();

    private FigureCsv() {}

    static String of(Figure figure) {
        FigureCsv table = new FigureCsv();
        int rows = 0;
        for (Series series : figure.series()) {
            table.add(series, figure);
            rows = Math.max(rows, series.size());
        }
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
            if (!table.headers.isEmpty()) {
                printer.printRecord(table.headers);
            }
            for (int row = 0; row < rows; row++) {
                for (IntFunction<String> column : table.columns) {
                    printer.print(column.apply(row));
                }
                printer.println();
            }
        } catch (IOException e) {
            throw new AssertionError("a write into memory failed", e);
        }
        return text.toString();
    }

    private void add(Series series, Figure figure) {
        String name = series.name().isBlank() ? "" : series.name() + ": ";
        String x = name + caption(figure.x(), "x");
        String y = name + caption(figure.y(), "y");
        if (series instanceof Series.Bars bars) {
            headers.add(x);
            columns.add(row -> row < bars.size() ? bars.words().get(row) : "");
        } else if (!(series instanceof Series.BoxPlot)) {
            add(x, series.x());
        }
        List<NumberColumn> all = series.columns();
        if (series instanceof Series.Band) {
            add(y + ", low", all.get(0));
            add(y + ", high", all.get(1));
        } else {
            add(y, all.get(0));
        }
        if (series instanceof Series.HeatMap map) {
            add(series.name().isBlank() ? "value" : series.name(), map.values());
        }
    }

    private void add(String header, NumberColumn numbers) {
        headers.add(header);
        columns.add(row -> row < numbers.size() ? text(numbers.at(row)) : "");
    }

    private static String caption(Axis axis, String otherwise) {
        return axis.caption().isBlank() ? otherwise : axis.caption();
    }

    private static String text(double value) {
        return Double.isNaN(value) ? "" : Double.toString(value + 0.0); // no minus before a zero
    }
}
