package coldwright.batch;

import coldwright.recipe.LineReading;
import coldwright.science.balance.AmountChange;
import coldwright.science.balance.Balanced;
import coldwright.science.balance.Shortfall;
import coldwright.science.mix.Allergen;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.plan.BatchFault;
import coldwright.science.plan.BatchState;
import coldwright.science.plan.Finding;
import coldwright.science.plan.Making;
import coldwright.science.plan.Plan;
import coldwright.science.plan.PlanSentences;
import coldwright.science.standards.NameVerdict;
import coldwright.science.style.StyleQuantity;
import coldwright.words.Phrase;

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
    /** Version of the keys, for programs that read them; {@code docs/batch.schema.json}. */
    public static final int SCHEMA_VERSION = 1;

    private BatchAnalysisTree() {}

    /** The tree of an analysis, keys in the order of the documentation. */
    public static Map<String, Object> of(BatchAnalysis all) {
        Map<String, Object> tree = tree("schema_version", SCHEMA_VERSION);
        tree.put("name", all.batch().name());
        tree.put("method", all.batch().setup().methodWord());
        BatchReport report = all.report();
        for (Fact fact : report.facts()) {
            put(fact.group().isEmpty() ? tree : part(tree, fact.group()), fact);
        }
        tree.put(
                "ingredients",
                all.batch().lines().stream()
                        .filter(RecipeLine::counts)
                        .map(line -> ingredient(line, all.mix()))
                        .toList());
        tree.put("allergens", all.mix().allergens().stream().map(Allergen::words).toList());
        tree.put(
                "allergens_not_known_of",
                all.batch().ownByName().values().stream().map(Ingredient::name).toList());
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
        Basis.Kind kind = fact.basis().kind();
        Map<String, Object> tree =
                tree(
                        "unit", fact.unit(),
                        "kind", kind.words(),
                        "source", fact.basis().words(),
                        "rule_of_thumb", kind.ruleOfThumb());
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
        Map<String, Object> tree =
                tree(
                        "schema_version", SCHEMA_VERSION,
                        "met", found.met(),
                        "mass_g", number(mix.massG()),
                        "amounts", mix.amounts().stream().map(one -> amount(one, mix)).toList(),
                        "shortfalls",
                                found.shortfalls().stream()
                                        .map(BatchAnalysisTree::shortfall)
                                        .toList(),
                        "at_limit", found.atLimit().stream().map(Ingredient::name).toList());
        ReportFacts.composition(mix).forEach(fact -> put(part(tree, fact.group()), fact));
        if (mix.waterPercent() > 0) {
            tree.put("initial_freezing_point_c", number(mix.initialFreezingPointC()));
        }
        return tree;
    }

    private static Map<String, Object> amount(Amount amount, Mix mix) {
        return tree(
                "ingredient", amount.ingredient().name(),
                "grams", number(amount.massG()),
                "percent", number(100 * amount.massG() / mix.massG()));
    }

    private static Map<String, Object> shortfall(Shortfall shortfall) {
        return tree(
                "target", shortfall.target().trait().words(),
                "unit", shortfall.target().trait().unit(),
                "asked", number(shortfall.target().value()),
                "reached", number(shortfall.reached()));
    }

    /** A tree of keys, each followed by its value. */
    private static Map<String, Object> tree(Object... keysAndValues) {
        Map<String, Object> tree = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            tree.put((String) keysAndValues[i], keysAndValues[i + 1]);
        }
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
        return tree(
                "fault", key(finding.fault()),
                "steps", number(finding.steps()),
                "what", finding.what(),
                "why", finding.why(),
                "mend", finding.mend(),
                "lesson", finding.fault().lesson());
    }

    private static Map<String, Object> plan(Plan plan) {
        return tree(
                "character", plan.character().words(),
                "steps", Phrase.english(PlanSentences.steps(plan)),
                "changes", plan.changes().stream().map(BatchAnalysisTree::change).toList(),
                "effects", Phrase.english(PlanSentences.effects(plan)),
                "left", Phrase.english(PlanSentences.left(plan)),
                "left_faults", plan.left().stream().map(one -> key(one.fault().fault())).toList(),
                "makes", makes(plan.after()));
    }

    /** The batch with a plan, as data. */
    private static Map<String, Object> makes(BatchState after) {
        Making making = after.making();
        return tree(
                "style", after.style().words(),
                "method", FreezingSetup.word(making.method()),
                "bath_ice_g", making.iceG() > 0 ? number(making.iceG()) : null,
                "bath_salt_g", making.saltG() > 0 ? number(making.saltG()) : null,
                "overrun_percent", number(making.overrunPercent()),
                "serving_c", number(making.servingC()),
                "initial_freezing_point_c", number(after.curve().initialFreezingPointC()),
                "ice_percent_of_water_at_serving", number(after.of(StyleQuantity.ICE)));
    }

    /** An ingredient with its amount as written and as understood. */
    private static Map<String, Object> ingredient(RecipeLine line, Mix mix) {
        LineReading.Part part = line.reading().orElseThrow().parts().get(0);
        return tree(
                "as_written", (line.amount().text() + " " + line.name()).strip(),
                "ingredient", part.ingredient().name(),
                "grams", number(line.grams()),
                "percent", number(100 * line.grams() / mix.massG()),
                "understood", part.how().english(),
                "source", part.source());
    }

    private static String key(BatchFault fault) {
        return fault.name().toLowerCase(Locale.ROOT);
    }

    private static Map<String, Object> change(AmountChange change) {
        return tree("ingredient", change.ingredient().name(), "grams", number(change.massG()));
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
