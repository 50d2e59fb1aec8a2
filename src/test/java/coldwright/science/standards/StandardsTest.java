package coldwright.science.standards;

import static coldwright.science.mix.Amount.grams;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import java.util.List;

class StandardsTest {
    private final Mix sorbet =
            Mix.of(
                    grams(600, Shelf.BLOOD_ORANGE_JUICE),
                    grams(150, Shelf.SUCROSE),
                    grams(50, Shelf.WATER));

    private final Mix custard =
            Mix.of(
                    grams(400, Shelf.WHOLE_MILK),
                    grams(350, Shelf.CREAM_35),
                    grams(150, Shelf.SUCROSE),
                    grams(60, Shelf.SKIM_MILK_POWDER),
                    grams(80, Shelf.EGG_YOLK),
                    grams(20, Shelf.OATS),
                    grams(10, Shelf.WHEAT_FLOUR));

    @Test
    void juiceAndSugarMakeSorbetAndWaterIceButNoIceCream() {
        assertEquals(
                List.of("water ice", "Fruchteis", "Sorbet", "Wassereis"),
                ProductNames.allowed(sorbet).stream().map(NameVerdict::name).toList());
        assertEquals(
                "Germany: may not be called Eiscreme (Leitsätze für Speiseeis): milk fat is 0 % and must be at least 10 %; check your local rules",
                verdict(sorbet, "Eiscreme").sentence());
        assertEquals(
                "United States: may be called water ice (21 CFR 135.160); check your local rules",
                verdict(sorbet, "water ice").sentence());
    }

    @Test
    void yolkTurnsIceCreamIntoFrozenCustard() {
        NameVerdict iceCream =
                ProductNames.of(custard).stream()
                        .filter(v -> v.name().equals("ice cream"))
                        .findFirst()
                        .orElseThrow();
        assertFalse(iceCream.allowed());
        assertEquals(
                List.of("egg yolk solids is 3.57 % and must be below 1.4 %"),
                iceCream.shortfalls());
        assertTrue(verdict(custard, "frozen custard").allowed());
    }

    @Test
    void tooMuchAirIsTooLight() {
        assertTrue(verdict(custard, "frozen custard").allowed());
        NameVerdict airy =
                ProductNames.of(custard, 120).stream()
                        .filter(v -> v.name().equals("frozen custard"))
                        .findFirst()
                        .orElseThrow();
        assertEquals(
                List.of("weight to the gallon is 4.19 lb and must be at least 4.5 lb"),
                airy.shortfalls());
    }

    @Test
    void addedFatIsNoMilkFat() {
        Mix mix = custard.with(grams(50, Shelf.COCONUT_OIL));
        assertEquals(
                List.of("it must have no added fat but milk fat"),
                verdict(mix, "Eiscreme").shortfalls());
    }

    @Test
    void citrusNeedsLessFruitThanOthers() {
        Mix lemon =
                Mix.of(
                        grams(16, Shelf.LEMON_JUICE),
                        grams(25, Shelf.SUCROSE),
                        grams(59, Shelf.WATER));
        Mix mango =
                Mix.of(grams(16, Shelf.MANGO), grams(25, Shelf.SUCROSE), grams(59, Shelf.WATER));
        assertTrue(verdict(lemon, "Sorbet").allowed());
        assertEquals(
                List.of("fruit is 16 % and must be at least 25 %"),
                verdict(mango, "Sorbet").shortfalls());
    }

    @Test
    void aHoldIsNeverShorterThanTheListedTimeOfTheLowerTemperature() {
        Pasteurisation.Hold hold = Pasteurisation.MIX.holdAt((165 - 32) / 1.8);
        assertEquals(1800, hold.seconds());
        assertEquals((155 - 32) / 1.8, hold.listedTemperatureC());
        assertEquals(
                "hold every part at 73.9 °C or above for 30 minutes, the time that 21 CFR 135.3 lists for 68.4 °C (155 °F); check your local rules",
                hold.sentence());
        assertEquals(1800, Pasteurisation.EGGNOG.holdAt(79.4).seconds());
        assertEquals(25, Pasteurisation.EGGNOG.holdAt(82.2).seconds());
    }

