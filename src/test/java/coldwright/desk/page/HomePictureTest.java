package coldwright.desk.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.sensory.Firmness;

import javafx.scene.shape.Polygon;

import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Random;

class HomePictureTest {
    @Test
    void moreSugarMeansLessIceAndSofterSorbet() {
        HomeSorbet plain = HomeSorbet.with(HomeSorbet.LEAST_G);
        HomeSorbet sweet = HomeSorbet.with(HomeSorbet.MOST_G);
        assertEquals(Firmness.HARD, plain.firmness());
        assertTrue(sweet.firmness().compareTo(Firmness.SCOOPABLE) <= 0, sweet.firmness().name());
        for (double grams = 10; grams <= HomeSorbet.MOST_G; grams += 10) {
            double less = HomeSorbet.with(grams - 10).icePercent();
            assertTrue(HomeSorbet.with(grams).icePercent() < less, "at " + grams + " g");
        }
    }

    /** Ice has 1/0.92 of the volume of its water: without sugar nearly all the cup is ice. */
    @Test
    void iceByVolumeIsMoreThanItsWaterByWeight() {
        HomeSorbet plain = HomeSorbet.with(0);
        double byWeight = 0.883 * plain.icePercent();
        assertTrue(plain.iceVolumePercent() > byWeight && plain.iceVolumePercent() < 100);
    }

    @Test
    void wholeCellsTileTheField() {
        List<Polygon> cells = CrystalTiling.cells(300, 200, 1).stream().map(Polygon::new).toList();
        Random random = new Random(5);
        for (int i = 0; i < 2_000; i++) {
            double x = random.nextDouble() * 300;
            double y = random.nextDouble() * 200;
            assertEquals(
                    1, cells.stream().filter(cell -> cell.contains(x, y)).count(), x + " " + y);
        }
    }

    @Test
    void cellsCoverTheShareThatIsIce() {
        List<double[]> whole = CrystalTiling.cells(300, 200, 1);
        List<double[]> shrunk = CrystalTiling.cells(300, 200, 0.6);
        for (int i = 0; i < whole.size(); i++) {
            assertEquals(0.6 * area(whole.get(i)), area(shrunk.get(i)), 1e-9);
        }
    }

    private static double area(double[] corners) {
        double twice = 0;
        for (int i = 0; i < corners.length; i += 2) {
            int next = (i + 2) % corners.length;
            twice += corners[i] * corners[next + 1] - corners[next] * corners[i + 1];
        }
        return Math.abs(twice) / 2;
    }
}
