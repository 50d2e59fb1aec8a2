package coldwright.print;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.Recipe.Method;
import coldwright.science.mix.Amount;

import java.util.ArrayList;
import java.util.List;

/** Cautions that apply to making or eating this batch. */
final class MakeCautions {
    private MakeCautions() {}

    static List<String> of(BatchAnalysis all) {
        List<Amount> amounts = MakeSteps.used(all.mix());
        List<String> cautions = new ArrayList<>();
        if (IngredientHandling.any(amounts, IngredientHandling::isEgg)) {
            cautions.add(
                    "**Raw egg** can carry germs that freezing does not kill: heat as your local food-safety rules say, or use pasteurised egg.");
        }
        if (IngredientHandling.any(amounts, IngredientHandling::isMilk)) {
            cautions.add(
                    "**Raw milk and cream** can carry germs too: take pasteurised ones, and keep the mix cold or hot, never lukewarm.");
        }
        if (IngredientHandling.any(amounts, IngredientHandling::isRawMeal)) {
            cautions.add("**Raw flour and oats** are not clean foods: toast or cook them.");
        }
        boolean browned =
                IngredientHandling.namesBrownedSugar(all.batch().name())
                        || IngredientHandling.any(
                                amounts, one -> IngredientHandling.namesBrownedSugar(one.name()));
        if (browned) {
            cautions.add(
                    "**Hot sugar** is far hotter than boiling water and sticks: long sleeves, nobody near; it spits when liquid goes in.");
        } else if (MakeSteps.isHeated(all.mix())) {
            cautions.add("**A hot mix scalds**, and hot sugar more so.");
        }
        if (IngredientHandling.any(amounts, IngredientHandling::isStrong)) {
            cautions.add(
                    "**Alcohol** does not freeze away: not for children, nor for anyone who avoids it; tell every guest. Keep it from flames.");
        }
        Method method = all.batch().method();
        if (method == Method.BAG || method == Method.CHURN) {
            cautions.add(
                    "**Ice with salt** at %s burns skin like frost: gloves or a towel; keep brine out of the food and from children’s hands."
                            .formatted(MakeSheetText.celsius(0, all.coldC())));
        }
        if (IngredientHandling.any(amounts, IngredientHandling::isWholeFruit)) {
            cautions.add("**Blades**: pull the blender’s plug before a hand or spoon goes in.");
        }
        if (method == Method.CHURN) {
            cautions.add("**Moving parts**: keep fingers, hair and sleeves out of the churn.");
        }
        cautions.add("**No glass in the freezer**: the batch swells as it freezes. Leave room.");
        return cautions;
    }
}
