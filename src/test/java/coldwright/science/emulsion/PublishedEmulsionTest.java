package coldwright.science.emulsion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.mix.Amount;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class PublishedEmulsionTest {
    private static final double ROUNDING = 1e-9;

    /** The calculated values are printed to three and two digits. */
    private static final double HALF_LAST_DIGIT_M2 = 0.005;

    private static final double HALF_LAST_DIGIT_MG = 0.5;

    /** Share of the fat that may lie outside a published range of sizes. */
    private static final double OUTSIDE_PERCENT = 2;

    /** Fat in a cluster; the rest is serum. By judgement. */
    private static final double FAT_IN_CLUSTER = 0.4;

    @ParameterizedTest(name = "{0} against {1} µm")
    @CsvFileSource(resources = "/published/deen-stokes-milk.csv", useHeadersInDisplayName = true)
    void homogenisingSlowsCreaming(double rawUm, double homogenisedUm, double ratio) {
        Creaming milk = Creaming.inMilk();
        assertEquals(
                ratio, milk.hours(homogenisedUm, 100) / milk.hours(rawUm, 100), ROUNDING * ratio);
    }

    @ParameterizedTest(name = "{0} mm in {1} min")
    @CsvFileSource(resources = "/published/fox-mcsweeney-cream.csv", useHeadersInDisplayName = true)
    void clustersThatCreamInTwentyMinutesHaveThePublishedSize(
            double heightMm, double minutes, double leastUm, double mostUm) {
        double size = Creaming.inMilk().ofClusters(FAT_IN_CLUSTER).diameterUm(heightMm, minutes);
        assertTrue(size >= leastUm && size <= mostUm, size + " µm");
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(
            resources = "/published/fox-mcsweeney-globules.csv",
            useHeadersInDisplayName = true)
    void globulesLieInThePublishedRange(String kind, double leastUm, double mostUm) {
        GlobuleSizes sizes =
                kind.equals("raw") ? GlobuleSizes.rawMilk() : GlobuleSizes.homogenised();
        assertTrue(sizes.fatPercentBelow(leastUm) < OUTSIDE_PERCENT);
        assertTrue(sizes.fatPercentBelow(mostUm) > 100 - OUTSIDE_PERCENT);
    }

    @ParameterizedTest(name = "d32 {0} µm")
    @CsvFileSource(resources = "/published/calc-fat-surface.csv", useHeadersInDisplayName = true)
    void surfaceAndLoad(double sauterUm, double m2PerG, double load, double mgPerG) {
        double found = FatSurface.m2PerGFat(new GlobuleSizes(sauterUm, 0.3));
        assertEquals(m2PerG, found, HALF_LAST_DIGIT_M2);
        assertEquals(load, FatSurface.PROTEIN_MG_PER_M2.middle());
        assertEquals(mgPerG, found * load, HALF_LAST_DIGIT_MG);
    }

    @ParameterizedTest(name = "{0} at {1} °C")
    @CsvFileSource(resources = "/published/milk-viscosity.csv", useHeadersInDisplayName = true)
    void viscosityOfMilk(String what, double temperatureC, double lowMPaS, double highMPaS) {
        Mix milk = Mix.of(Amount.grams(1000, Shelf.find(what)));
        double found = MixViscosity.of(milk).mPaSAt(temperatureC).middle();
        assertTrue(found >= lowMPaS && found <= highMPaS, found + " mPa·s");
    }

    @ParameterizedTest(name = "{0} °C")
    @CsvFileSource(
            resources = "/published/memory-milk-fat-solids.csv",
            useHeadersInDisplayName = true)
    void solidFatAtItsNodes(double temperatureC, double lowPercent, double highPercent) {
        assertEquals(lowPercent, MilkFat.solidPercent(temperatureC).low(), ROUNDING);
        assertEquals(highPercent, MilkFat.solidPercent(temperatureC).high(), ROUNDING);
    }
}
