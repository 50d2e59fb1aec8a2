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
import coldwright.science.mix.Tally;
import coldwright.words.Phrase;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Which ingredients are named, which causes are told and in what order, and the figures in them.
 */
class FindingsTest {
    private static Composition water() {
        return Composition.NOTHING.with(100, Component.WATER);
    }

    private static Composition with(Composition all, double percent, Component component) {
        return all.with(all.percent(Component.WATER) - percent, Component.WATER)
                .with(percent, component);
    }

    private static final Ingredient WATERY = Ingredient.own("dew", water());
    private static final Ingredient SYRUP =
            Ingredient.own("nectar", with(water(), 60, Component.SUCROSE));
    private static final Ingredient RICH =
            Ingredient.own("velvet", with(water(), 50, Component.MILK_FAT));

    private static Cause cause(Situation situation, Symptom symptom, int which) {
        return new SuspectTable(situation).behind(symptom).get(which).cause(situation.mix());
    }

    private static Mix one(Composition composition) {
        return Mix.of(grams(1000, Ingredient.own("the stuff", composition)));
    }

    /** Each suspect that an ingredient can bring names the ingredient. */
    @ParameterizedTest
    @CsvSource({
        "WEAK, 0, WATER, 0", "GUMMY, 0, STABILISER, 2", "GUMMY, 1, STARCH, 9",
        "GUMMY, 2, SUCROSE, 60", "MELTS_FAST, 2, MILK_FAT, 4", "WEAK, 1, MILK_PROTEIN, 1",
        "TOO_SWEET, 0, SUCROSE, 50", "BUTTERY, 0, MILK_FAT, 40"
    })
    void theIngredientThatBringsItIsNamed(
            Symptom symptom, int which, Component component, double percent) {
        Composition stuff = with(water(), 3, Component.MILK_FAT);
        if (percent > 0) {
            stuff = with(stuff, percent - stuff.percent(component), component);
            stuff = component == Component.MILK_FAT ? stuff.with(percent, component) : stuff;
        }
        String why = cause(Situation.of(one(normal(stuff))), symptom, which).why();
        assertTrue(why.contains("the stuff"), why);
    }

    /** Water makes up the rest. */
    private static Composition normal(Composition all) {
        double rest = 100 - (all.sumPercent() - all.percent(Component.WATER));
        return all.with(rest, Component.WATER);
    }

    @Test
    void milkSugarNamesWhoBringsIt() {
        Composition milky =
                normal(with(water(), 12, Component.LACTOSE)).with(22, Tally.MILK_SOLIDS_NOT_FAT);
        Cause sandy = cause(Situation.of(one(milky)), Symptom.SANDY, 0);
        assertTrue(sandy.steps() > 1 && sandy.why().contains("the stuff"), sandy.why());
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
        String told = brought(mix, "solids", Component.SUCROSE);
        int first = told.indexOf("first");
        int second = told.indexOf("second");
        int third = told.indexOf("third");
        assertTrue(0 <= first && first < second && second < third, told);
        assertFalse(told.contains("fourth") || told.contains("least"), told);
        assertTrue(told.contains("45 %") && told.contains("27 %") && told.contains("15 %"), told);
        Mix two = Mix.of(grams(952, named("much", 10)), grams(48, named("little", 10)));
        String most = brought(two, "solids", Component.SUCROSE);
        assertTrue(most.contains("much") && !most.contains("little"), most);
        String none = brought(two, "solids", Component.MILK_SALTS);
        assertFalse(none.isEmpty() || none.contains("much"), none);
    }

    private static String brought(Mix mix, String part, Component component) {
        return Contributions.of(mix, part, m -> m.composition().percent(component))
                .orElseThrow()
                .english();
    }

    private static Ingredient named(String name, double sucrose) {
        return Ingredient.own(name, with(water(), sucrose, Component.SUCROSE));
    }

    /** Soft and hard at once: only the one that the figures give more reason for. */
    @ParameterizedTest
    @CsvSource({"-12, HARD, TOO_SOFT", "-5, TOO_SOFT, HARD"})
    void hardOrSoftButNotBoth(double servingC, Symptom kept, Symptom dropped) {
        Mix thin =
                one(
                        normal(
                                with(
                                        with(water(), 3, Component.MILK_FAT),
                                        servingC < -10 ? 10 : 6,
                                        Component.ALCOHOL)));
        Situation situation = Situation.of(thin).servedAt(servingC);
        SuspectTable suspectTable = new SuspectTable(situation);
        assertTrue(suspectTable.behind(Symptom.HARD).get(1).steps(thin) > 0.25);
        assertTrue(suspectTable.behind(Symptom.TOO_SOFT).get(0).steps(thin) > 0.25);
        List<Symptom> told = Diagnosis.foresee(situation).stream().map(Finding::symptom).toList();
        assertFalse(told.contains(dropped), told::toString);
        assertEquals(
                kept == Symptom.TOO_SOFT,
                told.contains(kept),
                "hard is left out where its cause, few solids, is told already");
    }

    /** The most certain first, and no cause told twice. */
    @Test
    void findingsAreRankedAndToldOnce() {
        Situation situation =
                Situation.of(Mix.of(grams(500, WATERY), grams(100, SYRUP), grams(30, RICH)))
                        .withAir(150)
                        .withCrystals(70);
        List<Finding> findings = Diagnosis.foresee(situation);
        assertTrue(findings.size() > 2, findings::toString);
        Set<CauseKind> causes = new HashSet<>();
        double before = Double.POSITIVE_INFINITY;
        for (Finding finding : findings) {
            assertTrue(finding.cause().steps() <= before, findings::toString);
            before = finding.cause().steps();
            assertTrue(causes.add(finding.cause().kind()), findings::toString);
            assertEquals(finding.cause().why(), finding.why());
            assertEquals(finding.cause().advice(), finding.mend());
            assertEquals(finding.cause().fixes(), finding.fixes());
            assertTrue(finding.toString().contains(finding.why()), finding::toString);
        }
    }

