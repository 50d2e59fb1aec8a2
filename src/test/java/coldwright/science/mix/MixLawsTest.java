package coldwright.science.mix;

import static coldwright.science.mix.Amount.grams;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** What must hold of every mix, whatever is in it. */
class MixLawsTest {
    /** Sums of up to a dozen doubles near a hundred. */
    private static final double ROUNDING = 1e-9;

    /** The formula's pure ethanol is 789.239, its own constant 789.24 kg/m³. */
    private static final double PURE_ETHANOL_ROUNDING = 2e-4;

    private static Mix mixes(Draw draw) {
        return Mix.of(
                        draw.listOf(
                                1, 12, d -> new Amount(d.doubleIn(1, 1000), d.oneOf(Shelf.all()))))
                .with(grams(200, Shelf.WATER));
    }

    @Cases(200)
    void compositionAddsUpToAHundred(Draw draw) {
        Mix mix = draw.one(MixLawsTest::mixes);
        assertEquals(100, mix.composition().sumPercent(), 0.5);
        assertEquals(
                100,
                mix.waterPercent() + mix.totalSolidsPercent() + mix.alcoholPercent(),
                ROUNDING);
    }

    @Cases(200)
    void scalingChangesNothingButMass(Draw draw) {
        Mix mix = draw.one(MixLawsTest::mixes);
        double massG = draw.doubleIn(1, 1e6);
        Mix scaled = mix.scaledTo(massG);
        assertEquals(massG, scaled.massG(), 1e-6 * massG);
        for (Component component : Component.values()) {
            assertEquals(
                    mix.composition().percent(component),
                    scaled.composition().percent(component),
                    ROUNDING);
        }
        assertEquals(mix.initialFreezingPointC(), scaled.initialFreezingPointC(), 1e-6);
    }

    @Cases(100)
    void orderOfPouringDoesNotMatter(Draw draw) {
        Mix a = draw.one(MixLawsTest::mixes);
        Mix b = draw.one(MixLawsTest::mixes);
        Mix one = a.plus(b);
        List<Amount> turned = new ArrayList<>(b.plus(a).amounts());
        Collections.reverse(turned);
        Mix other = Mix.of(turned);
        assertEquals(one.massG(), other.massG(), 1e-6);
        assertEquals(one.fatPercent(), other.fatPercent(), ROUNDING);
        assertEquals(one.sugarsPercent(), other.sugarsPercent(), ROUNDING);
        assertEquals(one.initialFreezingPointC(), other.initialFreezingPointC(), 1e-6);
        assertEquals(one.allergens(), other.allergens());
    }

    @Cases(200)
    void whatIsAddedCanBeLeftOut(Draw draw) {
        Mix mix = draw.one(MixLawsTest::mixes);
        Ingredient syrup = OwnIngredient.of("house syrup", "water 40, sucrose 60");
        Mix back = mix.with(grams(50, syrup)).without(syrup);
        assertEquals(mix, back);
    }

    @Cases(200)
    void massOfAComponentIsTheSumOfItsParts(Draw draw) {
        Mix mix = draw.one(MixLawsTest::mixes);
        double sucroseG = 0;
        for (Amount amount : mix.amounts()) {
            sucroseG +=
                    amount.massG()
                            * amount.ingredient().composition().percent(Component.SUCROSE)
                            / 100;
        }
        assertEquals(
                sucroseG,
                mix.massG() * mix.composition().percent(Component.SUCROSE) / 100,
                1e-9 * mix.massG());
    }

    /** Potassium chloride's, the warmest eutectic of a salt on the shelf, rounded up. */
    private static final double WARMEST_EUTECTIC_C = -10;

    @Cases(300)
    void sucroseAlwaysLowersAndWaterAlwaysRaisesTheFreezingPoint(Draw draw) {
        Mix mix = draw.one(MixLawsTest::mixes);
        double plainC = mix.initialFreezingPointC();
        assertTrue(plainC <= 0);
        if (plainC < -0.01 && plainC > -50) {
            assertTrue(mix.with(grams(50, Shelf.SUCROSE)).initialFreezingPointC() < plainC);
            double wateredC = mix.with(grams(500, Shelf.WATER)).initialFreezingPointC();
            // what is saturated with salt stays at its eutectic until there is water enough
            assertTrue(wateredC > plainC || plainC < WARMEST_EUTECTIC_C && wateredC >= plainC);
        }
    }

    @Cases(100)
    void contributionsAddUpToTheDepression(Draw draw) {
        Mix mix = draw.one(MixLawsTest::mixes);
        List<Contribution> parts = mix.contributions();
        if (!parts.isEmpty()) {
            assertEquals(100, parts.stream().mapToDouble(Contribution::sharePercent).sum(), 1e-6);
            assertEquals(
                    -mix.initialFreezingPointC(),
                    parts.stream().mapToDouble(Contribution::depressionC).sum(),
                    1e-6);
        }
    }

    @Cases(200)
    void alcoholByVolumeRoundTrips(Draw draw) {
        double byVolume = draw.doubleIn(0, 100);
        assertEquals(
                byVolume,
                AlcoholByVolume.byVolumePercent(AlcoholByVolume.massPercent(byVolume)),
                PURE_ETHANOL_ROUNDING);
    }
}
