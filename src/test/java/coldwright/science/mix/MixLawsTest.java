package coldwright.science.mix;

import static coldwright.science.mix.Amount.grams;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** What must hold of every mix, whatever is in it. */
class MixLawsTest {
    /** Sums of up to a dozen doubles near a hundred. */
    private static final double ROUNDING = 1e-9;

    /** The formula's pure ethanol is 789.239, its own constant 789.24 kg/m³. */
    private static final double PURE_ETHANOL_ROUNDING = 2e-4;

    @Provide
    Arbitrary<Mix> mixes() {
        Arbitrary<Amount> amount =
                Combinators.combine(
                                Arbitraries.doubles().between(1, 1000), Arbitraries.of(Shelf.all()))
                        .as(Amount::new);
        return amount.list()
                .ofMinSize(1)
                .ofMaxSize(12)
                .map(list -> Mix.of(list).with(grams(200, Shelf.WATER)));
    }

    @Property(tries = 200)
    void compositionAddsUpToAHundred(@ForAll("mixes") Mix mix) {
        assertEquals(100, mix.composition().sumPercent(), 0.5);
        assertEquals(
                100,
                mix.waterPercent() + mix.totalSolidsPercent() + mix.alcoholPercent(),
                ROUNDING);
    }

    @Property(tries = 200)
    void scalingChangesNothingButMass(
            @ForAll("mixes") Mix mix, @ForAll @DoubleRange(min = 1, max = 1e6) double massG) {
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

    @Property(tries = 100)
    void orderOfPouringDoesNotMatter(@ForAll("mixes") Mix a, @ForAll("mixes") Mix b) {
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

    @Property(tries = 200)
    void whatIsAddedCanBeLeftOut(@ForAll("mixes") Mix mix) {
        Ingredient syrup = OwnIngredient.of("house syrup", "water 40, sucrose 60");
        Mix back = mix.with(grams(50, syrup)).without(syrup);
        assertEquals(mix, back);
    }

    @Property(tries = 200)
    void massOfAComponentIsTheSumOfItsParts(@ForAll("mixes") Mix mix) {
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

    @Property(tries = 300)
    void sucroseAlwaysLowersAndWaterAlwaysRaisesTheFreezingPoint(@ForAll("mixes") Mix mix) {
        double plainC = mix.initialFreezingPointC();
        assertTrue(plainC <= 0);
        if (plainC < -0.01 && plainC > -50) {
            assertTrue(mix.with(grams(50, Shelf.SUCROSE)).initialFreezingPointC() < plainC);
            double wateredC = mix.with(grams(500, Shelf.WATER)).initialFreezingPointC();
            // what is saturated with salt stays at its eutectic until there is water enough
            assertTrue(wateredC > plainC || plainC < WARMEST_EUTECTIC_C && wateredC >= plainC);
        }
    }

    @Property(tries = 100)
    void contributionsAddUpToTheDepression(@ForAll("mixes") Mix mix) {
        List<Contribution> parts = mix.contributions();
        if (!parts.isEmpty()) {
            assertEquals(100, parts.stream().mapToDouble(Contribution::sharePercent).sum(), 1e-6);
            assertEquals(
                    -mix.initialFreezingPointC(),
                    parts.stream().mapToDouble(Contribution::depressionC).sum(),
                    1e-6);
        }
    }

    @Property(tries = 200)
    void alcoholByVolumeRoundTrips(@ForAll @DoubleRange(min = 0, max = 100) double byVolume) {
        assertEquals(
                byVolume,
                AlcoholByVolume.byVolumePercent(AlcoholByVolume.massPercent(byVolume)),
                PURE_ETHANOL_ROUNDING);
    }
}
