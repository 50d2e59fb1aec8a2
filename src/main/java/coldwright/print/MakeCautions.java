package coldwright.print;

import coldwright.batch.BatchAnalysis;
import coldwright.science.crystal.Method;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Cautions that apply to making or eating this batch. */
public final class MakeCautions {
    private MakeCautions() {}

    /** Sentences in the language shown; {@code **} marks what is bold. */
    public static List<String> of(BatchAnalysis all) {
        IngredientHandling used = IngredientHandling.of(all.mix());
        boolean browned =
                IngredientHandling.namesBrownedSugar(all.batch().name())
                        || used.any(one -> IngredientHandling.namesBrownedSugar(one.name()));
        Map<String, Boolean> applies = new LinkedHashMap<>();
        applies.put("egg", used.any(IngredientHandling::isEgg));
        applies.put("milk", used.any(IngredientHandling::isMilk));
        applies.put("meal", used.any(IngredientHandling::isRawMeal));
        applies.put("browned", browned);
        applies.put("hot", !browned && used.isHeated());
        applies.put("alcohol", all.mix().alcoholPercent() > 0);
        applies.put("brine", all.batch().setup().inBath());
        applies.put("blades", used.any(IngredientHandling::isWholeFruit));
        applies.put("churn", all.batch().method() == Method.MACHINE);
        applies.put("glass", true);
        String coldC = MakeSheetText.celsius(all.report().fact("cold_at_start_c").number());
        return applies.entrySet().stream()
                .filter(Map.Entry::getValue)
                .map(one -> MakeSheetText.word("caution." + one.getKey(), coldC))
                .toList();
    }
}
