package coldwright.desk.batch.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.Recipe;
import coldwright.science.crystal.Method;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import java.time.LocalTime;

class FreezeScheduleTest {
    private static final LocalTime TWO = LocalTime.of(14, 0);

    private static BatchAnalysis reckoned(Method method) {
        Recipe recipe = Recipe.starter("x");
        Recipe by = recipe.by(recipe.setup().by(method));
        return BatchAnalysis.of(by);
    }

    @ParameterizedTest
    @EnumSource(Method.class)
    void theFaceGoesRoundLongEnoughAndTellsTheCold(Method method) {
        BatchAnalysis all = reckoned(method);
        FreezeSchedule plan = FreezeSchedule.of(all, TWO);

        assertTrue(plan.roundMinutes() >= plan.doneMinutes());
        assertTrue(plan.least() <= plan.doneMinutes());
        assertFalse(plan.doneMinutes() > plan.most(), "not a number if poor contact never does");
        assertEquals(all.plan().shakeAtMinutes(), plan.shakeAtMinutes());
        assertEquals(method == Method.SHAKEN_TUB, !plan.shakeAtMinutes().isEmpty());
        assertEquals("In at 14:00.", plan.words(all).get(0));
        assertTrue(plan.words(all).get(1).contains("°C"), plan.words(all).get(1));
    }

    @Test
    void aBagIsKneadedUntilItIsSoftServe() {
        BatchAnalysis all = reckoned(Method.BAG);
        FreezeSchedule plan = FreezeSchedule.of(all, TWO);
        long minutes = Math.round(all.plan().minutesToSoftServe());
        String soft = plan.at(all.plan().minutesToSoftServe());

        assertTrue(
                soft.equals(TWO.plusMinutes(minutes).toString())
                        || soft.equals(TWO.plusMinutes(minutes - 1).toString()));
        assertTrue(plan.words(all).contains("Knead and turn it all the time until " + soft + "."));
        assertFalse(plan.words(all).get(1).contains("usual"));
    }
}
