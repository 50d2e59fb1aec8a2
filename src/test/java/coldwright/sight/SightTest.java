package coldwright.sight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Drawing;
import coldwright.figure.FigureDescription;
import coldwright.figure.Piece;
import coldwright.figure.Tint;
import coldwright.science.bath.IceAndSalt;
import coldwright.science.crystal.CrystalStory;
import coldwright.science.crystal.Method;
import coldwright.science.emulsion.Churning;
import coldwright.science.emulsion.GlobuleSizes;
import coldwright.science.freezer.FreezePlan;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import org.junit.jupiter.api.Test;

import java.util.List;

class SightTest {
    /** Fat of the largest globule may be on either side of the share, % of the fat. */
    private static final double ONE_GLOBULE_PERCENT = 10;

    /** Outlines cut at the edge of the field come in again at the other side, µm². */
    private static final double AREA_SHARE = 1e-6;

    private static final Mix MILK = Mix.of(Amount.grams(1000, Shelf.WHOLE_MILK));
    private static final Mix CREAM = Mix.of(Amount.grams(500, Shelf.CREAM_35));
    private static final Mix MIX =
            Mix.of(
                    Amount.grams(500, Shelf.WHOLE_MILK),
                    Amount.grams(150, Shelf.CREAM_35),
                    Amount.grams(120, Shelf.SUCROSE));

    @Test
    void homogenisingMakesManySmallGlobulesOfTheSameFatInTheSameField() {
        Drawing drawing = Microscope.homogenising(MILK);
        double raw = fatOf(drawing, 0, Tint.Role.FAT);
        double fine = fatOf(drawing, 1, Tint.Role.FAT);
        assertEquals(1, fine / raw, 0.02, "half a globule of the raw milk is 1 % of 53");
        assertTrue(pieces(drawing, 1).size() > 30 * pieces(drawing, 0).size());
        assertEquals(
                Microscope.globules(MILK).moments().get(0).pieces(),
                drawing.moments().get(0).pieces());
    }

    @Test
    void whippingEndsAtButterWithTheModelsShareClumped() {
        Drawing drawing = Microscope.whipping(CREAM, 4, Churning.Motion.WHISK);
        Churning churning = Churning.of(CREAM, 4);
        for (int i = 0; i < drawing.moments().size(); i++) {
            double clumped = fatOf(drawing, i, Tint.Role.CLUMPED_FAT);
            double all = clumped + fatOf(drawing, i, Tint.Role.FAT);
            double minutes = drawing.moments().get(i).time();
            assertEquals(
                    churning.clumpedPercent(minutes, Churning.Motion.WHISK).middle(),
                    100 * clumped / all,
                    ONE_GLOBULE_PERCENT);
        }
        Drawing.Moment last = drawing.moments().get(drawing.moments().size() - 1);
        assertEquals(churning.minutesToButter(Churning.Motion.WHISK).middle(), last.time(), 1e-9);
        assertEquals("65 % of the fat clumped", last.label());
    }

    @Test
    void globulesTooManyForTheFieldAreSeenInASmallerOne() {
        Churning fine = Churning.of(MIX, 4).withFineGlobules();
        Drawing drawing = Microscope.whipping(MIX, fine, Churning.Motion.WHISK);
        assertTrue(drawing.field().width() < 100 && drawing.size() < 30_000);
        assertTrue(drawing.moments().stream().allMatch(one -> one.time() <= 120));
    }

    @Test
    void keptCrystalsGrowFewerOnSyrupUnderABarOf50Um() {
        CrystalStory fresh = CrystalStory.of(MIX).frozenBy(Method.BAG);
        Drawing drawing = Microscope.crystals(fresh.storedAt(-12), 28);
        assertEquals(Tint.Role.SYRUP, drawing.ground());
        assertEquals(new Drawing.ScaleBar(50, "50 µm"), drawing.bar());
        assertEquals(0, drawing.moments().get(0).time());
        assertTrue(drawing.moments().get(12).time() >= 28);
        assertTrue(pieces(drawing, 12).size() < pieces(drawing, 1).size());
        assertTrue(FigureDescription.describe(drawing).contains("First, 0 d: −4 °C"));
    }

