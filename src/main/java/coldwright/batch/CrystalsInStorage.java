package coldwright.batch;

import coldwright.science.crystal.CrystalStory;
import coldwright.science.crystal.Method;
import coldwright.science.crystal.Storage;
import coldwright.science.mix.Mix;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;

/** The ice crystals of a batch in storage; each story is calculated once, at its first use. */
public final class CrystalsInStorage {
    static final StorageConditions USUAL = new StorageConditions(14, 1, Optional.empty());

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
        // colder than the model's range, crystals are calculated at its lowest temperature
        this.freezerC = Math.max(Storage.COLDEST_C, batch.freezerC());
        this.stored = batch.stored();
    }

    /** The crystals of a recipe; empty if too little ice remains frozen. */
    static Optional<CrystalsInStorage> of(Recipe batch, Mix mix, FreezeMethodSetup setup) {
        Method method = batch.method();
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

    /** Calculates all stories now, two at a time. */
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

    /** At draw, the end of freezing. */
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

    /** Stored as the recipe states; empty if it states nothing, or nearly all ice would melt. */
    public Optional<CrystalStory> kept() {
        return after(Stay.KEPT);
    }

    /** Stored as long at a steady temperature; empty unless the recipe states another storage. */
    public Optional<CrystalStory> steady() {
        return after(Stay.STEADY);
    }

    /**
     * The crystals when tasted.
     *
     * @return after the stated storage; without one, or if nearly all ice melted, after one night
     */
    public CrystalStory tasted() {
        return kept().orElseGet(this::night);
    }
}
