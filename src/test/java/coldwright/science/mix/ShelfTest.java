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
    void holdsAboutAHundredAndTwentyOrMore() {
        assertTrue(Shelf.all().size() >= 120, () -> Shelf.all().size() + " rows");
        assertEquals(
                Shelf.all().size(),
                new HashSet<>(Shelf.all().stream().map(Ingredient::name).toList()).size());
    }

    @Test
    void constantsAndRowsAgree() throws IllegalAccessException {
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
        assertEquals(Set.copyOf(Shelf.all()), named);
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
                ingredient.name().equals("vanilla extract") ? 0.12 : 0.06);
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
                "\"blod orange juce\" is not on the shelf; nearest is blood orange juice, orange juice. Fix the name or state it as an own ingredient.",
                e.getMessage());
    }

    @Test
    void aNameThatIsLikeNoneOnTheShelfGetsNoSuggestion() {
        assertEquals(
                "\"mascarpone\" is not on the shelf: state it as an own ingredient",
                assertThrows(IllegalArgumentException.class, () -> Shelf.find("mascarpone"))
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
    void measuresTurnIntoGramsByDensity() {
        assertEquals(248, KitchenMeasure.CUPS.of(1, Shelf.ORANGE_JUICE).massG(), 0.5);
        assertEquals(21, KitchenMeasure.TABLESPOONS.of(1, Shelf.HONEY).massG(), 0.5);
        IllegalArgumentException e =
                assertThrows(
                        IllegalArgumentException.class,
                        () -> KitchenMeasure.CUPS.of(2, Shelf.RASPBERRIES));
        assertEquals(
                "2 cups of raspberries can't be turned into grams, because it packs differently each time. Weigh it.",
                e.getMessage());
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