    /** A second cause is named from a quarter of all causes on, and no third one. */
    @Test
    void aSecondCauseIsNamedIfItCounts() {
        Situation situation =
                Situation.of(one(normal(with(water(), 25, Component.SUCROSE)))).withCrystals(65);
        List<Cause> causes = Diagnosis.of(situation, Symptom.ICY);
        assertTrue(causes.size() > 2, causes::toString);
        String words = ExpectedFindings.of(situation, Symptom.ICY, causes).english();
        assertTrue(words.startsWith(causes.get(0).what()), words);
        assertEquals(causes.get(1).sharePercent() >= 25, words.contains(causes.get(1).what()));
        assertFalse(words.contains(causes.get(2).what()), words);
        Cause large = shared(CauseKind.FEW_SOLIDS, 76);
        Cause small = shared(CauseKind.MUCH_ICE, 24);
        assertFalse(
                ExpectedFindings.of(situation, Symptom.ICY, List.of(large, small))
                        .english()
                        .contains(small.what()));
        Cause quarter = shared(CauseKind.MUCH_ICE, 25);
        assertTrue(
                ExpectedFindings.of(situation, Symptom.ICY, List.of(large, quarter))
                        .english()
                        .contains(quarter.what()));
    }

    private static Cause shared(CauseKind kind, double percent) {
        Phrase none = Phrase.of("science.diagnosis", "brought-by-none");
        return new Cause(kind, none, 1, percent, none, List.of());
    }

    @ParameterizedTest
    @EnumSource(CauseKind.class)
    void eachCauseHasItsWords(CauseKind kind) {
        assertFalse(kind.phrase().english().contains(kind.name()), kind.phrase()::english);
        assertNotEquals(kind.phrase().english(), kind.phrase().in(Locale.GERMAN));
    }

    @ParameterizedTest
    @EnumSource(Symptom.class)
    void eachSymptomIsExpectedInWords(Symptom symptom) {
        String words =
                ExpectedFindings.of(
                                Situation.of(one(water())),
                                symptom,
                                List.of(shared(CauseKind.MUCH_ICE, 100)))
                        .english();
        assertFalse(words.contains("expect."), words);
    }

    /** Crystals: felt, perhaps felt, and smooth for now, by the middle and the top of the band. */
    @Test
    void crystalsInThreeDegrees() {
        Situation base = Situation.of(one(water().with(100, Component.WATER)));
        String felt = iciness(base.withCrystals(new Band(40, 51, 60)));
        String atTheLimit = iciness(base.withCrystals(new Band(40, 50, 60)));
        String smooth = iciness(base.withCrystals(new Band(30, 40, 50)));
        assertEquals(
                3,
                Set.of(
                                felt.replaceAll("\\d+", ""),
                                atTheLimit.replaceAll("\\d+", ""),
                                smooth.replaceAll("\\d+", ""))
                        .size());
        assertTrue(smooth.contains("smooth") && smooth.contains("40 µm (30 to 50)"), smooth);
    }

    private static String iciness(Situation situation) {
        return ExpectedFindings.of(
                        situation, Symptom.ICY, List.of(shared(CauseKind.COARSE_CRYSTALS, 100)))
                .english();
    }

    /** Two decimals below ten, one above; the bound that is passed, not the other one. */
    @Test
    void figuresAreRounded() {
        Composition gummy =
                normal(with(with(water(), 12, Component.MILK_FAT), 0.7654, Component.STABILISER));
        String gum = cause(Situation.of(one(gummy)), Symptom.GUMMY, 0).why();
        assertTrue(gum.contains("0.77 ") && gum.contains("0.5") && !gum.contains("0.2"), gum);
        Composition fat = normal(with(water(), 24.567, Component.MILK_FAT));
        String butter = cause(Situation.of(one(fat)), Symptom.BUTTERY, 0).why();
        assertTrue(butter.contains("24.6 ") && butter.contains("20"), butter);
        Composition little = normal(with(water(), 4, Component.MILK_FAT));
        String melts = cause(Situation.of(one(little)), Symptom.MELTS_FAST, 2).why();
        assertTrue(melts.contains("4 ") && melts.contains("10"), melts);
    }

    @Test
    void swingsAreOfKeeping() {
        Situation swung =
                Situation.of(one(water())).withCrystals(90).steadyWouldBe(Band.exactly(60));
        assertEquals(CauseKind.STORAGE, cause(swung, Symptom.ICY, 1).kind());
        assertEquals(CauseKind.COARSE_CRYSTALS, cause(swung, Symptom.ICY, 0).kind());
    }

    /** Without 10 % of air nothing is seen to shrink. */
    @Test
    void littleAirDoesNotShrink() {
        Situation still = Situation.of(one(normal(with(water(), 12, Component.MILK_FAT))));
        assertTrue(new SuspectTable(still.withAir(9.9)).behind(Symptom.SHRINKS).isEmpty());
        assertFalse(new SuspectTable(still.withAir(10)).behind(Symptom.SHRINKS).isEmpty());
    }
}
