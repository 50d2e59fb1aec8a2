package coldwright.science.balance;

import static coldwright.science.mix.Amount.grams;
import static coldwright.science.mix.Shelf.CREAM_35;
import static coldwright.science.mix.Shelf.GLUCOSE;
import static coldwright.science.mix.Shelf.HONEY;
import static coldwright.science.mix.Shelf.ORANGE_JUICE;
import static coldwright.science.mix.Shelf.RUM_40;
import static coldwright.science.mix.Shelf.SALT;
import static coldwright.science.mix.Shelf.SKIM_MILK_POWDER;
import static coldwright.science.mix.Shelf.SUCROSE;
import static coldwright.science.mix.Shelf.WATER;
import static coldwright.science.mix.Shelf.WHOLE_MILK;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.mix.Ingredient;
import coldwright.science.mix.Mix;
import coldwright.science.sensory.Firmness;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.List;

class SmallestChangeTest {
    /** What the solver may be off, g. */
    private static final double SAME_G = 1e-3;

    private static final List<Ingredient> AT_HAND = List.of(GLUCOSE, WATER, SUCROSE);

    private static final Mix BRICK = Mix.of(grams(600, ORANGE_JUICE), grams(40, SUCROSE));

    @Test
    void mendsABrickAndEveryMendGrantsTheWish() {
        Wish wish = Wish.scoopableAt(-12);
        List<BatchFix> mends = SmallestChange.smallest(99, BRICK, wish, List.of(GLUCOSE, RUM_40));
        assertFalse(mends.isEmpty());
        for (BatchFix batchFix : mends) {
            assertTrue(wish.grantedBy(batchFix.after()), batchFix::toString);
            assertTrue(batchFix.valueBefore() > Firmness.SCOOPABLE_MOST_ICE_PERCENT);
        }
    }

    @Test
    void ranksTheSmallestFirstAndHalfOfItIsNotEnough() {
        Wish wish = Wish.scoopableAt(-12);
        List<BatchFix> mends = SmallestChange.smallest(99, BRICK, wish, List.of(GLUCOSE, RUM_40));
        assertTrue(mends.size() > 1, mends::toString);
        for (int i = 1; i < mends.size(); i++) {
            assertTrue(mends.get(i - 1).movedG() <= mends.get(i).movedG());
        }
        BatchFix first = mends.get(0);
        AmountChange amountChange = first.changes().get(0);
        assertFalse(
                wish.grantedBy(
                        BRICK.with(grams(amountChange.massG() / 2, amountChange.ingredient()))),
                first::toString);
    }

    @Test
    void leavesAGoodBatchAlone() {
        Mix good = SmallestChange.smallest(99, BRICK, Wish.scoopableAt(-12), List.of()).get(0).after();
        List<BatchFix> mends = SmallestChange.smallest(99, good, Wish.scoopableAt(-12), List.of(WATER));
        assertEquals(1, mends.size());
        assertTrue(mends.get(0).changes().isEmpty());
        assertEquals(
                "nothing to change: it is scoopable at −12 °C as it is", mends.get(0).toString());
    }

    @Test
    void offersNoAlcoholNoNewAllergenAndLittleSalt() {
        List<BatchFix> found =
                SmallestChange.smallest(
                        99,
                        BRICK,
                        Wish.scoopableAt(-12),
                        List.of(RUM_40, SKIM_MILK_POWDER, HONEY, SALT, GLUCOSE));
        assertFalse(found.isEmpty());
        for (BatchFix one : found) {
            Ingredient moved = one.changes().get(0).ingredient();
            assertFalse(List.of(RUM_40, SKIM_MILK_POWDER, HONEY).contains(moved), one::toString);
            assertTrue(one.after().saltPercent() <= 0.5, one::toString);
        }
    }

    @Test
    void saysNothingWhereNothingAtHandHelps() {
        Mix water = Mix.of(grams(100, WATER));
        assertEquals(List.of(), SmallestChange.smallest(99, water, Wish.scoopableAt(-12), List.of()));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 10})
    void theFewSmallestAreTheFirstOfAll(int count) {
        Mix rich =
                Mix.of(
                        grams(400, WHOLE_MILK),
                        grams(300, CREAM_35),
                        grams(60, SUCROSE),
                        grams(80, RUM_40));
        List<Wish> wishes =
                List.of(
                        Wish.scoopableAt(-12),
                        Wish.within("leaner", Trait.FAT, 4, 8),
                        Wish.within("sweeter", Trait.SWEETNESS, 16, 20));
        for (Mix mix : List.of(BRICK, rich)) {
            for (Wish wish : wishes) {
                List<BatchFix> all = SmallestChange.smallest(99, mix, wish, AT_HAND);
                List<BatchFix> few = SmallestChange.smallest(count, mix, wish, AT_HAND);
                assertEquals(Math.min(count, all.size()), few.size(), wish.words());
                for (int i = 0; i < few.size(); i++) {
                    assertEquals(all.get(i).movedG(), few.get(i).movedG(), SAME_G, wish.words());
                    assertTrue(wish.grantedBy(few.get(i).after()));
                }
            }
        }
    }
}
