package coldwright.paint.chart;

import coldwright.figure.Figure;
import coldwright.figure.Series;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The bars of a figure, grouped by the words under them, each once. */
public record BarGroups(List<String> words, List<Series.Bars> series) {
    /** The share of a word's slot that its bars fill. */
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

    /** The index of the word under a bar of a series. */
    int placeOf(Series.Bars some, int index) {
        return some.words().equals(words) ? index : words.indexOf(some.words().get(index));
    }
}
