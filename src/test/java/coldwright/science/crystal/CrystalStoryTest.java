package coldwright.science.crystal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.bath.IceAndSalt;
import coldwright.science.freezer.FreezePlan;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import org.junit.jupiter.api.Test;

import java.util.List;

class CrystalStoryTest {
    private static final Mix MIX =
            Mix.of(
                    Amount.grams(600, Shelf.WHOLE_MILK),
                    Amount.grams(200, Shelf.HEAVY_CREAM),
                    Amount.grams(140, Shelf.SUCROSE));

    /** A path given by 25 readings misses the bend at the freezing point. */
    private static final double SAMPLED_PATH_SHARE = 0.12;

    private static final CrystalStory DRAWN = CrystalStory.of(MIX).frozenBy(Method.BAG);

    @Test
    void motionGivesSmallerCrystalsThanAStillTub() {
        double still = CrystalStory.of(MIX).frozenBy(Method.STILL_TUB).meanUm().middle();
        double shaken = CrystalStory.of(MIX).frozenBy(Method.SHAKEN_TUB).meanUm().middle();
        assertTrue(DRAWN.meanUm().middle() < shaken);
        assertTrue(shaken < still);
    }

    @Test
    void theBagEndsWithHalfTheWaterAsIce() {
        assertEquals(50, DRAWN.icePercent(), 1);
    }

    @Test
    void hardeningIsIndependentOfHowSmallTheFirstSeedsWere() {
        FrozenMixTable frozenMixTable = FrozenMixTable.of(MIX);
        double end = frozenMixTable.temperatureAtIcePercent(50);
        CoolingPath path = CoolingPath.against(frozenMixTable, 5, end, -12, 35 * 60);
        CoolingPath rest = CoolingPath.against(frozenMixTable, end, -18, -19, 6 * 3600);
        double[] hard = new double[2];
        double[] wallShares = {0.2, 1};
        for (int i = 0; i < 2; i++) {
            GrowthIntegrator growthIntegrator =
                    new GrowthIntegrator(frozenMixTable, new GrowthIntegrator.Variant(1, 1, 1));
            CrystalPopulation drawn =
                    growthIntegrator.follow(
                            null,
                            path,
                            new GrowthIntegrator.Motion(3, wallShares[i], 0.001),
                            (s, crowd) -> {});
            CrystalPopulation hardened =
                    growthIntegrator.follow(
                            drawn, rest, GrowthIntegrator.Motion.STILL, (s, crowd) -> {});
            hard[i] = hardened.meanRadiusUm();
        }
        assertEquals(hard[0], hard[1], 0.05 * hard[0]);
    }

    @Test
    void blendingMakesThemSmallerAndHardeningBringsSomeBack() {
        CrystalStory old = DRAWN.storedAt(-18).forDays(30);
        CrystalStory blended = old.blended();
        CrystalStory again = blended.storedAt(-18).forDays(1);
        assertTrue(blended.meanUm().high() < old.meanUm().high());
        assertTrue(blended.meanUm().middle() < 0.8 * old.meanUm().middle());
        assertTrue(again.meanUm().middle() > blended.meanUm().middle());
        assertTrue(again.meanUm().middle() < old.meanUm().middle());
    }

    @Test
    void sizesAddUp() {
        CrystalSizes sizes = DRAWN.storedAt(-18).forDays(7).sizes();
        double number = 0;
        double volume = 0;
        double mean = 0;
        for (CrystalSizes.SizeClass c : sizes.classes()) {
            number += c.numberPercent();
            volume += c.volumePercent();
            mean += c.numberPercent() / 100 * (c.fromUm() + c.toUm()) / 2;
        }
        assertEquals(100, number, 0.1);
        assertEquals(100, volume, 0.1);
        assertEquals(sizes.meanUm().middle(), mean, 0.5);
        assertTrue(sizes.volumeMeanUm().middle() > sizes.meanUm().middle());
    }

    @Test
    void theTimelineRunsForwardAndEndsWhereTheStoryStands() {
        CrystalStory story = DRAWN.storedAt(-18).forDays(7).heatShock(-6, 2);
        List<CrystalMoment> moments = story.timeline();
        for (int i = 1; i < moments.size(); i++) {
            assertTrue(moments.get(i).hours() >= moments.get(i - 1).hours());
        }
        CrystalMoment last = moments.get(moments.size() - 1);
        assertEquals(-18, last.temperatureC(), 0.01);
        assertEquals(story.meanUm().middle(), last.meanUm().middle(), 0.3);
    }

