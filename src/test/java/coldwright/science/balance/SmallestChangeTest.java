package coldwright.science.balance;

import static coldwright.science.mix.Amount.grams;
import static coldwright.science.mix.Shelf.CREAM_35;
import static coldwright.science.mix.Shelf.GLUCOSE;
import static coldwright.science.mix.Shelf.ORANGE_JUICE;
import static coldwright.science.mix.Shelf.RUM_40;
import static coldwright.science.mix.Shelf.SUCROSE;
import static coldwright.science.mix.Shelf.WATER;
import static coldwright.science.mix.Shelf.WHOLE_MILK;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.mix.Mix;

import org.junit.jupiter.api.Test;

import java.util.List;

class SmallestChangeTest {
    private static final Mix BRICK = Mix.of(grams(600, ORANGE_JUICE), grams(40, SUCROSE));

    @Test
    void mendsABrickAndEveryMendGrantsTheWish() {
        Wish wish = Wish.scoopableAt(-12);
        List<Mend> mends = SmallestChange.ranked(BRICK, wish, List.of(GLUCOSE, RUM_40));
        assertFalse(mends.isEmpty());
        for (Mend mend : mends) {
            assertTrue(wish.grantedBy(mend.after()), mend::toString);
            assertTrue(mend.valueBefore() > Wish.SCOOPABLE_MOST_ICE_PERCENT);
        }
    }

    @Test
    void ranksTheSmallestFirstAndHalfOfItIsNotEnough() {
        Wish wish = Wish.scoopableAt(-12);
        List<Mend> mends = SmallestChange.ranked(BRICK, wish, List.of(GLUCOSE, RUM_40));
        for (int i = 1; i < mends.size(); i++) {
            assertTrue(mends.get(i - 1).movedG() <= mends.get(i).movedG());
        }
        Mend first = mends.get(0);
        Change change = first.changes().get(0);
        assertFalse(
                wish.grantedBy(BRICK.with(grams(change.massG() / 2, change.ingredient()))),
                first::toString);
    }

    @Test
    void leavesAGoodBatchAlone() {
        Mix good = SmallestChange.ranked(BRICK, Wish.scoopableAt(-12), List.of()).get(0).after();
        List<Mend> mends = SmallestChange.ranked(good, Wish.scoopableAt(-12), List.of(WATER));
        assertEquals(1, mends.size());
        assertTrue(mends.get(0).changes().isEmpty());
        assertEquals(
                "nothing to change: it is scoopable at −12 °C as it is", mends.get(0).toString());
    }

    @Test
    void takesAlcoholOutAndKeepsTheFirmness() {
        Mix mix =
                Mix.of(
                        grams(400, WHOLE_MILK),
                        grams(200, CREAM_35),
                        grams(120, SUCROSE),
                        grams(30, RUM_40));
        Wish wish = Wish.noAlcohol(mix, -18);
        List<Mend> mends = SmallestChange.ranked(mix, wish, List.of(GLUCOSE, RUM_40));
        assertFalse(mends.isEmpty());
        for (Mend mend : mends) {
            assertEquals(0, mend.after().alcoholPercent());
            assertEquals(mend.valueBefore(), mend.valueAfter(), 0.5);
        }
    }

    @Test
    void saysNothingWhereNothingAtHandHelps() {
        Mix water = Mix.of(grams(100, WATER));
        assertEquals(List.of(), SmallestChange.ranked(water, Wish.scoopableAt(-12), List.of()));
    }
}
