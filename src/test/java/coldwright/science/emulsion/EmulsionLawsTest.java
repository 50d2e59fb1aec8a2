package coldwright.science.emulsion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import org.hipparchus.analysis.integration.SimpsonIntegrator;

class EmulsionLawsTest {
    private static final double ROUNDING = 1e-9;

    /** Volume over surface of the numbers themselves, by quadrature. */
    @Cases(30)
    void sauterDiameterIsVolumeOverSurface(Draw draw) {
        double sauterUm = draw.doubleIn(0.2, 5);
        double spread = draw.doubleIn(0.2, 0.8);
        GlobuleSizes sizes = new GlobuleSizes(sauterUm, spread);
        double m = Math.log(sizes.numberMedianUm());
        double cubes = moment(3, m, spread);
        double squares = moment(2, m, spread);
        assertEquals(sauterUm, cubes / squares, 1e-4 * sauterUm);
        assertEquals(sizes.numberMeanUm(), moment(1, m, spread), 1e-4 * sauterUm);
    }

    private static double moment(int power, double mean, double spread) {
        return new SimpsonIntegrator(1e-9, 1e-12, 10, 60)
                .integrate(
                        10_000_000,
                        x ->
                                Math.exp(
                                                power * x
                                                        - (x - mean)
                                                                * (x - mean)
                                                                / (2 * spread * spread))
                                        / (spread * Math.sqrt(2 * Math.PI)),
                        mean - 8 * spread,
                        mean + 10 * spread);
    }

    @Cases(1000)
    void creamingGoesWithTheSquareOfSizeAndAgainstViscosity(Draw draw) {
        double diameterUm = draw.doubleIn(0.1, 500);
        double viscosityMPaS = draw.doubleIn(1, 1000);
        Creaming thin = new Creaming(new Creaming.Serum(80, viscosityMPaS), 4);
        Creaming thick = new Creaming(new Creaming.Serum(80, 2 * viscosityMPaS), 4);
        double speed = thin.umPerS(diameterUm);
        assertEquals(4 * speed, thin.umPerS(2 * diameterUm), ROUNDING * speed * 4);
        assertEquals(speed / 2, thick.umPerS(diameterUm), ROUNDING * speed);
    }

    @Cases(1000)
    void solidFatNeverRisesWithTemperature(Draw draw) {
        double temperatureC = draw.doubleIn(-20, 39);
        double colder = MilkFat.solidPercent(temperatureC).middle();
        double warmer = MilkFat.solidPercent(temperatureC + 1).middle();
        assertTrue(warmer <= colder);
        assertTrue(warmer >= 0 && colder <= 100);
    }

    @Cases(1000)
    void moreFatAndMoreMotionChurnFaster(Draw draw) {
        double fatPercent = draw.doubleIn(2, 40);
        double temperatureC = draw.doubleIn(-5, 30);
        Churning lean = new Churning(fatPercent, temperatureC, false, false);
        Churning rich = new Churning(fatPercent + 2, temperatureC, false, false);
        Churning fine = new Churning(fatPercent, temperatureC, true, false);
        double whisked = lean.clumpedPercent(3, Churning.Motion.WHISK).middle();
        assertTrue(rich.clumpedPercent(3, Churning.Motion.WHISK).middle() > whisked);
        assertTrue(fine.clumpedPercent(3, Churning.Motion.WHISK).middle() < whisked);
        assertTrue(lean.clumpedPercent(3, Churning.Motion.SHAKEN).middle() < whisked);
        assertTrue(lean.clumpedPercent(4, Churning.Motion.WHISK).middle() > whisked);
        assertTrue(whisked <= 100);
    }

    @Cases(60)
    void warmthThinsAMixAndFatThickensIt(Draw draw) {
        double temperatureC = draw.doubleIn(0, 70);
        double creamG = draw.doubleIn(50, 300);
        Mix mix = mix(creamG);
        double now = MixViscosity.of(mix).mPaSAt(temperatureC).middle();
        assertTrue(MixViscosity.of(mix).mPaSAt(temperatureC + 5).middle() < now);
        assertTrue(MixViscosity.of(mix(creamG + 50)).mPaSAt(temperatureC).middle() > now);
    }

    @Cases(40)
    void gumThickens(Draw draw) {
        double gumG = draw.doubleIn(0.2, 8);
        Mix some = mix(100).with(Amount.grams(gumG, Shelf.find("guar gum")));
        Mix more = mix(100).with(Amount.grams(gumG * 1.5, Shelf.find("guar gum")));
        double plain = MixViscosity.of(mix(100)).mPaSAt(5).middle();
        double with = MixViscosity.of(some).mPaSAt(5).middle();
        assertTrue(with > plain);
        assertTrue(MixViscosity.of(more).mPaSAt(5).middle() > with);
    }

    @Cases(40)
    void finerGlobulesNeedMoreProtein(Draw draw) {
        double sauterUm = draw.doubleIn(0.3, 4);
        FatSurface coarse = new FatSurface(mix(200), new GlobuleSizes(2 * sauterUm, 0.4));
        FatSurface fine = new FatSurface(mix(200), new GlobuleSizes(sauterUm, 0.4));
        assertEquals(2 * coarse.m2Per100g(), fine.m2Per100g(), ROUNDING * fine.m2Per100g());
        assertTrue(fine.timesCovered().middle() < coarse.timesCovered().middle());
    }

    private static Mix mix(double creamG) {
        return Mix.of(
                Amount.grams(500, Shelf.WHOLE_MILK),
                Amount.grams(creamG, Shelf.HEAVY_CREAM),
                Amount.grams(120, Shelf.SUCROSE));
    }
}
