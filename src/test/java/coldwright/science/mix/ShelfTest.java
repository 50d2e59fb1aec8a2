package coldwright.science.mix;

import static coldwright.science.mix.Amount.grams;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

class ShelfTest {
    static Stream<Ingredient> all() {
        return Shelf.all().stream();
    }

    static Stream<Ingredient> pourable() {
        return all().filter(i -> i.densityKgPerL().isPresent())
                .filter(i -> i.composition().percent(Component.WATER) > 40)
                .filter(i -> !Set.of("banana", "avocado").contains(i.name()));
    }

    @Test
    void hasSixHundredRowsOfFifteenKinds() {
        assertTrue(Shelf.all().size() >= 600, () -> Shelf.all().size() + " rows");
        assertEquals(15, Shelf.all().stream().map(Ingredient::kind).distinct().count());
        assertEquals(
                Shelf.all().size(),
                new HashSet<>(Shelf.all().stream().map(Ingredient::name).toList()).size());
    }

    @Test
    void constantsAreRows() throws IllegalAccessException {
        Set<Ingredient> named = new HashSet<>();
        for (Field field : Shelf.class.getFields()) {
            boolean ingredientOfARow =
                    Modifier.isStatic(field.getModifiers())
                            && field.getType() == Ingredient.class
                            && !field.getName().equals("DEXTROSE"); // another name of GLUCOSE
            if (ingredientOfARow) {
                Ingredient ingredient = (Ingredient) field.get(null);
                assertEquals(
                        ingredient
                                .name()
                                .toUpperCase(java.util.Locale.ROOT)
                                .replace("'", "")
                                .replace(" %", "")
                                .replaceAll("[- .]+", "_"),
                        field.getName());
                named.add(ingredient);
            }
        }
        assertTrue(named.size() >= 186, () -> named.size() + " constants");
        assertTrue(Set.copyOf(Shelf.all()).containsAll(named));
    }

    @ParameterizedTest
    @MethodSource("all")
    void addsUpToAHundred(Ingredient ingredient) {
        assertEquals(100, ingredient.composition().sumPercent(), 0.5);
    }

    @ParameterizedTest
    @MethodSource("all")
    void saysWhereItComesFrom(Ingredient ingredient) {
        assertFalse(ingredient.source().isBlank());
        boolean usda = ingredient.source().startsWith("USDA");
        assertEquals(usda, ingredient.source().matches("USDA SR24 \\d{5}"));
    }

    @ParameterizedTest
    @MethodSource("all")
    void isFoundByItsNameAndAliases(Ingredient ingredient) {
        assertSame(ingredient, Shelf.find(ingredient.name()));
        for (String alias : ingredient.aliases()) {
            assertSame(ingredient, Shelf.find(alias.toUpperCase(java.util.Locale.ROOT)));
        }
    }

    /** Cups of fluids and the mix formula agree; froth, pulp and thick creams pack a little air. */
    @ParameterizedTest
    @MethodSource("pourable")
    void measuredDensityIsNearTheFormula(Ingredient ingredient) {
        assertEquals(
                ingredient.densityKgPerL().getAsDouble(),
                MixDensity.kgPerL(ingredient.composition()),
                ingredient.name().endsWith("vanilla extract") ? 0.12 : 0.06);
    }

    @ParameterizedTest
    @MethodSource("all")
    void whatIsOfMilkGoesWithItsAllergen(Ingredient ingredient) {
        Composition c = ingredient.composition();
        boolean milk =
                c.percent(Component.MILK_FAT)
                                + c.percent(Component.MILK_PROTEIN)
                                + c.percent(Component.LACTOSE)
                        > 0;
        assertEquals(milk, ingredient.allergens().contains(Allergen.MILK));
    }

