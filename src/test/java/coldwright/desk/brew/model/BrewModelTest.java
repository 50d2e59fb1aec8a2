package coldwright.desk.brew.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.batch.Reckoning;
import coldwright.science.diagnosis.Symptom;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import java.util.List;
import java.util.Optional;

class BrewModelTest {
    private static final double ROUNDED_PERCENT = 1e-6;

    private final BrewModel brew = new BrewModel(Runnable::run, Runnable::run);

    @Test
    void theNextBatchRemembersWhereItCameFromAndWhatChanged() {
        BatchModel first = brew.begin("Blood-orange sorbet");
        brew.tasted(first, List.of("hard"));
        Recipe recipe = first.recipe().get();
        Reckoning all = first.figures().get().orElseThrow();
        Offer mend =
                Tasting.of(Symptom.ICY, recipe, all).suspects().stream()
                        .flatMap(one -> one.offers().stream())
                        .findFirst()
                        .orElseThrow();

        BatchModel second = brew.next(first, mend.recipe(), "against “icy”");

        assertEquals(new Story(2, 1, List.of(), "against “icy”"), second.story().get());
        assertEquals(List.of("hard"), first.story().get().found());
        assertEquals(Optional.of(first), brew.against().get());
        assertEquals(Optional.of(first), brew.before(second));
        assertFalse(Differences.between(recipe, second.recipe().get()).isEmpty());
    }

    @ParameterizedTest
    @EnumSource(Symptom.class)
    void theSharesOfAllCausesMakeTheWhole(Symptom symptom) {
        BatchModel batch = brew.begin("x");
        Tasting tasting =
                Tasting.of(symptom, batch.recipe().get(), batch.figures().get().orElseThrow());
        double sum =
                tasting.suspects().stream().mapToDouble(one -> one.cause().sharePercent()).sum();

        assertTrue(
                tasting.suspects().isEmpty() || Math.abs(sum - 100) < ROUNDED_PERCENT,
                symptom + " " + sum);
        assertFalse(Tasting.words(symptom).startsWith("batch."), "each symptom has its words");
    }

    @Test
    void theOpenOneCanBePutAwayButNotTheLast() {
        BatchModel first = brew.begin("a");
        BatchModel second = brew.begin("b");

        brew.close(second);
        brew.close(first);

        assertEquals(List.of(first), brew.batches());
        assertEquals(first, brew.open().get());
    }

    @Test
    void aNumberThatIsTakenIsReplaced() {
        brew.begin("a");

        assertEquals(2, brew.add(Recipe.toBegin("b"), Story.first(1)).story().get().number());
    }

    @Test
    void whatWasPutAwayIsBroughtBackToItsPlaceWithItsNumber() {
        BrewModel brew = new BrewModel(Runnable::run, Runnable::run);
        BatchModel first = brew.begin("First");
        BatchModel second = brew.begin("Second");
        brew.close(first);
        assertEquals(List.of(second), brew.batches());

        BatchModel third = brew.begin("Third");
        brew.bringBack();

        assertEquals(List.of(first, second, third), brew.batches());
        assertEquals(3, third.story().get().number());
        assertEquals(Optional.empty(), brew.away().get());
        brew.bringBack();
        assertEquals(3, brew.batches().size());
    }
}
