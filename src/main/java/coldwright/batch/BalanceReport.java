package coldwright.batch;

import coldwright.science.balance.Balanced;
import coldwright.science.balance.Shortfall;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The result of a balance as a tree and as a page. */
public final class BalanceReport {
    private BalanceReport() {}

    /** The tree that {@code --json} prints; {@code docs/batch-file.md} explains its keys. */
    public static Map<String, Object> tree(Balanced found) {
        Mix mix = found.mix();
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("met", found.met());
        tree.put("mass_g", BatchAnalysisTree.number(mix.massG()));
        List<Map<String, Object>> amounts = new ArrayList<>();
        for (Amount amount : mix.amounts()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("ingredient", amount.ingredient().name());
            one.put("grams", BatchAnalysisTree.number(amount.massG()));
            one.put("percent", BatchAnalysisTree.number(100 * amount.massG() / mix.massG()));
            amounts.add(one);
        }
        tree.put("amounts", amounts);
        tree.put("shortfalls", found.shortfalls().stream().map(BalanceReport::shortfall).toList());
        tree.put("at_limit", found.atLimit().stream().map(Ingredient::name).toList());
        tree.put("composition", BatchAnalysisTree.composition(mix));
        if (mix.waterPercent() > 0) {
            tree.put(
                    "initial_freezing_point_c",
                    BatchAnalysisTree.number(mix.initialFreezingPointC()));
        }
        return tree;
    }

    private static Map<String, Object> shortfall(Shortfall shortfall) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("target", shortfall.target().trait().words());
        tree.put("unit", shortfall.target().trait().unit());
        tree.put("asked", BatchAnalysisTree.number(shortfall.target().value()));
        tree.put("reached", BatchAnalysisTree.number(shortfall.reached()));
        return tree;
    }

    /** Lines of text for people. */
    public static String page(Balanced found) {
        StringBuilder page = new StringBuilder(BatchAnalysisText.of(found.mix()));
        String newLine = System.lineSeparator();
        if (found.met()) {
            page.append(newLine).append("All targets are met.").append(newLine);
            return page.toString();
        }
        page.append(newLine).append("Not all targets can be met:").append(newLine);
        for (Shortfall shortfall : found.shortfalls()) {
            page.append("- ").append(shortfall).append(newLine);
        }
        if (!found.atLimit().isEmpty()) {
            page.append("At the least or most that is allowed: ")
                    .append(
                            found.atLimit().stream()
                                    .map(Ingredient::name)
                                    .collect(Collectors.joining(", ")))
                    .append(newLine);
        }
        return page.toString();
    }
}
