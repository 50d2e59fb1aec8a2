package coldwright.science.freezer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldwright.science.thermal.EnthalpyTable;
import coldwright.science.thermal.Phase;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The march in time against solutions that are exact. */
class LayersExactTest {
    /** The goal set for the project: half a per cent. */
    private static final double GOAL = 0.005;

    /** The last digit that the references give. */
    private static final double LAST_DIGIT = 1e-6;

    /** Nearly no resistance between wall and surface. */
    private static final double PERFECT_CONTACT = 1e6;

    private static final Phase ICE = new Phase(2.22, 2.050);
    private static final StefanNeumann EXACT =
            new StefanNeumann(ICE, 917, new StefanNeumann.Drive(20, 333.5));

    @ParameterizedTest
    @CsvFileSource(resources = "/published/stefan-neumann-front.csv")
    void frontOfFreezingWater(double seconds, double frontMm) {
        assertEquals(frontMm, EXACT.frontMm(seconds), 1e-5 * frontMm);
        double thicknessMm = 80;
        var table = EnthalpyTable.pure(ICE, new Phase(0.56, 4.2), 0, 333.5);
        var body = new Layers(table, 917, new Layers.Span(thicknessMm / 1000, 1), 200);
        body.fill(0);
        var wall = new Layers.Outside(PERFECT_CONTACT, -20);
        for (double t = 0; t < seconds - 1e-9; t += 1) {
            body.step(1, wall);
        }
        assertEquals(frontMm, thicknessMm * body.meanIcePercent() / 100, GOAL * frontMm);
    }

    @Test
    void theRootOfTheExactSolution() {
        assertEquals(0.122939, EXACT.stefanNumber(), LAST_DIGIT);
        assertEquals(0.2430758914, EXACT.lambda(), 1e-10);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/slab-series-middle.csv")
    void slabWithoutFreezing(double biot, double fourier, double left) {
        assertEquals(left, SlabSeries.middleLeft(biot, fourier), 1e-10);
        // k 0.5 W/(m·K), 3.5 J/(g·K), 1000 kg/m³, half thickness 10 mm, from 20 to 0 °C
        var phase = new Phase(0.5, 3.5);
        var body =
                new Layers(
                        EnthalpyTable.pure(phase, phase, -30, 0),
                        1000,
                        new Layers.Span(0.01, 1),
                        40);
        body.fill(50 * 3.5);
        double seconds = fourier * 0.01 * 0.01 * 1000 * 3500 / 0.5;
        int steps = 2000;
        for (int i = 0; i < steps; i++) {
            body.step(seconds / steps, new Layers.Outside(biot * 0.5 / 0.01, 0));
        }
        assertEquals(left, body.middleC() / 20, GOAL * left);
    }
}
