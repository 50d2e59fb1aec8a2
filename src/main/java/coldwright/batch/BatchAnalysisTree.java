package coldwright.batch;

import coldwright.science.diagnosis.Finding;
import coldwright.science.mix.Mix;
import coldwright.science.standards.NameVerdict;
import coldwright.words.Phrase;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * An analysis as a tree of maps, lists, numbers and texts: the output of {@code --json}. The key of
 * a number ends in its unit. The keys are stable; {@code docs/batch-file.md} explains each. A value
 * that is never reached is null.
 */
public final class BatchAnalysisTree {
    private BatchAnalysisTree() {}

    /** The tree of an analysis, keys in the order of the documentation. */
    public static Map<String, Object> of(BatchAnalysis all) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("name", all.batch().name());
        tree.put("method", all.batch().method().name().toLowerCase(Locale.ROOT));
        for (Fact fact : BatchReport.of(all).facts()) {
            put(fact.group().isEmpty() ? tree : part(tree, fact.group()), fact);
        }
        tree.put("findings", all.findings().stream().map(BatchAnalysisTree::finding).toList());
        tree.put("names", all.names().stream().map(NameVerdict::sentence).toList());
        tree.put("declarations", Phrase.english(all.declarations()));
        tree.put("notes", Phrase.english(all.notes()));
        return tree;
    }

    /** The composition of a mix in the tree, % by mass. */
    public static Map<String, Object> composition(Mix mix) {
        Map<String, Object> shares = new LinkedHashMap<>();
        BatchReport.of(mix).facts().forEach(fact -> put(shares, fact));
        return shares;
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> part(Map<String, Object> tree, String group) {
        return (Map<String, Object>) tree.computeIfAbsent(group, key -> new LinkedHashMap<>());
    }

    private static void put(Map<String, Object> tree, Fact fact) {
        tree.put(fact.key(), plain(fact.value()));
        fact.band()
                .ifPresent(
                        band -> {
                            tree.put(band.lowKey(), number(band.low()));
                            tree.put(band.highKey(), number(band.high()));
                        });
    }

    private static Object plain(Object value) {
        if (value instanceof Double number) {
            return number(number);
        }
        if (value instanceof Phrase phrase) {
            return phrase.english();
        }
        if (value instanceof List<?> list) {
            return list.stream().map(BatchAnalysisTree::plain).toList();
        }
        if (value instanceof Map<?, ?> map) {
            Map<Object, Object> plain = new LinkedHashMap<>();
            map.forEach((key, one) -> plain.put(key, plain(one)));
            return plain;
        }
        return value;
    }

    private static Map<String, Object> finding(Finding finding) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("what", finding.what());
        tree.put("why", finding.why());
        tree.put("mend", finding.mend());
        return tree;
    }

    /** Rounds to four decimals, more than any model here gives; null if not finite. */
    static Object number(double value) {
        if (!Double.isFinite(value)) {
            return null;
        }
        double rounded = Math.round(value * 1e4) / 1e4;
        return rounded == 0 ? 0.0 : rounded;
    }
}
