package coldwright.batch;

import coldwright.science.crystal.CrystalStory;
import coldwright.science.crystal.Method;
import coldwright.science.crystal.Storage;
import coldwright.science.mix.Mix;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;

/** The ice crystals of a batch from day to day; each stay is calculated once, when it is asked. */
public final class CrystalsInStorage {
    private static final StorageConditions USUAL = new StorageConditions(14, 1, Optional.empty());

    private final CrystalStory drawn;
    private final double freezerC;
    private final Optional<StorageConditions> stored;
    private final Map<Stay, Optional<CrystalStory>> known = new ConcurrentHashMap<>();

    private enum Stay {
        NIGHT,
        FORTNIGHT,
        KEPT,
        STEADY
    }

    private CrystalsInStorage(Recipe batch, CrystalStory drawn) {
        this.drawn = drawn;
        // a colder freezer keeps crystals as the coldest does that is calculated
        this.freezerC = Math.max(Storage.COLDEST_C, batch.freezerC());
        this.stored = batch.stored();
    }

    /**
     * The crystals of a batch.
     *
     * @param batch the batch as its file states it
     * @return its crystals; empty for a batch that keeps too little ice to have any
     * @throws BatchFileException if it can't be analysed
     */
    public static Optional<CrystalsInStorage> of(Recipe batch) throws BatchFileException {
        Mix mix = batch.mix();
        try {
            return of(batch, mix, FreezeMethodSetup.of(batch, mix));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    static Optional<CrystalsInStorage> of(Recipe batch, Mix mix, FreezeMethodSetup setup) {
        Method method = setup.crystals();
        double minutes = setup.frozenMinutes(batch);
        CrystalStory story = CrystalStory.of(mix);
        try {
            CrystalStory drawn =
                    minutes >= 1 && minutes <= 4000
                            ? story.frozenBy(method, minutes)
                            : story.frozenBy(method);
            return Optional.of(new CrystalsInStorage(batch, drawn))
                    .filter(one -> one.kept().isPresent() || one.after(Stay.NIGHT).isPresent());
        } catch (IllegalArgumentException | IllegalStateException e) {
            return Optional.empty();
        }
    }

    /** All that is shown of them, calculated now, two stays at a time. */
    CrystalsInStorage calculated() {
        CompletableFuture<Void> aside = CompletableFuture.runAsync(this::fortnight);
        after(Stay.NIGHT);
        steady();
        aside.join();
        return this;
    }

    private Optional<CrystalStory> after(Stay stay) {
        return known.computeIfAbsent(stay, this::calculate);
    }

    private Optional<CrystalStory> calculate(Stay stay) {
        try {
            return switch (stay) {
                case NIGHT -> Optional.of(drawn.storedAt(freezerC).forHours(Storage.NIGHT_HOURS));
                case FORTNIGHT -> Optional.of(USUAL.after(drawn, freezerC));
                case KEPT -> stored.map(one -> one.after(drawn, freezerC));
                case STEADY ->
                        stored.filter(StorageConditions::disturbed)
                                .map(one -> one.steady().after(drawn, freezerC));
            };
        } catch (IllegalArgumentException | IllegalStateException e) {
            return Optional.empty();
        }
    }

    /** At the end of freezing. */
    public CrystalStory drawn() {
        return drawn;
    }

    /** After hardening and one night in the freezer. */
    public CrystalStory night() {
        return after(Stay.NIGHT).orElseThrow();
    }

    /** After two weeks at ±1 °C; empty if nearly all its ice would melt in them. */
    public Optional<CrystalStory> fortnight() {
        return after(Stay.FORTNIGHT);
    }

    /** Stored as its file states; empty if it states nothing, or nearly all ice would melt. */
    public Optional<CrystalStory> kept() {
        return after(Stay.KEPT);
    }

    /** After as long in a steady freezer, if its file states any other. */
    public Optional<CrystalStory> steady() {
        return after(Stay.STEADY);
    }

    /**
     * The crystals that are tasted.
     *
     * @return after it was stored as its file states, else (also if nearly all its ice melted then)
     *     after one night
     */
    public CrystalStory tasted() {
        return kept().orElseGet(this::night);
    }
}
