package coldwright.science.balance;

import static coldwright.science.mix.Shelf.*;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class BalanceTest {
    private static final double MET = Balance.MET;

    @Test
    void meetsThreeTargetsWithFourIngredients() {
        Balanced found =
                Balance.of(1000)
                        .using(HEAVY_CREAM, WHOLE_MILK, SKIM_MILK_POWDER, SUCROSE)
                        .aiming(14, Trait.FAT)
                        .aiming(10, Trait.MILK_SOLIDS_NOT_FAT)
                        .aiming(15, Trait.SUCROSE)
                        .solve();
        assertTrue(found.met(), () -> found.shortfalls().toString());
        assertEquals(14, found.mix().fatPercent(), MET);
        assertEquals(10, found.mix().milkSolidsNotFatPercent(), MET);
        assertEquals(1000, found.mix().massG(), 1e-3);
    }

    @Test
    void meetsAnIceShareAtServing() {
        Balanced found =
                Balance.of(1000)
                        .using(Choice.fixed(600, ORANGE_JUICE))
                        .using(WATER, SUCROSE, GLUCOSE)
                        .aiming(70, Trait.iceAt(-12))
                        .aiming(24, Trait.SUGARS)
                        .solve();
        assertTrue(found.met(), () -> found.shortfalls().toString());
        assertEquals(70, found.mix().freezingCurve().icePercentAt(-12), MET);
    }

    @Test
    void saysWhichTargetCannotBeMetAndByHowMuch() {
        Balanced found =
                Balance.of(100)
                        .using(WHOLE_MILK, SUCROSE)
                        .aiming(14, Trait.FAT)
                        .aiming(15, Trait.SUCROSE)
                        .solve();
        assertFalse(found.met());
        assertEquals(Trait.FAT, found.shortfalls().get(0).target().trait());
        assertTrue(found.shortfalls().get(0).missedBy() < -10);
    }

    @Test
    void refusesBoundsThatCannotAddUp() {
        Balance narrow = Balance.of(1000).using(new Choice(WATER, 0, 300));
        assertEquals(
                "the ingredients may weigh 0 to 300 g together, but the total is 1000 g. Widen a bound or change the total.",
                assertThrows(IllegalArgumentException.class, narrow::solve).getMessage());
    }
}
