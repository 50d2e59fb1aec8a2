package coldwright.science.mix;

import static coldwright.science.mix.Amount.grams;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.Band;
import coldwright.science.freezing.Solution;
import coldwright.science.sensory.Sweetness;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import java.util.Arrays;
import java.util.Locale;

class SweetenerTest {
    private static final Mix SUGARED =
            Mix.of(
                    grams(500, Shelf.RASPBERRIES),
                    grams(180, Shelf.WATER),
                    grams(150, Shelf.SUCROSE));

    /** Erythritol for the freezing point, stevia for the taste, inulin for the body. */
    private static final Mix LOW_SUGAR =
            Mix.of(
                    grams(500, Shelf.RASPBERRIES),
                    grams(180, Shelf.WATER),
                    grams(75, Shelf.find("erythritol")),
                    grams(60, Shelf.find("inulin")),
                    grams(0.3, Shelf.find("stevia")));

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "STATED")
    void hasItsOwnFigures(Sweetener sweetener) {
        assertTrue(sweetener.solubilityPercent() > 0 && sweetener.solubilityPercent() <= 100);
        assertTrue(sweetener.energyKcalPerG().isPresent());
        sweetener
                .laxationGPerKg()
                .ifPresent(dose -> assertTrue(dose.low() > 0.1 && dose.high() < 1, dose::toString));
    }

    @Test
    void everySweetComponentIsASweetener() {
        for (Component component : Component.values()) {
            if (component.kind() == Component.Kind.SUGAR
                    || component.kind() == Component.Kind.POLYOL) {
                assertTrue(
                        Arrays.stream(Sweetener.values())
                                .anyMatch(one -> one.name().equals(component.name())),
                        component::words);
            }
        }
    }

    @Test
    void everySweetenerOfTheShelfIsSweetByItself() {
        for (Ingredient one : Shelf.all()) {
            if (one.kind() == IngredientKind.SWEETENER) {
                Band sweet = Sweetness.of(Mix.of(grams(100, one))).sucroseEquivalentPercent();
                assertTrue(sweet.high() > 0, one::name);
            }
        }
    }

    /** 14.9 g of erythritol and the fruit's own solutes in their water, by Σ n·1.86 by hand. */
    @Test
    void aSorbetOfErythritolInulinAndSteviaIsComputedFromItsOwnMolecules() {
        Solution solution = LOW_SUGAR.solution();
        double waterKg = solution.waterG() / 1000;
        double erythritolC = 1.86 * 75 / 122.12 / waterKg;
        double fruitC = -Mix.of(grams(500, Shelf.RASPBERRIES)).initialFreezingPointC();
        double fruitWaterKg = 0.5 * Shelf.RASPBERRIES.composition().percent(Component.WATER) / 100;
        double byHandC = -(erythritolC + fruitC * fruitWaterKg / waterKg + 1.86 * 0.0329 / waterKg);
        assertEquals(byHandC, LOW_SUGAR.initialFreezingPointC(), 0.15, "ideal, by hand");
        assertEquals(
                SUGARED.initialFreezingPointC(), LOW_SUGAR.initialFreezingPointC(), 1.0, "alike");
        assertTrue(solution.massG().keySet().stream().anyMatch(s -> s.name().equals("ERYTHRITOL")));
    }

    @Test
    void itIsAsSweetAsASugaredOneWithAThirdOfItsSugars() {
        Band sweet = Sweetness.of(LOW_SUGAR).sucroseEquivalentPercent();
        Band sugared = Sweetness.of(SUGARED).sucroseEquivalentPercent();
        assertTrue(sweet.low() < sugared.middle() && sugared.middle() < sweet.high() * 1.1);
        assertTrue(LOW_SUGAR.sugarsPercent() < SUGARED.sugarsPercent() / 3);
    }

    @Test
    void notesWhatMayActAsALaxative() {
        assertEquals(
                "xylitol: more than about 22 g at once (0.37 g per kg of body mass, an adult of 60 kg) may act as a laxative. Children feel it sooner.",
                Sweetener.XYLITOL.laxationNote().orElseThrow().english());
        assertTrue(
                Sweetener.INULIN
                        .laxationNote()
                        .orElseThrow()
                        .in(Locale.GERMAN)
                        .contains("abführend"));
        assertTrue(Sweetener.SUCROSE.laxationNote().isEmpty());
        assertEquals(2, Sweetener.laxationNotes(LOW_SUGAR).size(), "erythritol and inulin");
        assertTrue(Sweetener.laxationNotes(SUGARED).isEmpty());
    }
}
