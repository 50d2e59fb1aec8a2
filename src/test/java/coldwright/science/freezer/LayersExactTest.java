package coldwright.science.freezer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldwright.published.FromTable;
import coldwright.published.Goal;
import coldwright.published.Ledger;
import coldwright.published.PublishedTable.Row;
import coldwright.published.Tolerance;
import coldwright.science.thermal.EnthalpyTable;
import coldwright.science.thermal.Phase;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

/** The march in time against solutions that are exact. */
class LayersExactTest {
    private static final Ledger LEDGER = Ledger.of(LayersExactTest.class);

    /** The last digit that the references give. */
    private static final double LAST_DIGIT = 1e-6;

    private static final Tolerance DIGITS_OF_THE_FRONT = Tolerance.percent(1e-3, "digits given");
    private static final Tolerance DIGITS_OF_THE_SERIES = Tolerance.of(1e-10, "digits given");

    /** Nearly no resistance between wall and surface. */
    private static final double PERFECT_CONTACT = 1e6;

    private static final Phase ICE = new Phase(2.22, 2.050);
    private static final StefanNeumann EXACT =
            new StefanNeumann(ICE, 917, new StefanNeumann.Drive(20, 333.5));

    @ParameterizedTest
    @FromTable("stefan-neumann-front")
    void frontOfFreezingWater(Row row) {
        double seconds = row.number("seconds");
        double frontMm = row.number("front_mm");
        Ledger.At at = LEDGER.at(row, row.text("seconds") + " s");
        at.compare(
                "front by the formula, mm", frontMm, EXACT.frontMm(seconds), DIGITS_OF_THE_FRONT);
        double thicknessMm = 80;
        var table = EnthalpyTable.pure(ICE, new Phase(0.56, 4.2), 0, 333.5);
        var body = new LayeredBody(table, 917, new LayeredBody.Span(thicknessMm / 1000, 1), 200);
        body.fill(0);
        var wall = new LayeredBody.Outside(PERFECT_CONTACT, -20);
        for (double t = 0; t < seconds - 1e-9; t += 1) {
            body.step(1, wall);
        }
        at.compare(
                "front by the march in layers, mm",
                frontMm,
                thicknessMm * body.meanIcePercent() / 100,
                Tolerance.toMeet(Goal.STEFAN_NEUMANN));
    }

    @Test
    void theRootOfTheExactSolution() {
        assertEquals(0.122939, EXACT.stefanNumber(), LAST_DIGIT);
        assertEquals(0.2430758914, EXACT.lambda(), 1e-10);
    }

    @ParameterizedTest
    @FromTable("slab-series-middle")
    void slabWithoutFreezing(Row row) {
        double biot = row.number("biot");
        double fourier = row.number("fourier");
        double left = row.number("left");
        Ledger.At at = LEDGER.at(row, "Fourier number " + row.text("fourier"));
        at.compare(
                "warmth left by the series",
                left,
                SlabSeries.middleLeft(biot, fourier),
                DIGITS_OF_THE_SERIES);
        // k 0.5 W/(m·K), 3.5 J/(g·K), 1000 kg/m³, half thickness 10 mm, from 20 to 0 °C
        var phase = new Phase(0.5, 3.5);
        var body =
                new LayeredBody(
                        EnthalpyTable.pure(phase, phase, -30, 0),
                        1000,
                        new LayeredBody.Span(0.01, 1),
                        40);
        body.fill(50 * 3.5);
        double seconds = fourier * 0.01 * 0.01 * 1000 * 3500 / 0.5;
        int steps = 2000;
        for (int i = 0; i < steps; i++) {
            body.step(seconds / steps, new LayeredBody.Outside(biot * 0.5 / 0.01, 0));
        }
        at.compare(
                "warmth left by the march in layers",
                left,
                body.middleC() / 20,
                Tolerance.toMeet(Goal.STEFAN_NEUMANN));
    }
}
