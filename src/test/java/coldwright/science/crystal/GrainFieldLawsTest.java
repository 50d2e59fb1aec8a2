package coldwright.science.crystal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.mix.Amount;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.List;

class GrainFieldLawsTest {
    /** A few crystals lie so close that their cells are smaller than they are, % of the field. */
    private static final double PACKING_PERCENT = 0.5;

    /** The story's table of ice against the freezing curve itself, % of the volume. */
    private static final double TABLE_PERCENT = 0.2;

    private static final double ROUNDING = 1e-9;
    private static final double ICE_KG_PER_L = 0.9167;

    private static final Mix MIX =
            Mix.of(
                    Amount.grams(600, Shelf.WHOLE_MILK),
                    Amount.grams(200, Shelf.CREAM_35),
                    Amount.grams(140, Shelf.SUCROSE));
    private static final CrystalStory FRESH = CrystalStory.of(MIX).frozenBy(Method.BAG);

    @ParameterizedTest
    @ValueSource(doubles = {-8, -12, -18, -30})
    void theAreaOfIceIsItsShareOfTheVolume(double temperatureC) {
        CrystalStory story = FRESH.storedAt(temperatureC).forDays(3);
        double width = GrainField.widthUmFor(story, 200);
        GrainField field = GrainField.of(story, width, 7);
        double one = 100.0 / field.grains().size() * field.iceAreaPercent() / 100;
        assertEquals(
                GrainField.iceVolumePercent(story),
                field.iceAreaPercent(),
                one / 2 + PACKING_PERCENT);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-8, -12, -18, -30})
    void theShareOfTheVolumeIsThatOfTheFreezingCurve(double temperatureC) {
        CrystalStory story = FRESH.storedAt(temperatureC).forDays(1);
        double iceL = MIX.freezingCurve().iceG(temperatureC) / ICE_KG_PER_L;
        double allL = MIX.massG() / MIX.densityKgPerL() + iceL * (1 - ICE_KG_PER_L);
        assertEquals(100 * iceL / allL, GrainField.iceVolumePercent(story), TABLE_PERCENT);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void theMeanSizeDrawnIsTheModelsAndASeedGivesTheSameField(long seed) {
        CrystalStory story = FRESH.storedAt(-18).forDays(5);
        GrainField field = GrainField.of(story, 700, seed);
        assertEquals(story.meanUm().middle(), field.meanUm(), ROUNDING);
        assertEquals(field, GrainField.of(story, 700, seed));
        assertNotEquals(field, GrainField.of(story, 700, seed + 1));
    }

    @Test
    void crystalsGrowFewerAsTheyGrowLargerAndTheLargestStay() {
        List<CrystalStory> stories =
                List.of(
                        FRESH.storedAt(-12).forDays(1),
                        FRESH.storedAt(-12).forDays(14),
                        FRESH.storedAt(-12).forDays(60));
        List<GrainField> course = GrainField.course(stories, 900, 4);
        for (int i = 1; i < course.size(); i++) {
            assertTrue(course.get(i).meanUm() > course.get(i - 1).meanUm());
            assertTrue(course.get(i).grains().size() < course.get(i - 1).grains().size());
        }
        assertEquals(
                course.get(0).iceAreaPercent(),
                course.get(2).iceAreaPercent(),
                2 * PACKING_PERCENT + 1);
    }

    @Test
    void noOutlineReachesIntoAnother() {
        GrainField field = GrainField.of(FRESH.storedAt(-12).forDays(3), 700, 11);
        for (Grain grain : field.grains()) {
            for (Grain other : field.grains()) {
                if (!grain.equals(other)) {
                    assertTrue(
                            grain.corners().stream().noneMatch(corner -> within(corner, other)),
                            grain + " reaches into " + other);
                }
            }
        }
    }

    @Test
    void withoutIceNothingIsSeen() {
        CrystalStory liquid = CrystalStory.of(MIX);
        assertEquals(0, GrainField.of(liquid, 500, 1).grains().size());
        assertEquals(0, GrainField.iceVolumePercent(liquid));
        assertEquals(
                "there is no ice to be seen; freeze it first with frozenBy(Method.BAG) or another",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> GrainField.widthUmFor(liquid, 100))
                        .getMessage());
    }

    /** Whether a point lies inside a convex outline, clear of its edge. */
    private static boolean within(Grain.Corner p, Grain grain) {
        List<Grain.Corner> corners = grain.corners();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < corners.size(); i++) {
            Grain.Corner a = corners.get(i);
            Grain.Corner b = corners.get((i + 1) % corners.size());
            double cross =
                    (b.xUm() - a.xUm()) * (p.yUm() - a.yUm())
                            - (b.yUm() - a.yUm()) * (p.xUm() - a.xUm());
            least = Math.min(least, cross);
        }
        return least > 1e-6;
    }
}
