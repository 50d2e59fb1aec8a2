package coldwright.print;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchReport;
import coldwright.science.bath.IceAndSalt;
import coldwright.science.freezer.Cold;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Shelf;

import java.util.ArrayList;
import java.util.List;

/** What to buy, and which tools to have ready. */
final class ShoppingList {
    private ShoppingList() {}

    static List<String> toBuy(BatchAnalysis all) {
        return IngredientHandling.of(all.mix()).amounts().stream()
                .filter(amount -> !amount.ingredient().equals(Shelf.WATER))
                .map(ShoppingList::bought)
                .toList();
    }

    private static String bought(Amount amount) {
        var densityKgPerL = amount.ingredient().densityKgPerL();
        boolean poured = IngredientHandling.isWet(amount.ingredient()) && densityKgPerL.isPresent();
        double weighedG = rounded(amount.massG());
        String name = amount.ingredient().phrase().shown();
        return poured
                ? MakeSheetText.word(
                        "buy.poured",
                        name,
                        weighedG,
                        rounded(amount.massG() / densityKgPerL.getAsDouble()))
                : MakeSheetText.word("buy.weighed", name, weighedG);
    }

    /** Rounds up to what can be bought: nobody buys 597.4 g. */
    private static double rounded(double amount) {
        double step = amount <= 20 ? 1 : amount <= 100 ? 5 : amount <= 1000 ? 10 : 50;
        return step * Math.ceil(amount / step - 1e-9);
    }

    /** Ice and salt for all parts together; empty if a freezer is used. */
    static List<String> iceAndSalt(BatchAnalysis all) {
        if (!(all.plan().freeze().cold() instanceof Cold.Bath cold)) {
            return List.of();
        }
        int parts = all.parts();
        IceAndSalt bath = cold.bath();
        return List.of(
                MakeSheetText.word("buy.ice", rounded(parts * bath.iceG())),
                MakeSheetText.word("buy.salt", rounded(parts * bath.saltG())));
    }

    /** The smallest bath that is enough, for a cook with little ice; empty without a bath. */
    static String leastBath(BatchAnalysis all) {
        BatchReport report = all.report();
        if (report.find("least_ice_g").isEmpty()) {
            return "";
        }
        int parts = all.parts();
        return (parts == 1 ? "" : MakeSheetText.word("buy.shares", parts) + " ")
                + MakeSheetText.word(
                        "buy.least",
                        rounded(parts * report.fact("least_ice_g").number()),
                        rounded(parts * report.fact("least_salt_g").number()));
    }

    static List<String> tools(BatchAnalysis all) {
        IngredientHandling used = IngredientHandling.of(all.mix());
        List<String> tools = new ArrayList<>(List.of("scale"));
        if (used.isHeated()) {
            tools.add("pot");
        }
        if (used.any(IngredientHandling::isWholeFruit)) {
            tools.add("blender");
        }
        switch (all.batch().method()) {
            case BAG -> tools.addAll(List.of("bags", "gloves"));
            case MACHINE -> tools.add("churn");
            case STILL_TUB, SHAKEN_TUB -> {}
        }
        int parts = all.parts();
        tools.add(parts == 1 ? "tub" : "tubs");
        return tools.stream()
                .map(key -> MakeSheetText.word("tool." + key, parts, 2 * parts))
                .toList();
    }
}
