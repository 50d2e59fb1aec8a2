package coldwright.paint.chart;

import coldwright.figure.Figure;
import coldwright.figure.Series;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The bars of a figure, set side by side over common words.
 *
 * @param words what stands under the bars, each once
 * @param series the series
 */
public record BarGroups(List<String> words, List<Series.Bars> series) {
    /** How much of a word's room its bars fill, side by side. */
    public static final double SHARE_OF_SLOT = 0.62;

    public static BarGroups of(Figure figure) {
        List<Series.Bars> bars = new ArrayList<>();
        for (Series one : figure.series()) {
            if (one instanceof Series.Bars some) {
                bars.add(some);
            }
        }
        if (bars.isEmpty()) {
            return new BarGroups(List.of(), bars);
        }
        List<String> first = bars.get(0).words();
        if (bars.stream().allMatch(some -> some.words().equals(first))) {
            return new BarGroups(first, bars);
        }
        Set<String> all = new LinkedHashSet<>();
        bars.forEach(some -> all.addAll(some.words()));
        return new BarGroups(List.copyOf(all), bars);
    }

    public boolean drawn() {
        return !words.isEmpty();
    }

    /** Which word the bar of a series stands over. */
    int placeOf(Series.Bars some, int index) {
        return some.words().equals(words) ? index : words.indexOf(some.words().get(index));
    }
}
