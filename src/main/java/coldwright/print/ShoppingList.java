package coldwright.print;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.Recipe.Method;
import coldwright.science.bath.IceAndSalt;
import coldwright.science.freezer.Cold;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Shelf;
import coldwright.text.DisplayText;

import java.util.ArrayList;
import java.util.List;

/** What to buy, and which tools to have ready. */
final class ShoppingList {
    /** Steps that amounts are rounded up to, because nobody buys 597.4 g. */
    private static final double[] STEPS_G = {1, 5, 10, 50};

    private ShoppingList() {}

    /** The shopping list. */
    static List<String> toBuy(BatchAnalysis all) {
        List<String> list = new ArrayList<>();
        for (Amount amount : MakeSteps.used(all.mix())) {
            if (amount.ingredient().equals(Shelf.WATER)) {
                continue;
            }
            boolean poured =
                    IngredientHandling.isWet(amount.ingredient())
                            && amount.ingredient().densityKgPerL().isPresent();
            String volume =
                    poured
                            ? " (%s mL)"
                                    .formatted(
                                            rounded(
                                                    amount.massG()
                                                            / amount.ingredient()
                                                                    .densityKgPerL()
                                                                    .getAsDouble()))
                            : "";
            list.add(
                    "%s, %s g%s"
                            .formatted(
                                    amount.ingredient().name(), rounded(amount.massG()), volume));
        }
        return list;
    }

    private static String rounded(double amount) {
        double step =
                amount <= 20
                        ? STEPS_G[0]
                        : amount <= 100 ? STEPS_G[1] : amount <= 1000 ? STEPS_G[2] : STEPS_G[3];
        return DisplayText.decimals(0, step * Math.ceil(amount / step - 1e-9));
    }

    /** Ice and salt for all parts together; empty if a freezer is used. */
    static List<String> iceAndSalt(BatchAnalysis all) {
        if (!(all.plan().freeze().cold() instanceof Cold.Bath cold)) {
            return List.of();
        }
        int parts = all.parts();
        IceAndSalt bath = cold.bath();
        List<String> list = new ArrayList<>();
        list.add("ice, %s g".formatted(rounded(parts * bath.iceG())));
        list.add("table or rock salt, %s g".formatted(rounded(parts * bath.saltG())));
        return list;
    }

    /** The smallest bath that is enough, for a cook with little ice; empty without a bath. */
    static String leastBath(BatchAnalysis all) {
        if (!(all.plan().freeze().cold() instanceof Cold.Bath)) {
            return "";
        }
        int parts = all.parts();
        IceAndSalt least = all.plan().leastBath();
        return (parts == 1 ? "" : "Each of %d parts takes an equal share. ".formatted(parts))
                + "The least that does: ice %s g, salt %s g."
                        .formatted(rounded(parts * least.iceG()), rounded(parts * least.saltG()));
    }

    /** The tools to have ready. */
    static List<String> tools(BatchAnalysis all) {
        List<String> list = new ArrayList<>();
        list.add("scale, thermometer, whisk, bowl");
        if (MakeSteps.isHeated(all.mix())) {
            list.add("pot, iced water to cool it");
        }
        if (IngredientHandling.any(MakeSteps.used(all.mix()), IngredientHandling::isWholeFruit)) {
            list.add("blender");
        }
        Method method = all.batch().method();
        int parts = all.parts();
        if (method == Method.BAG) {
            list.add("%d strong bags that close, bowl for the ice".formatted(2 * parts));
            list.add("gloves, towel");
        } else if (method == Method.CHURN) {
            list.add("churn with can and bucket, gloves, towel");
        }
        list.add(
                parts == 1
                        ? "plastic tub with lid, space in the freezer"
                        : "%d plastic tubs with lids, space in the freezer".formatted(parts));
        return list;
    }
}