    @Test
    void trendsAreCalledTrends() {
        CrystalStory story = DRAWN.storedAt(-18).forDays(7).heatShock(-6, 2).blended();
        assertEquals(4, story.notes().size());
        assertEquals(3, story.notes().stream().filter(n -> n.contains("a trend")).count());
        assertTrue(story.notes().stream().anyMatch(n -> n.contains("within a factor of 2")));
    }

    @Test
    void aBatchWithMuchRumStaysLiquidInTheBag() {
        Mix strong = MIX.with(Amount.grams(1500, Shelf.RUM_40));
        CrystalStory story = CrystalStory.of(strong).frozenBy(Method.BAG);
        assertEquals(0, story.meanUm().middle());
        assertEquals(Texture.NOT_FROZEN, story.texture());
        assertTrue(story.verdict().startsWith("not frozen"), story.verdict());
    }

    @Test
    void aFreezePlanGivesItsOwnCourse() {
        Mix batch = MIX.scaledTo(500);
        FreezePlan bag = FreezePlan.bag(batch, IceAndSalt.of(2000, 500));
        FreezePlan tub = FreezePlan.tub(batch, -18);
        CrystalStory kneaded = CrystalStory.of(batch).frozenAs(bag);
        CrystalStory still = CrystalStory.of(batch).frozenAs(tub);
        assertTrue(kneaded.meanUm().middle() < still.meanUm().middle());
        assertTrue(kneaded.icePercent() > 45 && kneaded.icePercent() < 60);
        assertTrue(still.icePercent() > 70);
        double hours = kneaded.timeline().get(kneaded.timeline().size() - 1).hours();
        assertEquals(bag.minutesToSoftServe(), hours * 60, 5);
    }

    @Test
    void aPlanThatNeverFreezesLeavesNoCrystals() {
        Mix strong = MIX.with(Amount.grams(2500, Shelf.RUM_40)).scaledTo(500);
        FreezePlan bag = FreezePlan.bag(strong, IceAndSalt.of(1000, 50));
        CrystalStory story = CrystalStory.of(strong).frozenAs(bag);
        assertEquals(Texture.NOT_FROZEN, story.texture());
    }

    @Test
    void readingsGiveTheSameAsThePathTheyCameFrom() {
        List<ThermometerReading> readings =
                DRAWN.timeline().stream()
                        .filter(m -> m.stage().equals("freezing"))
                        .map(m -> new ThermometerReading(m.hours() * 60, m.temperatureC()))
                        .toList();
        double again = CrystalStory.of(MIX).frozenAlong(Method.BAG, readings).meanUm().middle();
        assertEquals(DRAWN.meanUm().middle(), again, SAMPLED_PATH_SHARE * again);
    }

    @Test
    void storageThatMeltsItIsRefused() {
        IllegalArgumentException e =
                assertThrows(
                        IllegalArgumentException.class,
                        () ->
                                CrystalStory.of(MIX.with(Amount.grams(150, Shelf.SUCROSE)))
                                        .frozenBy(Method.BAG)
                                        .storedAt(-3));
        assertTrue(
                e.getMessage()
                        .matches(
                                "temperatureC is −3, where nearly all the ice of this mix melts. Choose one well below its freezing point of −\\d.* °C."),
                e.getMessage());
    }

    @Test
    void shockBeforeFreezingIsRefused() {
        IllegalStateException e =
                assertThrows(
                        IllegalStateException.class, () -> CrystalStory.of(MIX).heatShock(-6, 1));
        assertEquals(
                "a heat shock needs ice, and there is none yet; freeze it first, for example with frozenBy(Method.BAG)",
                e.getMessage());
    }

    @Test
    void textureFollowsTheThresholds() {
        assertEquals(Texture.CREAMY, Texture.of(18));
        assertEquals(Texture.SMOOTH, Texture.of(35));
        assertEquals(Texture.ON_THE_EDGE, Texture.of(52));
        assertEquals(Texture.ICY, Texture.of(80));
        assertThrows(IllegalArgumentException.class, () -> Texture.of(Double.NaN));
    }
}
