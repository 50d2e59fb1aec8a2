package coldwright.science.diagnosis;

import static coldwright.science.mix.Amount.grams;
import static coldwright.science.mix.Shelf.BLOOD_ORANGE_JUICE;
import static coldwright.science.mix.Shelf.CREAM_35;
import static coldwright.science.mix.Shelf.GUAR_GUM;
import static coldwright.science.mix.Shelf.HEAVY_CREAM;
import static coldwright.science.mix.Shelf.LEMON_JUICE;
import static coldwright.science.mix.Shelf.RUM_40;
import static coldwright.science.mix.Shelf.SALT;
import static coldwright.science.mix.Shelf.SKIM_MILK_POWDER;
import static coldwright.science.mix.Shelf.SUCROSE;
import static coldwright.science.mix.Shelf.WHOLE_MILK;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.Band;
import coldwright.science.mix.Mix;
import coldwright.science.plan.BatchState;
import coldwright.science.plan.Finding;
import coldwright.science.plan.Kitchen;
import coldwright.science.plan.Plan;
import coldwright.science.plan.Planner;
import coldwright.science.style.StyleQuantity;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import java.util.List;

class DiagnosisTest {
    private static final Mix BRICK = Mix.of(grams(600, BLOOD_ORANGE_JUICE), grams(40, SUCROSE));
    private static final Mix CLASSIC =
            Mix.of(
                    grams(500, WHOLE_MILK),
                    grams(300, CREAM_35),
                    grams(45, SKIM_MILK_POWDER),
                    grams(150, SUCROSE),
                    grams(3, GUAR_GUM));

    @Test
    void findsWhyASorbetIsHard() {
        Finding first = Diagnosis.of(Situation.of(BRICK), Symptom.HARD).get(0);
        assertEquals("too much of its water is ice", first.what());
        assertTrue(first.why().contains("at −12 °C ice is 8"), first.why());
        assertTrue(first.why().contains("orange juice brings "), first.why());
    }

    @Test
    void namesTheRumThatKeepsABatchLiquid() {
        Mix mix = CLASSIC.with(grams(250, RUM_40));
        Finding first =
                Diagnosis.of(Situation.of(mix).frozenAt(-12), Symptom.WILL_NOT_FREEZE).get(0);
        assertTrue(first.why().contains("; rum 40 % brings "), first.why());
    }

    @Test
    void whatStaysSoftInTheFreezerMayBeSaidNotToFreezeButIsForeseenToBeSoft() {
        Mix coffee =
                Mix.of(
                        grams(400, WHOLE_MILK),
                        grams(100, HEAVY_CREAM),
                        grams(110, SUCROSE),
                        grams(150, RUM_40));
        Situation inBrine = Situation.of(coffee).frozenAt(-17);

        Finding first = Diagnosis.of(inBrine, Symptom.WILL_NOT_FREEZE).get(0);
        assertEquals("too little of its water is ice", first.what());
        assertTrue(first.why().contains("rum 40 % brings 7"), first.why());
        assertTrue(
                Diagnosis.foresee(inBrine).stream()
                        .noneMatch(one -> Symptom.of(one.fault()) == Symptom.WILL_NOT_FREEZE));
        assertTrue(
                Diagnosis.foresee(inBrine).stream()
                        .anyMatch(one -> Symptom.of(one.fault()) == Symptom.TOO_SOFT));
    }

    @Test
    void whatIsHardIsNotForeseenToBeSoftNorToShrinkWithoutAir() {
        List<Symptom> foreseen =
                Diagnosis.foresee(Situation.of(BRICK)).stream()
                        .map(one -> Symptom.of(one.fault()))
                        .toList();
        assertTrue(foreseen.contains(Symptom.HARD), foreseen::toString);
        assertFalse(foreseen.contains(Symptom.TOO_SOFT), foreseen::toString);
        assertFalse(foreseen.contains(Symptom.SHRINKS), foreseen::toString);
        assertFalse(Diagnosis.of(Situation.of(BRICK), Symptom.SHRINKS).isEmpty());
        assertTrue(
                Diagnosis.foresee(Situation.of(BRICK).withAir(60)).stream()
                        .anyMatch(
                                one ->
                                        Symptom.of(one.fault()) == Symptom.SHRINKS
                                                || Symptom.of(one.fault()) == Symptom.WEAK));
    }