    @ParameterizedTest
    @MethodSource("all")
    void freezes(Ingredient ingredient) {
        double inWaterC =
                Mix.of(grams(30, ingredient), grams(70, Shelf.WATER)).initialFreezingPointC();
        assertTrue(inWaterC <= 0 && inWaterC > -60, () -> inWaterC + " °C");
        if (ingredient.composition().percent(Component.WATER) > 10) {
            double aloneC = freezingPointC(ingredient);
            assertTrue(aloneC <= 0 && Double.isFinite(aloneC), () -> aloneC + " °C");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "EGG, '(?<!plant )egg|yolk|meringue|advocaat|lemon curd|ladyfinger|sponge'",
        "TREE_NUTS, 'almond|hazelnut|walnut|pecan(?!.*pie)|pistachio|cashew|macadamia|brazil|pine nuts|amaretto|amaretti|marzipan|gianduja|praline|nut brittle|nut mix'",
        "PEANUTS, peanut",
        "SESAME, 'sesame|tahini|halva'",
        "SOY, '\\bsoy|tofu|miso'",
        "WHEAT, 'wheat(?!germ)|semolina|biscuit(?!s of)|shortbread|brownie|ladyfinger|sponge|wafer|cone|cookie|wholemeal'",
        "GLUTEN_CEREALS, '\\boat|barley|rye |malt syrup|malted|beer|stout'",
        "SULPHITES, '\\bwine|sherry|vermouth|marsala|cider|balsamic|dried apricots|sultanas|candied peel'",
        "MILK, 'milk(?! salts)(?<!coconut milk)(?<!oat milk)|\\bcream\\b(?<!coconut cream|oat cream|soy cream|plant whipping cream)(?! (of|stiffener))|butter(?!scotch)(?<!cocoa butter|almond butter|peanut butter|cashew butter|plum butter|apple butter)|yogurt(?<!soy yogurt|coconut yogurt)|quark|whey|ricotta|mascarpone|skyr|kefir|caseinate|toffee|fudge'"
    })
    void namesTheAllergenOfItsName(Allergen allergen, String names) {
        Pattern named = Pattern.compile(names);
        Set<String> exempt =
                Set.of(
                        "buckwheat",
                        "buckwheat flour",
                        "neufchatel",
                        "coconut milk powder",
                        "canned coconut milk",
                        "peanut brittle",
                        "root beer",
                        "wheat beer",
                        "alcohol-free wine",
                        "marshmallow cream");
        int found = 0;
        for (Ingredient one : Shelf.all()) {
            if (named.matcher(one.name()).find() && !exempt.contains(one.name())) {
                assertTrue(one.allergens().contains(allergen), one::name);
                found++;
            }
        }
        assertTrue(found >= 3, found + " rows of " + allergen);
    }

    @ParameterizedTest
    @MethodSource("all")
    void dietGoesWithTheAllergens(Ingredient ingredient) {
        boolean milkOrEgg =
                ingredient.allergens().contains(Allergen.MILK)
                        || ingredient.allergens().contains(Allergen.EGG);
        assertFalse(milkOrEgg && ingredient.diet() == Diet.VEGAN);
        assertTrue(
                milkOrEgg
                        || ingredient.diet() != Diet.VEGETARIAN
                        || ingredient.equals(Shelf.HONEY));
    }

    @ParameterizedTest
    @MethodSource("all")
    void measuresArePositiveAndHaveASource(Ingredient ingredient) {
        assertEquals(
                ingredient.measures().size(),
                ingredient.measures().stream().map(HouseholdMeasure::unit).distinct().count());
        for (HouseholdMeasure measure : ingredient.measures()) {
            assertTrue(measure.amount() > 0 && measure.amount() < 5000, measure::toString);
            boolean named = measure.source().matches(".*(memory|no source|label|row|USDA|as ).*");
            assertTrue(named, measure::toString);
        }
    }

