package coldwright.science.freezer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.freezer.FreezingFormula.Form;
import coldwright.science.thermal.EnthalpyTable;
import coldwright.science.thermal.ThermalCurve;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.util.Arrays;

/** Shapes and moved content reduced to simple models, against finer ones. */
class ReductionTest {
    /** As {@link Shape} states it for still air, moving air, stirred brine. */
    private static final double STATED_TUB_STILL = 0.025;

    private static final double STATED_TUB_BRINE = 0.10;

    /** Penetration theory against stirred layers. */
    private static final double FILM = 0.10;

    /** Pham's own statement, about ten per cent. */
    private static final double PHAM = 0.10;

    @ParameterizedTest
    @CsvSource({"120, 90, 7", "160, 50, 7", "60, 150, 7", "120, 90, 300", "160, 50, 300"})
    void tubAgainstTwoDimensions(double diameterMm, double heightMm, double film) {
        ThermalCurve curve = Batches.sorbet();
        EnthalpyTable table = curve.table();
        double density = curve.densityKgPerM3(4);
        int n = 12;
        RoundTub fine = new RoundTub(table, density, new double[] {diameterMm, heightMm}, film, n);
        Arrays.stream(fine.enthalpy).forEach(row -> Arrays.fill(row, table.enthalpyJPerG(5)));
        double dx = Math.min(diameterMm, heightMm) / 2000 / n;
        double step = 0.1 * dx * dx * density * 1800 / 2.2;
        double seconds = 0;
        while (fine.meanIcePercent() < 50) {
            fine.step(step, -18);
            seconds += step;
        }
        Shape shape = Shape.tub(diameterMm, heightMm);
        LayeredBody.Span span = shape.span(film / curve.conductivityWPerMK(-8));
        LayeredBody body = new LayeredBody(table, density, span, 24);
        body.fill(table.enthalpyJPerG(5));
        double reduced = 0;
        while (body.meanIcePercent() < 50) {
            body.step(5, new LayeredBody.Outside(film, -18));
            reduced += 5;
        }
        double stated = film < 10 ? STATED_TUB_STILL : STATED_TUB_BRINE;
        assertEquals(seconds, reduced, stated * seconds);
    }

    @ParameterizedTest
    @CsvSource({"3", "10", "30", "60"})
    void movedContentAgainstStirredLayers(double turnS) {
        ThermalCurve curve = Batches.sorbet();
        EnthalpyTable table = curve.table();
        Cold cold = new Cold.Steady(-15, Film.STIRRED_BRINE);
        Freeze freeze =
                Freeze.of(curve, 500)
                        .in(Holder.Bag.flat(20))
                        .by(cold)
                        .moved(new Motion(turnS, Motion.Blade.NONE, Motion.KNEADED.phrase()));
        FreezeSimulation freezeSimulation = new FreezeSimulation(freeze, curve, Reading.LIKELY);
        freezeSimulation.go(Stage.SOFT_SERVE);
        double u = Wall.DOUBLE_BAG.with(Film.STIRRED_BRINE.coefficientWPerM2K(Reading.LIKELY));
        LayeredBody body =
                new LayeredBody(table, curve.densityKgPerM3(4), new LayeredBody.Span(0.01, 1), 200);
        body.fill(table.enthalpyJPerG(5));
        double seconds = 0;
        double step = 0.5;
        while (body.meanIcePercent() < 50) {
            body.step(step, new LayeredBody.Outside(u, -15));
            seconds += step;
            if (seconds % turnS < step / 2) {
                body.mix();
            }
        }
        assertEquals(seconds / 60, freezeSimulation.minutes(Stage.SOFT_SERVE), FILM * seconds / 60);
    }

    @Test
    void shapesAtTheirLimits() {
        assertEquals(1, Shape.slab(40).dimension(3), 0);
        assertEquals(3, Shape.bar(40, 40).ofLength(40).dimension(1e-4), 1e-3);
        assertEquals(2, Shape.bar(40, 40).dimension(1e-4), 1e-3);
        // Poisson's equation in a cube and a square, wall at zero: 0.0562 and 0.0737 a²
        assertEquals(0.125 / 0.0562, Shape.bar(40, 40).ofLength(40).dimension(1e6), 0.01);
        assertEquals(0.125 / 0.07367, Shape.bar(40, 40).dimension(1e6), 0.002);
        assertEquals(1, Shape.tub(900, 20).dimension(1), 0.03);
        assertEquals(2, Shape.tub(30, 900).dimension(1), 0.01);
        LayeredBody.Span span = Shape.slab(60).span(5);
        assertEquals(0.03, span.halfThicknessM(), 1e-12);
        assertEquals(1, span.dimension(), 1e-9);
    }

    @Test
    void volumeAndSurface() {
        Shape tub = Shape.tub(100, 127.324);
        assertEquals(1, tub.volumeL(), 1e-4);
        assertEquals(0.24, Shape.bar(100, 60).ofLength(40).volumeL(), 1e-9);
        assertTrue(Shape.slab(20).surfacePerVolumePerM() == 100);
    }

    /** Two ways to the same time: Pham's formula and the march, sugared water from 5 to −18 °C. */
    @Test
    void phamAndTheMarchAgree() {
        ThermalCurve water = Batches.sugarWater(8);
        double density = water.densityKgPerM3(4);
        double solid = 2.0;
        double latent = water.heatToRemoveJPerG(-0.5, -18) - solid * 17.5; // all but sensible heat
        FreezingFormula formula =
                FreezingFormula.of(Form.SLAB, 60)
                        .matter(density, latent)
                        .conduction(water.conductivityWPerMK(-20), 25)
                        .between(-0.6, -30);
        LayeredBody body =
                new LayeredBody(water.table(), density, new LayeredBody.Span(0.03, 1), 40);
        body.fill(water.table().enthalpyJPerG(5));
        double seconds = 0;
        while (body.middleC() > -18) {
            body.step(10, new LayeredBody.Outside(25, -30));
            seconds += 10;
        }
        FreezingFormula.Ends ends = new FreezingFormula.Ends(5, density, 3.95, -18, solid);
        assertEquals(formula.phamSeconds(ends), seconds, PHAM * seconds);
        assertTrue(formula.plankSeconds() < seconds, "Plank leaves the sensible heat out");
    }
}
