package coldwright.recipe;

import coldwright.recipe.LineReading.Part;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.IngredientKind;
import coldwright.words.Phrase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * The parts of counted fruit and eggs: juice, zest, yolks.
 *
 * @param readings the parts that the line may mean; one if it says which
 * @param why what is to be decided
 */
record FruitParts(List<List<Part>> readings, Phrase why) {
    private static final Pattern JUICE =
            Pattern.compile("(?iu)\\b(?:juiced?|saft|ausgepresst|gepresst|squeezed)\\b");
    private static final Pattern ZEST =
            Pattern.compile(
                    "(?iu)\\b(?:zest(?:ed)?|peel|rind|schale|abrieb|zesten|abgerieben\\p{L}*)\\b");
    private static final Pattern YOLKS = Pattern.compile("(?iu)\\b(?:yolks?|eigelbe?|dotter)\\b");
    private static final Pattern WHITES = Pattern.compile("(?iu)\\b(?:whites?|eiweiße?|eiklar)\\b");
    private static final Pattern SEPARATED = Pattern.compile("(?iu)\\b(?:separated|getrennt)\\b");
    private static final CookingUnit FRUIT =
            new CookingUnit(CookingUnit.Kind.MEASURE, List.of(1.0), "fruit", "");

    /**
     * The parts of a counted ingredient.
     *
     * @param name its name as written
     * @param after the words after its name
     * @param named finds a part by its name
     * @return empty if it has no such parts
     */
    static Optional<FruitParts> of(
            Quantity quantity,
            Ingredient whole,
            String name,
            String after,
            Function<String, Optional<Ingredient>> named) {
        if (whole.name().equals("egg")) {
            List<Part> yolks = parts(quantity, named.apply("egg yolk").orElseThrow());
            boolean separated = SEPARATED.matcher(after).find();
            if (YOLKS.matcher(after).find()) {
                return Optional.of(new FruitParts(List.of(yolks), phrase("why.part")));
            }
            if (WHITES.matcher(after).find()) {
                List<Part> whites = parts(quantity, named.apply("egg white").orElseThrow());
                return Optional.of(new FruitParts(List.of(whites), phrase("why.part")));
            }
            return separated
                    ? Optional.of(
                            new FruitParts(
                                    List.of(parts(quantity, whole), yolks),
                                    phrase("why.separated")))
                    : Optional.empty();
        }
        Optional<Ingredient> juice = part(named, whole, name, "juice");
        Optional<Ingredient> zest = part(named, whole, name, "zest");
        if (whole.kind() != IngredientKind.FRUIT || juice.isEmpty() || zest.isEmpty()) {
            return Optional.empty();
        }
        List<Part> juiced = parts(quantity.in(FRUIT), juice.get());
        List<Part> zested = parts(quantity.in(FRUIT), zest.get());
        List<Part> both = new ArrayList<>(juiced);
        both.addAll(zested);
        boolean isJuice = JUICE.matcher(after).find();
        boolean isZest = ZEST.matcher(after).find();
        List<List<Part>> readings =
                isJuice || isZest
                        ? List.of(isJuice && isZest ? both : isJuice ? juiced : zested)
                        : List.of(juiced, both, zested, parts(quantity, whole));
        return Optional.of(new FruitParts(readings, phrase("why.part")));
    }

    private static Optional<Ingredient> part(
            Function<String, Optional<Ingredient>> named,
            Ingredient fruit,
            String name,
            String part) {
        return named.apply(fruit.name() + " " + part)
                .or(() -> named.apply(name + " " + part))
                .filter(one -> one.measure("fruit").isPresent());
    }

    private static List<Part> parts(Quantity quantity, Ingredient ingredient) {
        return Weighing.of(quantity, ingredient, "").options().stream()
                .limit(1)
                .map(weight -> weight.of(ingredient))
                .toList();
    }

    private static Phrase phrase(String key) {
        return Weighing.phrase(key);
    }
}