    @Test
    void knowsEggsAndLemonsByThePiece() {
        assertEquals(50, Shelf.EGG.measure("piece").orElseThrow().amount());
        assertEquals("USDA SR24 01123", Shelf.EGG.measure("piece").orElseThrow().source());
        assertEquals(48, Shelf.LEMON_JUICE.measure("fruit").orElseThrow().amount());
        assertTrue(Shelf.find("coconut cream").measure("can").orElseThrow().volume());
        assertTrue(Shelf.WATER.measure("piece").isEmpty());
    }

    @ParameterizedTest
    @CsvSource({
        "Zucker, granulated sugar",
        "Sahne 30 %, cream 30 %",
        "Schlagsahne, cream 30 %",
        "Magermilchpulver, skim milk powder",
        "Eigelb, egg yolk",
        "Haselnüsse, roasted hazelnuts",
        "Haselnuesse, roasted hazelnuts",
        "Süßmolkepulver, sweet whey powder",
        "Suessmolkepulver, sweet whey powder",
        "crème fraîche, creme fraiche",
        "Crème Fraîche 40 %, creme fraiche 40 %",
        "caster sugar, sucrose",
        "castor sugar, sucrose",
        "confectioners' sugar, icing sugar",
        "heavy whipping cream, heavy cream",
        "Griechischer Joghurt, greek yogurt",
        "Erythrit, erythritol",
        "Traubenzucker, glucose",
        "Johannisbrotkernmehl, locust bean gum",
        "Blattgelatine, gelatine",
        "Butterkekse, butter biscuits"
    })
    void speaksBritishAmericanAndGerman(String written, String name) {
        assertEquals(name, Shelf.find(written).name());
    }

    @ParameterizedTest
    @CsvSource({
        "Blood-orange juice, blood orange juice",
        "  WHOLE   milk , whole milk",
        "Almond, almonds",
        "strawberry purée, strawberries",
        "40 % rum, rum 40 %",
        "rum 40%, rum 40 %",
        "35% cream, cream 35 %",
        "milk 3.50 %, milk 3.5 %",
        "dextrose, glucose",
        "sugar, granulated sugar",
        "cherries, sweet cherries",
        "Goats milk, goat's milk"
    })
    void findsWhatACookWrites(String written, String name) {
        assertEquals(name, Shelf.find(written).name());
    }

    @Test
    void namesTheNearestWhenUnknown() {
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> Shelf.find("blod orange juce"));
        assertEquals(
                "\"blod orange juce\" is not on the shelf; nearest is blood orange juice, orange zest, orange juice. Fix the name or state it as an own ingredient.",
                e.getMessage());
    }

    @Test
    void aNameThatIsLikeNoneOnTheShelfGetsNoSuggestion() {
        assertEquals(
                "\"seitan chunks\" is not on the shelf: state it as an own ingredient",
                assertThrows(IllegalArgumentException.class, () -> Shelf.find("seitan chunks"))
                        .getMessage());
    }

    @Test
    void saysSoWhenNothingIsNear() {
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> Shelf.find("xyzzyqwv"));
        assertEquals(
                "\"xyzzyqwv\" is not on the shelf: state it as an own ingredient", e.getMessage());
    }

    @Test
    void freezingPointsOfWatersJuicesAndSyrupsAreInOrder() {
        List<Ingredient> warmToCold =
                List.of(
                        Shelf.WATER,
                        Shelf.COFFEE,
                        Shelf.WHOLE_MILK,
                        Shelf.LEMON_JUICE,
                        Shelf.BLOOD_ORANGE_JUICE,
                        Shelf.GRAPE_JUICE,
                        Shelf.MAPLE_SYRUP,
                        Shelf.HONEY);
        for (int i = 1; i < warmToCold.size(); i++) {
            double warmer = freezingPointC(warmToCold.get(i - 1));
            double colder = freezingPointC(warmToCold.get(i));
            assertTrue(colder < warmer, warmToCold.get(i)::name);
        }
    }

    private static double freezingPointC(Ingredient ingredient) {
        return Mix.of(grams(100, ingredient)).initialFreezingPointC();
    }
}
