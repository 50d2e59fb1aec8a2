package coldwright.published;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/** Comparisons of one quantity with one table, as one line of the report. */
record Group(List<Comparison> comparisons) {
    Group {
        comparisons = List.copyOf(comparisons);
    }

    /** Sorted by table and quantity. */
    static List<Group> of(List<Comparison> all) {
        Map<String, List<Comparison>> groups = new TreeMap<>();
        for (Comparison c : all) {
            String key = String.join("\t", c.table(), c.quantity(), c.unit(), c.measuredUnit());
            groups.computeIfAbsent(key, k -> new ArrayList<>()).add(c);
        }
        return groups.values().stream().map(Group::new).toList();
    }

    /** The one with the largest measure; what is no number counts as largest. */
    static Comparison worst(List<Comparison> among, ToDoubleFunction<Comparison> measure) {
        Comparison worst = among.get(0);
        for (Comparison c : among) {
            double here = measure.applyAsDouble(c);
            if (here > measure.applyAsDouble(worst) || Double.isNaN(here)) {
                worst = c;
            }
        }
        return worst;
    }

    String line() {
        Comparison any = comparisons.get(0);
        List<Comparison> checks = comparisons.stream().filter(c -> !c.fitted()).toList();
        List<Comparison> shown = checks.isEmpty() ? comparisons : checks;
        Comparison worst = worst(shown, Comparison::measured);
        String unit = any.unit().isEmpty() ? "" : " " + any.unit();
        String error = Figures.short2(worst.measured()) + " " + worst.measuredUnit();
        boolean deviates = shown.stream().anyMatch(c -> KnownDeviation.of(c).isPresent());
        return "| `%s` | %s | %d | %d | %s | %s | %s | %s | %s: %s |\n"
                .formatted(
                        any.table(),
                        any.quantity(),
                        checks.size(),
                        comparisons.size() - checks.size(),
                        Figures.plain(least(shown)) + unit,
                        Figures.plain(most(shown)) + unit,
                        (checks.isEmpty() ? "fitted" : error.strip())
                                + (deviates ? " **deviates**" : ""),
                        checks.isEmpty() ? "–" : worst.where(),
                        (Figures.short3(worst.tolerance().size()) + " " + worst.measuredUnit())
                                .strip(),
                        worst.tolerance().reason());
    }

    private static double least(List<Comparison> some) {
        return some.stream().mapToDouble(Comparison::least).min().orElseThrow();
    }

    private static double most(List<Comparison> some) {
        return some.stream().mapToDouble(Comparison::most).max().orElseThrow();
    }
}
