package coldwright.batch;

import coldwright.science.Band;
import coldwright.science.crystal.CrystalStory;
import coldwright.science.crystal.Method;
import coldwright.science.mix.Mix;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/**
 * The ice crystals of a batch on three days.
 *
 * @param drawn at the end of freezing
 * @param night after hardening and one night in the freezer
 * @param fortnight after two weeks there, the freezer swinging by 1 °C
 */
public record Keeping(CrystalStory drawn, CrystalStory night, CrystalStory fortnight) {
    private static final double NIGHT_HOURS = 10;
    private static final double FORTNIGHT_DAYS = 14;
    private static final double SWING_C = 1;

    /**
     * The crystals after one night alone, for those who try many batches.
     *
     * @param batch the batch as its file states it
     * @return mean size, µm, as in the whole reckoning; empty for a batch that has none
     * @throws BatchFault if it can't be reckoned
     */
    public static Optional<Band> nightUm(BatchFile batch) throws BatchFault {
        Mix mix = batch.mix();
        try {
            Freezing freezing = Freezing.of(batch, mix);
            double minutes = freezing.frozenMinutes(batch);
            CrystalStory drawn = drawn(mix, freezing.crystals(), minutes);
            return Optional.of(drawn.storedAt(batch.freezerC()).forHours(NIGHT_HOURS).meanUm());
        } catch (IllegalArgumentException | IllegalStateException e) {
            return Optional.empty();
        }
    }

    private static CrystalStory drawn(Mix mix, Method method, double minutes) {
        CrystalStory story = CrystalStory.of(mix);
        return minutes >= 1 && minutes <= 4000
                ? story.frozenBy(method, minutes)
                : story.frozenBy(method);
    }

    /** The three days, or nothing for a batch that keeps too little ice to have crystals. */
    static Optional<Keeping> of(Mix mix, Method method, double minutes, double freezerC) {
        try {
            CrystalStory drawn = drawn(mix, method, minutes);
            CompletableFuture<CrystalStory> fortnight =
                    CompletableFuture.supplyAsync(
                            () ->
                                    drawn.storedAt(freezerC)
                                            .swinging(SWING_C)
                                            .forDays(FORTNIGHT_DAYS));
            CrystalStory night = drawn.storedAt(freezerC).forHours(NIGHT_HOURS);
            return Optional.of(new Keeping(drawn, night, fortnight.join()));
        } catch (IllegalArgumentException | IllegalStateException | CompletionException e) {
            return Optional.empty();
        }
    }
}
