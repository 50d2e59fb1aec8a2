package coldwright.batch;

import coldwright.science.balance.AmountChange;
import coldwright.science.balance.Balanced;
import coldwright.science.balance.Shortfall;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.plan.Finding;
import coldwright.science.plan.Plan;
import coldwright.science.plan.PlanSentences;
import coldwright.science.standards.NameVerdict;
import coldwright.words.Phrase;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * An analysis or a balance as a tree of maps, lists, numbers and texts: the output of {@code
 * --json}. The key of a number ends in its unit. The keys are stable; {@code docs/batch-file.md}
 * explains each. A value that is never reached is null.
 */
public final class BatchAnalysisTree {
    private BatchAnalysisTree() {}

    /** The tree of an analysis, keys in the order of the documentation. */
    public static Map<String, Object> of(BatchAnalysis all) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("name", all.batch().name());
        tree.put("method", all.batch().method().name().toLowerCase(Locale.ROOT));
        BatchReport report = all.report();
        for (Fact fact : report.facts()) {
            put(fact.group().isEmpty() ? tree : part(tree, fact.group()), fact);
        }
        tree.put("style", all.state().style().words());
        tree.put("diet", all.batch().intent().diet().text());
        tree.put("findings", report.findings().stream().map(BatchAnalysisTree::finding).toList());
        tree.put("plans", all.plans().stream().map(BatchAnalysisTree::plan).toList());
        tree.put("names", report.names().stream().map(NameVerdict::sentence).toList());
        tree.put("declarations", Phrase.english(report.declarations()));
        tree.put("notes", Phrase.english(report.notes()));
        Map<String, Object> sources = new LinkedHashMap<>();
        report.facts().forEach(fact -> sources.put(fact.key(), source(fact)));
        tree.put("sources", sources);
        return tree;
    }

    private static Map<String, Object> source(Fact fact) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("unit", fact.unit());
        tree.put("kind", fact.basis().kind().words());
        tree.put("source", fact.basis().words());
        tree.put("rule_of_thumb", fact.basis().kind().ruleOfThumb());
        fact.validity()
                .ifPresent(
                        range -> {
                            tree.put("valid_from", number(range.least()));
                            tree.put("valid_to", number(range.most()));
                            tree.put("valid_unit", range.unit());
                        });
        return tree;
    }

    /** The tree of a balance. */
    public static Map<String, Object> of(Balanced found) {
        Mix mix = found.mix();
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("met", found.met());
        tree.put("mass_g", number(mix.massG()));
        List<Map<String, Object>> amounts = new ArrayList<>();
        for (Amount amount : mix.amounts()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("ingredient", amount.ingredient().name());
            one.put("grams", number(amount.massG()));
            one.put("percent", number(100 * amount.massG() / mix.massG()));
            amounts.add(one);
        }
        tree.put("amounts", amounts);
        tree.put(
                "shortfalls",
                found.shortfalls().stream().map(BatchAnalysisTree::shortfall).toList());
        tree.put("at_limit", found.atLimit().stream().map(Ingredient::name).toList());
        ReportFacts.composition(mix).forEach(fact -> put(part(tree, fact.group()), fact));
        if (mix.waterPercent() > 0) {
            tree.put("initial_freezing_point_c", number(mix.initialFreezingPointC()));
        }
        return tree;
    }

    private static Map<String, Object> shortfall(Shortfall shortfall) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("target", shortfall.target().trait().words());
        tree.put("unit", shortfall.target().trait().unit());
        tree.put("asked", number(shortfall.target().value()));
        tree.put("reached", number(shortfall.reached()));
        return tree;
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
        tree.put("lesson", finding.fault().lesson());
        return tree;
    }

    private static Map<String, Object> plan(Plan plan) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("character", plan.character().words());
        tree.put("steps", Phrase.english(PlanSentences.steps(plan)));
        List<Map<String, Object>> changes = new ArrayList<>();
        for (AmountChange change : plan.changes()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("ingredient", change.ingredient().name());
            one.put("grams", number(change.massG()));
            changes.add(one);
        }
        tree.put("changes", changes);
        tree.put("effects", Phrase.english(PlanSentences.effects(plan)));
        tree.put("left", Phrase.english(PlanSentences.left(plan)));
        return tree;
    }

    /** Rounds to four decimals, more than any model here gives; null if not finite. */
    private static Object number(double value) {
        if (!Double.isFinite(value)) {
            return null;
        }
        double rounded = Math.round(value * 1e4) / 1e4;
        return rounded == 0 ? 0.0 : rounded;
    }
}
