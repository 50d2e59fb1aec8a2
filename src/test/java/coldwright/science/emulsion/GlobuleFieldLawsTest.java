package coldwright.science.emulsion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import org.junit.jupiter.api.Test;

class GlobuleFieldLawsTest {
    /** What is lost within the parts that the sizes are cut into, from a hundred globules on. */
    private static final double SAMPLING_SHARE = 0.04;

    private static final double ROUNDING = 1e-6;

    private static final GlobuleSizes RAW = GlobuleSizes.rawMilk();

    @Cases(60)
    void theFatInViewIsTheMixsToHalfAGlobule(Draw draw) {
        double fatVolumePercent = draw.doubleIn(0, 60);
        double sauterUm = draw.doubleIn(0.6, 8);
        double spread = draw.doubleIn(0.1, 0.7);
        long seed = draw.anyLong();
        GlobuleSizes sizes = new GlobuleSizes(sauterUm, spread);
        Slide slide = new Slide(12 * sauterUm, 8 * sauterUm, 2);
        GlobuleField field = GlobuleField.of(sizes, fatVolumePercent, slide, seed);
        double mean =
                Math.PI / 6 * Math.pow(sizes.numberMedianUm(), 3) * Math.exp(4.5 * spread * spread);
        double halfGlobule = 100 * 0.5 * mean / slide.volumeUm3();
        assertEquals(fatVolumePercent, field.fatVolumePercent(), halfGlobule + ROUNDING);
    }

    @Cases(30)
    void theMeanSizesDrawnAreTheModels(Draw draw) {
        double fatVolumePercent = draw.doubleIn(8, 40);
        double sauterUm = draw.doubleIn(0.6, 4);
        double spread = draw.doubleIn(0.1, 0.5);
        long seed = draw.anyLong();
        GlobuleSizes sizes = new GlobuleSizes(sauterUm, spread);
        Slide slide = new Slide(30 * sauterUm, 20 * sauterUm, 2 * sauterUm);
        GlobuleField field = GlobuleField.of(sizes, fatVolumePercent, slide, seed);
        assertTrue(field.globules().size() > 100);
        assertEquals(1, field.numberMeanUm() / sizes.numberMeanUm(), SAMPLING_SHARE);
        assertEquals(1, field.sauterDiameterUm() / sauterUm, SAMPLING_SHARE);
    }

    @Cases(20)
    void everyMiddleLiesInTheFieldAndASeedGivesTheSameField(Draw draw) {
        long seed = draw.anyLong();
        GlobuleField field = GlobuleField.of(RAW, 10, Slide.USUAL, seed);
        assertEquals(field, GlobuleField.of(RAW, 10, Slide.USUAL, seed));
        assertNotEquals(field, GlobuleField.of(RAW, 10, Slide.USUAL, seed + 1));
        for (Globule globule : field.globules()) {
            assertTrue(globule.xUm() >= 0 && globule.xUm() <= Slide.USUAL.widthUm());
            assertTrue(globule.yUm() >= 0 && globule.yUm() <= Slide.USUAL.heightUm());
        }
    }

    @Cases(20)
    void wholeMilkIsThinEnoughThatNoGlobulesOverlap(Draw draw) {
        long seed = draw.anyLong();
        var globules = GlobuleField.of(RAW, 4, Slide.USUAL, seed).globules();
        for (int i = 0; i < globules.size(); i++) {
            for (int k = 0; k < i; k++) {
                Globule a = globules.get(i);
                Globule b = globules.get(k);
                assertTrue(
                        Math.hypot(a.xUm() - b.xUm(), a.yUm() - b.yUm())
                                >= a.radiusUm() + b.radiusUm());
            }
        }
    }

    @Cases(40)
    void theClumpedFatInViewIsTheModelsToOneGlobule(Draw draw) {
        double clumpedPercent = draw.doubleIn(0, 100);
        long seed = draw.anyLong();
        GlobuleField fresh = GlobuleField.of(RAW, 12, Slide.USUAL, seed);
        GlobuleField after = Clumping.of(fresh, seed).at(clumpedPercent);
        double largest = fresh.globules().get(0).volumeUm3();
        double all = fresh.globules().stream().mapToDouble(Globule::volumeUm3).sum();
        assertEquals(clumpedPercent, after.clumpedPercent(), 100 * largest / all / 2 + ROUNDING);
        assertEquals(fresh.fatVolumePercent(), after.fatVolumePercent(), ROUNDING);
    }

    @Cases(20)
    void whatHasStuckStaysStuckAndInItsPlace(Draw draw) {
        long seed = draw.anyLong();
        Clumping clumping = Clumping.of(GlobuleField.of(RAW, 12, Slide.USUAL, seed), seed);
        var before = clumping.at(30).globules();
        var after = clumping.at(60).globules();
        for (int i = 0; i < before.size(); i++) {
            if (before.get(i).clumped()) {
                assertEquals(before.get(i), after.get(i));
            }
        }
    }

    @Test
    void theFatByVolumeIsThatOfTheMix() {
        Mix milk = Mix.of(Amount.grams(1000, Shelf.WHOLE_MILK));
        assertEquals(
                Churning.of(milk, 5).fatVolumePercent(),
                GlobuleField.fatVolumePercent(milk),
                ROUNDING);
        GlobuleField none =
                GlobuleField.of(Mix.of(Amount.grams(100, Shelf.WATER)), RAW, Slide.USUAL, 1);
        assertEquals(0, none.globules().size());
        assertEquals(0, none.clumpedPercent());
        assertEquals(0, Clumping.of(none, 1).at(50).globules().size());
    }

    @Test
    void refusesAFieldTooFull() {
        assertEquals(
                "the field would have 538685 globules; at most 20000 are drawn. Take a smaller field.",
                assertThrows(
                                IllegalArgumentException.class,
                                () ->
                                        GlobuleField.of(
                                                GlobuleSizes.homogenised(),
                                                10,
                                                new Slide(1000, 500, 2),
                                                1))
                        .getMessage());
    }
}