    @Test
    void whatLeavesTheFieldComesInAtTheOtherSide() {
        CrystalStory fresh = CrystalStory.of(MIX).frozenBy(Method.BAG);
        Drawing drawing = Microscope.crystals(fresh);
        double seen = 0;
        for (Piece piece : pieces(drawing, 0)) {
            seen += areaWithin((Piece.Outline) piece, drawing.field());
        }
        double share = 100 * seen / (drawing.field().width() * drawing.field().height());
        double ice = coldwright.science.crystal.GrainField.iceVolumePercent(fresh);
        assertEquals(ice, share, ice * AREA_SHARE + 1, "half a crystal of 110 is 0.2 %");
    }

    @Test
    void theBagIsSymmetricalAndItsColoursLieWithinTheScale() {
        Drawing drawing = BagAcross.of(FreezePlan.bag(MIX, IceAndSalt.of(2000, 500)));
        Drawing.TemperatureScale scale = drawing.warmth().orElseThrow();
        double height = drawing.field().height();
        for (Drawing.Moment moment : drawing.moments()) {
            List<Piece.Band> bands =
                    moment.pieces().stream()
                            .filter(Piece.Band.class::isInstance)
                            .map(Piece.Band.class::cast)
                            .toList();
            for (Piece.Band band : bands) {
                assertTrue(
                        bands.stream()
                                .anyMatch(
                                        other ->
                                                Math.abs(other.from() - (height - band.to()))
                                                        < 1e-9));
                if (band.upper().role() == Tint.Role.WARMTH) {
                    assertTrue(band.upper().temperatureC() >= scale.coldestC());
                    assertTrue(band.upper().temperatureC() <= scale.warmestC() + 0.1);
                }
            }
        }
    }

    @Test
    void theSameCallGivesTheSameDrawing() {
        assertEquals(
                Microscope.globules(MILK, GlobuleSizes.homogenised()),
                Microscope.globules(MILK, GlobuleSizes.homogenised()));
    }

    @Test
    void thereMustBeIceToBeSeen() {
        assertEquals(
                "there is no ice to be seen; freeze it first with frozenBy(Method.BAG) or another",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> Microscope.crystals(CrystalStory.of(MIX)))
                        .getMessage());
    }

    private static List<Piece> pieces(Drawing drawing, int moment) {
        return drawing.moments().get(moment).pieces();
    }

    private static double fatOf(Drawing drawing, int moment, Tint.Role role) {
        return pieces(drawing, moment).stream()
                .map(Piece.Disc.class::cast)
                .filter(disc -> disc.tint().role() == role)
                .mapToDouble(disc -> Math.pow(disc.radius(), 3))
                .sum();
    }

    /** Counts points of a fine grid, which needs no clipping of its own. */
    private static double areaWithin(Piece.Outline outline, Drawing.Field field) {
        int steps = 400;
        double dx = field.width() / steps;
        double dy = field.height() / steps;
        int inside = 0;
        for (int i = 0; i < steps; i++) {
            for (int k = 0; k < steps; k++) {
                if (holds(outline, (i + 0.5) * dx, (k + 0.5) * dy)) {
                    inside++;
                }
            }
        }
        return inside * dx * dy;
    }

    private static boolean holds(Piece.Outline outline, double x, double y) {
        boolean inside = false;
        int last = outline.size() - 1;
        for (int i = 0; i < outline.size(); last = i++) {
            double yi = outline.y().at(i);
            double yl = outline.y().at(last);
            double xi = outline.x().at(i);
            if ((yi > y) != (yl > y)
                    && x < (outline.x().at(last) - xi) * (y - yi) / (yl - yi) + xi) {
                inside = !inside;
            }
        }
        return inside;
    }
}
