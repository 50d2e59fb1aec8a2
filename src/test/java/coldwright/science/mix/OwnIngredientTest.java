package coldwright.science.mix;

import static coldwright.science.mix.MixTest.assertMessage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import java.util.Set;

class OwnIngredientTest {
    @Test
    void readsNamesAndNumbersEitherWayRound() {
        Ingredient a = OwnIngredient.of("house syrup", "water 40, sucrose 60");
        Ingredient b = OwnIngredient.of("house syrup", "60 % sugar; 40% Water");
        assertEquals(a.composition(), b.composition());
        assertEquals(60, a.composition().percent(Component.SUCROSE));
        assertEquals("", a.inferred());
    }

    @Test
    void fillsTheRestWithWaterOrSolids() {
        Ingredient wet = OwnIngredient.of("syrup", "sucrose 60");
        assertEquals(40, wet.composition().percent(Component.WATER), 1e-9);
        assertEquals("the rest is water", wet.inferred());
        Ingredient solids = OwnIngredient.of("syrup", "sucrose 60, water 30");
        assertEquals(10, solids.composition().percent(Component.OTHER_CARBOHYDRATE), 1e-9);
        assertEquals("10 % solids not named, taken as undissolved", solids.inferred());
    }

    @Test
    void knowsTotalSolids() {
        Ingredient mix =
                OwnIngredient.of(
                        "base", "total solids 40, fat 12, milk solids not fat 11, sucrose 15");
        assertEquals(60, mix.composition().percent(Component.WATER), 1e-9);
        assertEquals(2, mix.composition().percent(Component.OTHER_CARBOHYDRATE), 1e-9);
        assertEquals(12, mix.composition().percent(Component.MILK_FAT), 1e-9);
        assertEquals(
                "fat taken as milk fat; 2 % solids not named, taken as undissolved",
                mix.inferred());
        assertEquals(Set.of(Allergen.MILK), mix.allergens());
    }

    @Test
    void knowsAlcoholByVolumeAndYolk() {
        Ingredient gin = OwnIngredient.of("gin", "abv 40");
        assertEquals(33.3, gin.composition().percent(Component.ALCOHOL), 0.05);
        assertEquals(66.7, gin.composition().percent(Component.WATER), 0.05);
        Ingredient yolk = OwnIngredient.of("yolk", "yolk solids 47.7");
        assertEquals(26.54, yolk.composition().percent(Component.OTHER_FAT), 1e-9);
        assertEquals(47.7, yolk.composition().per100g(Tally.YOLK_SOLIDS), 1e-9);
        assertEquals(100, yolk.composition().sumPercent(), 1e-9);
        assertEquals(Set.of(Allergen.EGG), yolk.allergens());
    }

    @Test
    void saysWhatOtherSugarsAreTakenFor() {
        Ingredient own = OwnIngredient.of("mix sugar", "sucrose 70, other sugars 30");
        assertEquals(30, own.composition().percent(Component.GLUCOSE), 1e-9);
        assertEquals("other sugars taken as glucose", own.inferred());
    }

    @Test
    void refusesInOneSentence() {
        assertMessage(
                "own ingredient \"house syrup\" adds up to 120 %; it may be at most 100 %",
                () -> OwnIngredient.of("house syrup", "water 60, sucrose 60"));
        assertMessage(
                "\"much fat\" of own ingredient \"x\" isn't a name and a percentage. Write it like \"sucrose 60\", with a decimal point.",
                () -> OwnIngredient.of("x", "much fat"));
        assertEquals(
                OwnIngredient.of("x", "fat 3.5").composition(),
                OwnIngredient.of("x", "fat 3,5").composition());
        assertMessage(
                "\"\" of own ingredient \"x\" isn't a name and a percentage. Write it like \"sucrose 60\", with a decimal point.",
                () -> OwnIngredient.of("x", ""));
        assertMessage(
                "own ingredient \"x\" names sucrose twice; add the two up",
                () -> OwnIngredient.of("x", "sugar 10, sucrose 5"));
        assertMessage(
                "sucrose of own ingredient \"x\" is 600; it must be between 0 and 100 %",
                () -> OwnIngredient.of("x", "sucrose 600"));
        assertMessage(
                "sucrose of own ingredient \"x\" is \"6.0.0\", which isn't a number",
                () -> OwnIngredient.of("x", "sucrose 6.0.0"));
        assertMessage(
                "own ingredient \"x\" states 30 % total solids, but its parts have 45 % solids and 70 % water. Make them agree or leave the total out.",
                () -> OwnIngredient.of("x", "sucrose 45, total solids 30"));
        assertMessage(
                "own ingredient \"x\" states 50 % total solids, but its parts have 40 % solids and 60 % water. Make them agree or leave the total out.",
                () -> OwnIngredient.of("x", "sucrose 40, total solids 50, water 60"));
    }

    @Test
    void statesSweetnessFreezingPowerDensityAndAllergens() {
        Ingredient own =
                OwnIngredient.of(
                        "house sweetener",
                        "water 25, other carbohydrate 75, sweetness 70, pac 120, density 1.3, allergens soy and nuts");
        assertEquals(70, own.pod(), 1e-9);
        assertEquals(1.3, own.densityKgPerL().getAsDouble());
        assertEquals(java.util.Set.of(Allergen.SOY, Allergen.TREE_NUTS), own.allergens());
        Mix mix = Mix.of(Amount.grams(50, own), Amount.grams(450, Shelf.WATER));
        Mix likeSucrose = Mix.of(Amount.grams(60, Shelf.SUCROSE), Amount.grams(452.5, Shelf.WATER));
        assertEquals(
                likeSucrose.initialFreezingPointC(), mix.initialFreezingPointC(), 0.05, "dilute");
    }

    /** DE 100 is glucose: its chains must freeze as glucose does, but for the ideal count. */
    @Test
    void statesADextroseEquivalentOrAMolarMass() {
        Ingredient syrup = OwnIngredient.of("syrup", "water 20, higher saccharides 80, de 100");
        Ingredient glucose =
                OwnIngredient.of("sugar", "water 20, other carbohydrate 80, molar mass 180.156");
        double deC =
                Mix.of(Amount.grams(50, syrup), Amount.grams(450, Shelf.WATER))
                        .initialFreezingPointC();
        double molarC =
                Mix.of(Amount.grams(50, glucose), Amount.grams(450, Shelf.WATER))
                        .initialFreezingPointC();
        double realC =
                Mix.of(Amount.grams(40, Shelf.GLUCOSE), Amount.grams(460, Shelf.WATER))
                        .initialFreezingPointC();
        assertEquals(realC, deC, 0.03);
        assertEquals(realC, molarC, 0.03);
    }

    @Test
    void aPrintedLabelIsTypedLineByLine() {
        Ingredient own =
                OwnIngredient.of(
                        "oat drink",
                        "Energy 190 kJ; fat 1,5 g; of which saturates 0,2 g; carbohydrate 6,6 g; of which sugars 4,0 g; fibre 0,8 g; protein 1,0 g; salt 0,1 g");
        assertEquals(4, own.composition().percent(Component.SUCROSE), 1e-9);
        assertEquals(2.6, own.composition().percent(Component.OTHER_CARBOHYDRATE), 1e-9);
        assertEquals(90, own.composition().percent(Component.WATER), 1e-9);
        assertTrue(own.inferred().contains("sugars taken as sucrose"), own.inferred());
    }
}
