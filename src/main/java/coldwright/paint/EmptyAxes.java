package coldwright.paint;

import coldwright.figure.Axis;
import coldwright.figure.Figure;
import coldwright.figure.NumberColumn;
import coldwright.figure.Series;
import coldwright.paint.chart.BarGroups;
import coldwright.paint.chart.ChartLayout;
import coldwright.paint.style.FigureFormat;
import coldwright.paint.style.PlotArea;
import coldwright.words.Words;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Empty figures for the learner to draw into. */
public final class EmptyAxes {
    private EmptyAxes() {}

    /** A figure's frame without its data: title, axes from end to end, the words under bars. */
    public static Figure of(Figure figure, FigureFormat format) {
        PlotArea plot = ChartLayout.of(figure, Optional.empty(), format, Optional.empty()).plot();
        BarGroups bars = BarGroups.of(figure);
        Axis y = figure.y().between(plot.y().from(), plot.y().to());
        Axis x = bars.drawn() ? figure.x() : figure.x().between(plot.x().from(), plot.x().to());
        double[] heights = new double[bars.words().size()];
        Arrays.fill(heights, Double.NaN);
        Series words = new Series.Bars("", bars.words(), NumberColumn.of(heights));
        return empty(figure.title(), x, y, bars.drawn() ? List.of(words) : List.of());
    }

    /** Two axes with fixed ends alone, without a title. */
    public static Figure of(Axis x, Axis y) {
        return empty("", x, y, List.of());
    }

    private static Figure empty(String title, Axis x, Axis y, List<Series> series) {
        String captions = (x.caption().isBlank() ? "" : x.caption() + "; ") + y.caption();
        String words = Words.of("paint").shown("empty-axes", captions);
        return new Figure(title, x, y, series, List.of(), words, List.of());
    }
}
