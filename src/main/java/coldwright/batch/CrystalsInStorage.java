package coldwright.batch;

import coldwright.science.Band;
import coldwright.science.crystal.CrystalStory;
import coldwright.science.crystal.Method;
import coldwright.science.crystal.Storage;
import coldwright.science.mix.Mix;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/**
 * The ice crystals of a batch from day to day.
 *
 * @param drawn at the end of freezing
 * @param night after hardening and one night in the freezer
 * @param fortnight after two weeks there, the freezer swinging by 1 °C
 * @param kept after it was kept as its file states, if it does
 * @param steady after as long in a freezer that did not swing, if its file states anything else
 */
public record CrystalsInStorage(
        CrystalStory drawn,
        CrystalStory night,
        CrystalStory fortnight,
        Optional<CrystalStory> kept,
        Optional<CrystalStory> steady) {
    private static final StorageConditions USUAL = new StorageConditions(14, 1, Optional.empty());

    /**
     * The crystals that are tasted alone, for those who try many batches.
     *
     * @param batch the recipe
     * @return mean size, µm, as in the whole reckoning; empty for a batch that has none
     * @throws BatchFileException if it can't be reckoned
     */
    public static Optional<Band> tastedUm(Recipe batch) throws BatchFileException {
        Mix mix = batch.mix();
        try {
            FreezeMethodSetup freezeMethodSetup = FreezeMethodSetup.of(batch, mix);
            double minutes = freezeMethodSetup.frozenMinutes(batch);
            CrystalStory drawn = drawn(mix, freezeMethodSetup.crystals(), minutes);
            return Optional.of(
                    batch.stored()
                            .flatMap(one -> ifAnyIceStays(one, drawn, storeC(batch)))
                            .orElseGet(
                                    () ->
                                            drawn.storedAt(storeC(batch))
                                                    .forHours(Storage.NIGHT_HOURS))
                            .meanUm());
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

    /** Its days, or nothing for a batch that keeps too little ice to have crystals. */
    static Optional<CrystalsInStorage> of(
            Recipe batch, Mix mix, FreezeMethodSetup freezeMethodSetup) {
        double freezerC = storeC(batch);
        try {
            CrystalStory drawn =
                    drawn(
                            mix,
                            freezeMethodSetup.crystals(),
                            freezeMethodSetup.frozenMinutes(batch));
            CompletableFuture<CrystalStory> fortnight =
                    CompletableFuture.supplyAsync(() -> USUAL.after(drawn, freezerC));
            CrystalStory night = drawn.storedAt(freezerC).forHours(Storage.NIGHT_HOURS);
            Optional<CrystalStory> kept =
                    batch.stored().flatMap(one -> ifAnyIceStays(one, drawn, freezerC));
            Optional<CrystalStory> steady =
                    batch.stored()
                            .filter(StorageConditions::disturbed)
                            .flatMap(one -> ifAnyIceStays(one.steady(), drawn, freezerC));
            return Optional.of(new CrystalsInStorage(drawn, night, fortnight.join(), kept, steady));
        } catch (IllegalArgumentException | IllegalStateException | CompletionException e) {
            return Optional.empty();
        }
    }

    /** Colder freezers keep crystals as the coldest does that is reckoned. */
    private static double storeC(Recipe batch) {
        return Math.max(Storage.COLDEST_C, batch.freezerC());
    }

    private static Optional<CrystalStory> ifAnyIceStays(
            StorageConditions storageConditions, CrystalStory drawn, double freezerC) {
        try {
            return Optional.of(storageConditions.after(drawn, freezerC));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /**
     * The crystals that are tasted.
     *
     * @return after it was kept as its file states, else (also if nearly all its ice melted then)
     *     after one night
     */
    public CrystalStory tasted() {
        return kept.orElse(night);
    }
}
