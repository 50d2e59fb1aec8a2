package coldwright.desk.batch.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.FreezingSetup;
import coldwright.batch.Recipe;
import coldwright.batch.RecipeLine;
import coldwright.batch.SetupField;
import coldwright.desk.batch.search.BatchGoal.GoalResult;
import coldwright.science.balance.Trait;
import coldwright.science.crystal.Method;
import coldwright.science.diagnosis.Symptom;
import coldwright.science.mix.Allergen;
import coldwright.science.plan.BatchFault;
import coldwright.science.plan.Finding;

import org.junit.jupiter.api.Test;

import java.util.List;

class BatchGoalTest {
    /** Amounts on the page are rounded to a tenth of a gram. */
    private static final double ROUNDED = 0.1;

    /** The smallest change ends just inside of what was wished, not far beyond. */
    private static final double WITHIN = 0.5;

    private static final Recipe SORBET = Recipe.starter("Blood-orange sorbet");

    private static final Recipe CUSTARD =
            Recipe.of(
                    "Salted caramel",
                    FreezingSetup.USUAL,
                    List.of(
                            new RecipeLine("500", "whole milk"),
                            new RecipeLine("200", "heavy cream"),
                            new RecipeLine("80", "egg yolk"),
                            new RecipeLine("160", "sucrose"),
                            new RecipeLine("3", "salt")));

    private static BatchAnalysis of(Recipe recipe) {
        return BatchAnalysis.of(recipe);
    }

    private static Recipe first(GoalResult answer) {
        assertFalse(answer.offers().isEmpty(), answer.text());
        return answer.offers().get(0).recipe();
    }

    @Test
    void whatIsOfferedIsScoopableFromTheFreezer() {
        double ice = of(first(BatchGoal.SCOOPABLE.of(SORBET, 40))).curve().icePercentAt(-18);

        assertTrue(of(SORBET).curve().icePercentAt(-18) > 76);
        assertTrue(ice <= 75 + ROUNDED && ice >= 75 - WITHIN, "ice " + ice);
    }

    @Test
    void whatIsOfferedIsReadyInTime() {
        double now = of(SORBET).plan().minutesToSoftServe();
        double wanted = Math.floor(0.9 * now);
        for (ProposedChange proposedChange : BatchGoal.READY.of(SORBET, wanted).offers()) {
            assertTrue(
                    of(proposedChange.recipe()).plan().minutesToSoftServe() <= wanted,
                    proposedChange.words());
        }
        assertTrue(BatchGoal.READY.of(SORBET, Math.ceil(now)).offers().isEmpty());
    }

    @Test
    void whatIsLessSweetKeepsItsIce() {
        BatchAnalysis was = of(SORBET);
        BatchAnalysis is = of(first(BatchGoal.LESS_SWEET.of(SORBET, 40)));

        double wanted = 0.85 * Trait.SWEETNESS.of(was.mix());
        double sweet = Trait.SWEETNESS.of(is.mix());
        assertTrue(sweet <= wanted + ROUNDED && sweet >= wanted - WITHIN, "sweet " + sweet);
        assertEquals(was.curve().icePercentAt(-12), is.curve().icePercentAt(-12), WITHIN + ROUNDED);
    }

    @Test
    void withoutEggItIsAsFirm() {
        BatchAnalysis is = of(first(BatchGoal.NO_EGG.of(CUSTARD, 40)));

        assertFalse(is.mix().allergens().contains(Allergen.EGG));
        assertEquals(
                of(CUSTARD).curve().icePercentAt(-12), is.curve().icePercentAt(-12), 0.5 + ROUNDED);
    }

    @Test
    void fifteenPerCentOfTheFatAreGone() {
        double wanted = 0.85 * of(CUSTARD).mix().fatPercent();
        double is = of(first(BatchGoal.LESS_FAT.of(CUSTARD, 40))).mix().fatPercent();

        assertTrue(is <= wanted + ROUNDED && is >= wanted - WITHIN, "fat " + is);
    }

    @Test
    void whatIsOfferedIsSmoothAfterANight() {
        Recipe tub = SORBET.by(SORBET.setup().by(Method.SHAKEN_TUB));
        assertTrue(tastedUm(tub) > 50);
        GoalResult answer = BatchGoal.SMOOTH.of(tub, 40);

        assertFalse(answer.offers().isEmpty(), answer.text());
        for (ProposedChange proposedChange : answer.offers()) {
            assertTrue(tastedUm(proposedChange.recipe()) <= 50, proposedChange.words());
        }
        Recipe smooth = answer.offers().get(0).recipe();
        assertTrue(BatchGoal.SMOOTH.of(smooth, 40).offers().isEmpty());
    }

    private static Recipe storedBadly() {
        return SORBET.by(
                SORBET.setup()
                        .with(SetupField.DAYS, "14")
                        .with(SetupField.SWING, "6")
                        .with(SetupField.WARM, "-4")
                        .with(SetupField.WARM_FOR, "24"));
    }

    @Test
    void keptBadlyItIsMendedByKeepingItSteady() {
        Recipe bag = storedBadly();
        assertTrue(tastedUm(bag) > 50);
        Recipe steady = bag.by(bag.setup().steady());
        assertTrue(tastedUm(steady) < 50);
        GoalResult answer = BatchGoal.SMOOTH.of(bag, 40);

        assertTrue(answer.text().isEmpty(), answer.text());
        assertTrue(
                answer.offers().stream()
                        .anyMatch(change -> change.recipe().setup().equals(steady.setup())),
                answer::toString);
    }

    @Test
    void keptBadlyItsFindingAndItsTastingOfferASteadyFreezer() {
        BatchAnalysis all = of(storedBadly());
        Recipe steady = storedBadly().by(storedBadly().setup().steady());
        Finding first =
                all.report().findings().stream()
                        .filter(one -> Symptom.of(one.fault()) == Symptom.ICY)
                        .findFirst()
                        .orElseThrow();
        assertEquals(BatchFault.STORAGE, first.fault());
        assertEquals(steady.setup(), ProposedChange.of(all).get(0).recipe().setup());
        TastingDiagnosis tasted = TastingDiagnosis.of(Symptom.ICY, all);
        assertEquals(BatchFault.STORAGE, tasted.suspects().get(0).fault());
        assertEquals(steady.setup(), tasted.offers().get(0).recipe().setup());
        assertTrue(
                TastingDiagnosis.of(Symptom.ICY, of(steady)).suspects().stream()
                        .noneMatch(one -> one.fault() == BatchFault.STORAGE));
    }

    private static double tastedUm(Recipe recipe) {
        return BatchAnalysis.of(recipe).crystals().orElseThrow().tasted().meanUm().middle();
    }

    @Test
    void thePlansOfABatchSayWhatBecomesOfItsCrystals() {
        Recipe tub = CUSTARD.by(CUSTARD.setup().by(Method.STILL_TUB));
        List<ProposedChange> plans = ProposedChange.of(of(tub));
        assertFalse(plans.isEmpty());
        for (ProposedChange plan : plans) {
            assertTrue(tastedUm(plan.recipe()) <= 50, plan::toString);
            assertEquals(List.of(), of(plan.recipe()).report().findings(), plan::toString);
            assertTrue(plan.besides().stream().anyMatch(one -> one.contains("µm")), plan::toString);
        }
    }

    @Test
    void whatCanNotBeSaysWhy() {
        GoalResult answer = BatchGoal.READY.of(SORBET, 1);

        assertTrue(answer.offers().isEmpty());
        assertTrue(answer.text().contains("Not possible"), answer.text());
    }
}