    @Test
    void blamesFatForButter() {
        Mix mix = Mix.of(grams(900, HEAVY_CREAM), grams(150, SUCROSE));
        Finding first = Diagnosis.of(Situation.of(mix), Symptom.BUTTERY).get(0);
        assertTrue(first.why().contains("heavy cream brings 100 % of it"), first.why());
    }

    @Test
    void sharesAddUp() {
        List<Finding> causes = Diagnosis.of(Situation.of(BRICK).withCrystals(90), Symptom.ICY);
        assertTrue(causes.size() > 1);
        assertEquals(100, causes.stream().mapToDouble(Finding::sharePercent).sum(), 1e-9);
        for (int i = 1; i < causes.size(); i++) {
            assertTrue(causes.get(i - 1).steps() >= causes.get(i).steps());
        }
    }

    @ParameterizedTest
    @EnumSource(value = Symptom.class, mode = EnumSource.Mode.EXCLUDE, names = "OFF_DIET")
    void answersEachSymptomOfAnyBatch(Symptom symptom) {
        List<Mix> mixes =
                List.of(
                        BRICK,
                        CLASSIC,
                        Mix.of(grams(100, RUM_40)),
                        CLASSIC.with(grams(120, SKIM_MILK_POWDER), grams(20, SALT)),
                        BRICK.with(grams(900, LEMON_JUICE)),
                        Mix.of(grams(900, HEAVY_CREAM), grams(150, SUCROSE)),
                        Mix.of(grams(500, WHOLE_MILK), grams(300, SUCROSE), grams(15, GUAR_GUM)));
        int causes = 0;
        for (Mix mix : mixes) {
            for (Finding cause : Diagnosis.of(Situation.of(mix).withAir(60), symptom)) {
                causes++;
                assertTrue(cause.steps() > 0);
                assertFalse(cause.why().contains("NaN"), cause.why());
                assertFalse(cause.mend().isBlank());
            }
        }
        assertTrue(causes > 0, "no batch of these has a cause");
        assertEquals(symptom, Symptom.named(symptom.words()));
    }

    @Test
    void foreseesABrickAndLittleOfAClassic() {
        List<Finding> brick = Diagnosis.foresee(Situation.of(BRICK));
        assertTrue(brick.get(0).what().contains(": expect "), brick::toString);
        List<Finding> classic = Diagnosis.foresee(Situation.of(CLASSIC).withAir(30));
        assertTrue(classic.size() < brick.size(), classic::toString);
    }

    @Test
    void neverForeseesHardAndTooSoftAtOnce() {
        List<Symptom> symptoms =
                Diagnosis.foresee(Situation.of(BRICK)).stream()
                        .map(one -> Symptom.of(one.fault()))
                        .toList();
        assertTrue(symptoms.contains(Symptom.HARD), symptoms::toString);
        assertFalse(symptoms.contains(Symptom.TOO_SOFT), symptoms::toString);
    }

    @Test
    void saysHowLargeTheCrystalsAre() {
        Situation coarse = Situation.of(BRICK).withCrystals(new Band(50, 75, 120));
        Finding icy =
                Diagnosis.foresee(coarse).stream()
                        .filter(one -> Symptom.of(one.fault()) == Symptom.ICY)
                        .findFirst()
                        .orElseThrow();
        assertEquals("coarse crystals: expect ice you can feel", icy.what());
        assertTrue(icy.why().contains("about 75 µm; up to 50 µm"), icy.why());
    }

    /** What was tasted counts, even where all figures are as usual. */
    @Test
    void easesWhatWasTasted() {
        BatchState state = Situation.of(CLASSIC).state();
        BatchState eased = Diagnosis.eased(state, Symptom.TOO_SWEET);
        double before = state.of(StyleQuantity.SWEETNESS);
        Plan plan = Planner.plans(eased, Kitchen.at(-18)).get(0);
        assertTrue(plan.resolvesAll(), plan::toString);
        assertTrue(plan.after().of(StyleQuantity.SWEETNESS) <= before - 2.4, plan::toString);
        assertTrue(Diagnosis.byHand(Symptom.SANDY).orElseThrow().english().contains("dissolved"));
    }
}
