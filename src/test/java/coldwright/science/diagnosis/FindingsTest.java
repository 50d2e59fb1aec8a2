package coldwright.science.diagnosis;

import static coldwright.science.mix.Amount.grams;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.Band;
import coldwright.science.mix.Component;
import coldwright.science.mix.Composition;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.plan.BatchFault;
import coldwright.science.plan.Finding;
import coldwright.science.plan.Plan;
import coldwright.words.Words;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Which ingredients are named, which findings come and in what order, and their figures. */
class FindingsTest {
    private static Composition water() {
        return Composition.NOTHING.with(100, Component.WATER);
    }

    private static Composition with(Composition all, double percent, Component component) {
        return all.with(all.percent(Component.WATER) - percent, Component.WATER)
                .with(percent, component);
    }

    private static Ingredient named(String name, double sucrose) {
        return Ingredient.own(name, with(water(), sucrose, Component.SUCROSE));
    }

    private static Mix one(Composition composition) {
        return Mix.of(grams(1000, Ingredient.own("the stuff", composition)));
    }

    private static Finding cause(Mix mix, Symptom symptom, BatchFault kind) {
        return Diagnosis.of(Situation.of(mix), symptom).stream()
                .filter(cause -> cause.fault() == kind)
                .findFirst()
                .orElseThrow();
    }

    /** Each cause that an ingredient can bring names the ingredient. */
    @ParameterizedTest
    @CsvSource({
        "GUMMY, MUCH_STABILISER, STABILISER, 2", "GUMMY, MUCH_STARCH, STARCH, 9",
        "GUMMY, MANY_SOLIDS, SUCROSE, 60", "TOO_SWEET, MUCH_SWEETNESS, SUCROSE, 50",
        "BUTTERY, MUCH_FAT, MILK_FAT, 40", "TOO_SALTY, MUCH_SALT, SALT, 3",
        "TOO_SOUR, MUCH_ACID, CITRIC_ACID, 4"
    })
    void theIngredientThatBringsItIsNamed(
            Symptom symptom, BatchFault kind, Component component, double percent) {
        String why = cause(one(with(water(), percent, component)), symptom, kind).why();
        assertTrue(why.contains("the stuff brings 100 %"), why);
    }

    /** Largest first, three at most, none below 5 %. */
    @Test
    void bringersAreRankedAndCutOff() {
        Mix mix =
                Mix.of(
                        grams(40, named("least", 10)),
                        grams(300, named("second", 10)),
                        grams(500, named("first", 10)),
                        grams(100, named("fourth", 10)),
                        grams(160, named("third", 10)));
        String told = cause(mix, Symptom.WEAK, BatchFault.FEW_SOLIDS).why();
        int first = told.indexOf("first");
        int second = told.indexOf("second");
        int third = told.indexOf("third");
        assertTrue(0 <= first && first < second && second < third, told);
        assertFalse(told.contains("fourth") || told.contains("least brings"), told);
        assertTrue(told.contains("45 %") && told.contains("27 %") && told.contains("15 %"), told);
    }

    /** The gravest first, and no cause twice. */
    @Test
    void findingsAreRankedAndToldOnce() {
        Situation situation =
                Situation.of(Mix.of(grams(500, named("dew", 0)), grams(100, named("nectar", 60))))
                        .withAir(150)
                        .withCrystals(70);
        List<Finding> findings = Diagnosis.foresee(situation);
        assertTrue(findings.size() > 2, findings::toString);
        Set<BatchFault> causes = new HashSet<>();
        double before = Double.POSITIVE_INFINITY;
        for (Finding finding : findings) {
            assertTrue(finding.steps() <= before, findings::toString);
            before = finding.steps();
            assertTrue(causes.add(finding.fault()), findings::toString);
            assertTrue(finding.toString().contains(finding.why()), finding::toString);
        }
    }

    @ParameterizedTest
    @EnumSource(BatchFault.class)
    void eachFaultHasItsWordsInEachLanguage(BatchFault fault) {
        assertFalse(fault.phrase().english().contains(fault.name()), fault.phrase()::english);
        assertNotEquals(fault.phrase().english(), fault.phrase().in(Locale.GERMAN));
        boolean whole = Words.of("science.plan").has("what." + fault.name());
        assertTrue(whole || Words.of("science.plan").has("expect." + fault.name()));
        assertTrue(Words.of("science.plan").has("advice." + fault.name()));
        assertTrue(Symptom.of(fault).causes().containsKey(fault));
        assertTrue(Files.exists(Path.of("lessons", fault.lesson() + ".md")), fault.lesson());
    }

    @ParameterizedTest
    @EnumSource(Plan.Why.class)
    void eachReasonHasItsWords(Plan.Why why) {
        assertTrue(Words.of("science.plan").has("why." + why.name()));
    }

    /** Crystals beyond those of a steady freezer are the storage's. */
    @Test
    void swingsAreOfStorage() {
        Situation swung =
                Situation.of(one(with(water(), 25, Component.SUCROSE)))
                        .withCrystals(90)
                        .steadyWouldBe(Band.exactly(60));
        List<Finding> causes = Diagnosis.of(swung, Symptom.ICY);
        assertEquals(BatchFault.STORAGE, causes.get(0).fault());
        assertEquals(2, causes.get(0).steps(), 1e-9);
        Finding own =
                causes.stream()
                        .filter(cause -> cause.fault() == BatchFault.COARSE_CRYSTALS)
                        .findFirst()
                        .orElseThrow();
        assertEquals(10 / 15.0, own.steps(), 1e-9);
    }

    /** R. W. Hartel 2019: numerous crystals under about 50 µm read as smooth. */
    @ParameterizedTest
    @CsvSource({"30, 0", "50, 0", "57.5, 0.5", "65, 1", "80, 2"})
    void crystalsAreFeltFromFiftyMicrometres(double um, double steps) {
        Situation situation =
                Situation.of(one(with(water(), 25, Component.SUCROSE))).withCrystals(um);
        assertEquals(
                steps,
                Diagnosis.of(situation, Symptom.ICY).stream()
                        .filter(cause -> cause.fault() == BatchFault.COARSE_CRYSTALS)
                        .mapToDouble(Finding::steps)
                        .sum(),
                1e-9);
    }
}
