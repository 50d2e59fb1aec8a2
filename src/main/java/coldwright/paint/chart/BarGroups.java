package coldwright.paint.chart;

import coldwright.figure.Figure;
import coldwright.figure.Series;

import java.util.List;

/** The words under the bars or box plots of a figure, each once, and its bars. */
public record BarGroups(List<String> words, List<Series.Bars> series) {
    /** The share of a word's slot that its bars fill. */
    public static final double SHARE_OF_SLOT = 0.62;

    public static BarGroups of(Figure figure) {
        List<Series.Bars> bars =
                figure.series().stream()
                        .filter(Series.Bars.class::isInstance)
                        .map(Series.Bars.class::cast)
                        .toList();
        List<String> boxes =
                figure.series().stream()
                        .filter(Series.BoxPlot.class::isInstance)
                        .map(Series::name)
                        .toList();
        if (!boxes.isEmpty()) {
            return new BarGroups(boxes, bars);
        }
        List<List<String>> words = bars.stream().map(Series.Bars::words).distinct().toList();
        return new BarGroups(
                words.size() == 1
                        ? words.get(0)
                        : words.stream().flatMap(List::stream).distinct().toList(),
                bars);
    }

    public boolean drawn() {
        return !words.isEmpty();
    }

    /** The index of the word under a bar of a series. */
    int placeOf(Series.Bars some, int index) {
        return some.words().equals(words) ? index : words.indexOf(some.words().get(index));
    }
}
