package coldwright.science.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.mix.Allergen;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Component;
import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

class SuggestionLimitsTest {
    private static final double MOST_SALT_PERCENT = 0.5;
    private static final double ROUNDING = 1e-6;
    private static final int MIXES = 8;

    private static final List<Ingredient> SHELF = List.copyOf(Shelf.all());

    /** Of animals, and on no list of allergens. */
    private static final Set<String> ANIMAL = Set.of("honey", "gelatine", "mono- and diglycerides");

    /** Random batches of three to seven things, everything on the shelf at hand. */
    @ParameterizedTest
    @ValueSource(longs = {20_250_117L, 4L, 31_337L})
    void noSearchLeavesTheLimits(long seed) {
        Random random = new Random(seed);
        int found = 0;
        for (int i = 0; i < MIXES; i++) {
            Mix was = random(random);
            for (Wish wish :
                    List.of(
                            Wish.scoopableAt(-18),
                            Wish.within("with protein", Trait.PROTEIN, 3, 6),
                            Wish.within("stabilised", Trait.STABILISER, 0.2, 0.5),
                            Wish.within("salted", Trait.SALT, 0.9, 1.5))) {
                for (BatchFix batchFix : SmallestChange.smallest(12, was, wish, SHELF)) {
                    found += batchFix.changes().isEmpty() ? 0 : 1;
                    requireWithin(was, batchFix, seed);
                }
            }
        }
        int all = found;
        assertTrue(found > MIXES, () -> "only " + all + " mends; seed " + seed);
    }

    private static void requireWithin(Mix was, BatchFix batchFix, long seed) {
        Mix is = batchFix.after();
        String says = "%s to %s; seed %d".formatted(batchFix, was, seed);
        EnumSet<Allergen> more = EnumSet.noneOf(Allergen.class);
        more.addAll(is.allergens());
        more.removeAll(was.allergens());
        assertEquals(EnumSet.noneOf(Allergen.class), more, says);
        assertTrue(
                is.saltPercent() <= Math.max(MOST_SALT_PERCENT, was.saltPercent()) + ROUNDING,
                says);
        assertTrue(alcoholG(is) <= alcoholG(was) + ROUNDING, says);
        for (Amount amount : is.amounts()) {
            String name = amount.ingredient().name();
            assertTrue(!ANIMAL.contains(name) || was.massG(amount.ingredient()) > 0, says);
        }
    }

    private static double alcoholG(Mix mix) {
        return mix.alcoholPercent() / 100 * mix.massG();
    }

    private static Mix random(Random random) {
        List<Amount> amounts = new ArrayList<>();
        amounts.add(Amount.grams(200 + random.nextInt(500), Shelf.WATER));
        amounts.add(Amount.grams(20 + random.nextInt(80), Shelf.SUCROSE));
        int more = 1 + random.nextInt(5);
        for (int i = 0; i < more; i++) {
            amounts.add(
                    Amount.grams(1 + random.nextInt(100), SHELF.get(random.nextInt(SHELF.size()))));
        }
        return Mix.of(amounts);
    }

    @Test
    void saltIsCountedWithTheOtherChloridesAndNeverSwappedIn() {
        Mix brick =
                Mix.of(
                        Amount.grams(600, Shelf.BLOOD_ORANGE_JUICE),
                        Amount.grams(40, Shelf.SUCROSE),
                        Amount.grams(0.5, Shelf.SALT));
        List<BatchFix> mends =
                SmallestChange.ranked(
                        brick,
                        Wish.scoopableAt(-12),
                        List.of(Shelf.POTASSIUM_CHLORIDE, Shelf.CALCIUM_CHLORIDE, Shelf.GLUCOSE));
        assertTrue(mends.size() > 1, mends::toString);
        for (BatchFix batchFix : mends) {
            double salts =
                    batchFix.after().saltPercent()
                            + batchFix.after().composition().percent(Component.POTASSIUM_CHLORIDE)
                            + batchFix.after().composition().percent(Component.CALCIUM_CHLORIDE);
            assertTrue(salts <= MOST_SALT_PERCENT, batchFix::toString);
        }
    }

    @Test
    void whatIsSaltyAlreadyMayStillBeSoftenedBySugar() {
        Mix salty =
                Mix.of(
                        Amount.grams(600, Shelf.WHOLE_MILK),
                        Amount.grams(40, Shelf.SUCROSE),
                        Amount.grams(7, Shelf.SALT));
        List<BatchFix> mends =
                SmallestChange.ranked(salty, Wish.scoopableAt(-18), List.of(Shelf.GLUCOSE));
        assertTrue(
                mends.stream().anyMatch(batchFix -> batchFix.toString().contains("glucose")),
                mends::toString);
        for (BatchFix batchFix : mends) {
            assertTrue(
                    batchFix.after().saltPercent() <= salty.saltPercent() + ROUNDING,
                    batchFix::toString);
        }
    }
}
