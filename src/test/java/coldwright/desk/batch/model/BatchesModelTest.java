package coldwright.desk.batch.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.batch.BatchAnalysis;
import coldwright.batch.BatchLineage;
import coldwright.batch.Recipe;
import coldwright.desk.batch.search.ProposedChange;
import coldwright.desk.batch.search.TastingDiagnosis;
import coldwright.science.diagnosis.Symptom;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import java.util.List;
import java.util.Optional;

class BatchesModelTest {
    private static final double ROUNDED_PERCENT = 1e-6;

    private final BatchesModel brew = new BatchesModel(Runnable::run, Runnable::run);

    @Test
    void theNextBatchRemembersWhereItCameFromAndWhatChanged() {
        BatchModel first = brew.startBatch("Blood-orange sorbet");
        brew.tasted(first, List.of("hard"));
        Recipe recipe = first.recipe().get();
        BatchAnalysis all = first.figures().get().orElseThrow();
        ProposedChange mend =
                TastingDiagnosis.of(Symptom.ICY, all).offers().stream().findFirst().orElseThrow();

        BatchModel second = brew.next(first, mend.recipe(), "against “icy”");

        assertEquals(new BatchLineage(2, 1, List.of(), "against “icy”"), second.lineage().get());
        assertEquals(List.of("hard"), first.lineage().get().found());
        assertEquals(Optional.of(first), brew.against().get());
        assertEquals(Optional.of(first), brew.before(second));
        assertFalse(BatchDifferences.between(recipe, second.recipe().get()).isEmpty());
    }

    @ParameterizedTest
    @EnumSource(Symptom.class)
    void theSharesOfAllCausesMakeTheWhole(Symptom symptom) {
        BatchModel batch = brew.startBatch("x");
        TastingDiagnosis tastingDiagnosis =
                TastingDiagnosis.of(symptom, batch.figures().get().orElseThrow());
        double sum =
                tastingDiagnosis.suspects().stream().mapToDouble(one -> one.sharePercent()).sum();

        assertTrue(
                tastingDiagnosis.suspects().isEmpty() || Math.abs(sum - 100) < ROUNDED_PERCENT,
                symptom + " " + sum);
        assertFalse(
                TastingDiagnosis.words(symptom).startsWith("batch."), "each symptom has its words");
    }

    @Test
    void theOpenOneCanBePutAwayButNotTheLast() {
        BatchModel first = brew.startBatch("a");
        BatchModel second = brew.startBatch("b");

        brew.close(second);
        brew.close(first);

        assertEquals(List.of(first), brew.batches());
        assertEquals(first, brew.open().get());
    }

    @Test
    void aNumberThatIsTakenIsReplaced() {
        brew.startBatch("a");

        assertEquals(
                2, brew.add(Recipe.starter("b"), BatchLineage.first(1)).lineage().get().number());
    }

    @Test
    void whatWasPutAwayIsBroughtBackToItsPlaceWithItsNumber() {
        BatchesModel brew = new BatchesModel(Runnable::run, Runnable::run);
        BatchModel first = brew.startBatch("First");
        BatchModel second = brew.startBatch("Second");
        brew.close(first);
        assertEquals(List.of(second), brew.batches());

        BatchModel third = brew.startBatch("Third");
        brew.restore();

        assertEquals(List.of(first, second, third), brew.batches());
        assertEquals(3, third.lineage().get().number());
        assertEquals(Optional.empty(), brew.archived().get());
        brew.restore();
        assertEquals(3, brew.batches().size());
    }
}