    @ParameterizedTest
    @EnumSource(Pasteurisation.class)
    void aHoldIsAlwaysAListedPairThatWasReached(Pasteurisation table) {
        double listed = Double.NEGATIVE_INFINITY;
        double seconds = Double.POSITIVE_INFINITY;
        for (double c = (155 - 32) / 1.8; c <= 120; c += 0.05) {
            Pasteurisation.Hold hold = table.holdAt(c);
            assertTrue(hold.listedTemperatureC() <= c + 1e-9, table + " at " + c);
            assertEquals(hold.seconds(), table.holdAt(hold.listedTemperatureC()).seconds());
            assertTrue(hold.listedTemperatureC() >= listed && hold.seconds() <= seconds);
            assertTrue(hold.seconds() == seconds || hold.listedTemperatureC() > listed);
            listed = hold.listedTemperatureC();
            seconds = hold.seconds();
        }
    }

    @Test
    void aboveTheLastPairItsTimeStaysAndBelowTheFirstThereIsNone() {
        assertEquals(25, Pasteurisation.MIX.holdAt(85).seconds());
        assertEquals(
                "hold every part at 85 °C or above for 25 seconds, the time that 21 CFR 135.3 lists for 79.5 °C (175 °F); check your local rules",
                Pasteurisation.MIX.holdAt(85).sentence());
        assertEquals(
                "temperatureC is 68.3; 21 CFR 135.3 lists no time below 68.4 °C (155 °F). Heat it to that or more, and follow your local rules.",
                assertThrows(IllegalArgumentException.class, () -> Pasteurisation.MIX.holdAt(68.3))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> Pasteurisation.MILK.holdAt(62));
    }

    @Test
    void coolingNamesItsTimesAndItsRule() {
        assertEquals(
                "cool it from 57 °C to 21 °C within 2 hours, and to 5 °C or below within 6 hours in all (FDA Food Code 2022, 3-501.14); check your local rules",
                Cooling.sentence());
    }

    @Test
    void allergensByBothLists() {
        assertEquals(List.of("milk", "egg", "wheat"), Declarations.unitedStatesAllergens(custard));
        assertEquals(
                List.of("milk", "eggs", "cereals containing gluten"),
                Declarations.europeanUnionAllergens(custard));
        assertEquals(
                "Known from its ingredients: milk, egg, wheat, gluten (barley, rye or oats). Check every label, your own ingredients and traces; check your local rules",
                Declarations.allergenSentence(custard));
    }

    @Test
    void whereNoAllergenIsKnownTheReaderMustCheck() {
        assertEquals(
                "Check every label and think of traces: Coldwright lists only what the shelf’s ingredients usually bring, and it has nothing listed for these; check your local rules",
                Declarations.allergenSentence(sorbet));
        Mix own =
                Mix.of(
                        grams(300, Shelf.OATS),
                        grams(50, Ingredient.own("nut paste", Shelf.WATER.composition())),
                        grams(50, Ingredient.own("syrup", Shelf.WATER.composition())));
        assertEquals(
                "Known from its ingredients: gluten (barley, rye or oats). Not known: what is in nut paste, syrup. Check every label, your own ingredients and traces; check your local rules",
                Declarations.allergenSentence(own));
    }

    @Test
    void noIngredientOfTheShelfIsDeclaredFreeOfAllergens() {
        for (Ingredient one : Shelf.all()) {
            String sentence = Declarations.allergenSentence(Mix.of(grams(100, one)));
            assertTrue(sentence.contains("Check every label"), sentence);
            assertFalse(
                    sentence.matches("(?i).*\\b(contains|no|none|free|without)\\b.*"), sentence);
        }
    }

    @Test
    void alcoholIsNamedWithACaution() {
        assertEquals(
                "no alcohol known from its ingredients; check the labels of flavourings and your own ingredients",
                Declarations.alcoholSentence(sorbet));
        Mix spiked = sorbet.with(grams(50, Shelf.RUM_40));
        assertEquals(
                "1.96 % alcohol by mass, about 2.73 % by volume of the unfrozen mix; freezing takes none of it away. Keep it from children and anyone who avoids alcohol, and warn guests; check your local rules",
                Declarations.alcoholSentence(spiked));
    }

    private static NameVerdict verdict(Mix mix, String name) {
        return ProductNames.of(mix).stream()
                .filter(v -> v.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
