package coldwright.science.crystal;

import coldwright.science.Band;
import coldwright.science.Commented;
import coldwright.science.Require;
import coldwright.science.mix.Mix;
import coldwright.words.Phrase;

import java.util.List;

/**
 * How fast the crystals of a mix coarsen at a steady temperature, and why: the liquid between them.
 *
 * <p>Equation: the cube of the mean diameter grows by 8 · 4A/9 a second (Lifshitz, Slyozov and
 * Wagner, {@link Lsw}), A from diffusion through the freeze-concentrated liquid ({@code
 * UnfrozenSyrup}): crystals far apart, without crowding, so a lower bound for a real batch ({@link
 * CrystalStory} counts crowding).
 *
 * <p>Band: half and double (see {@link CrystalStory}). Range: −40 °C to the freezing point; below
 * −30 °C an extrapolation. Trends that are published: faster when warmer (Donhowe and Hartel 1996,
 * −15 to −5 °C), hardly at all below −12 °C on slow cooling (Mo et al. 2019).
 *
 * <p>Activation energy of the slope between −15 and −5 °C is near 93 kJ/mol against 112 to 126 from
 * memory: coarsening is underestimated in warm storage or overestimated in cold storage by up to a
 * third.
 */
public final class Coarsening implements Commented {
    private static final double SECONDS_A_DAY = 86_400;

    private final FrozenMixTable mixTable;
    private final LowMidHigh<GrowthIntegrator.Variant> variants;

    private Coarsening(
            FrozenMixTable frozenMixTable, LowMidHigh<GrowthIntegrator.Variant> variants) {
        this.mixTable = frozenMixTable;
        this.variants = variants;
    }

    /** Coarsening in a mix with water. */
    public static Coarsening of(Mix mix) {
        return new Coarsening(FrozenMixTable.of(mix), GrowthIntegrator.corners(mix));
    }

    /**
     * {@return growth of the cube of the mean diameter, µm³ a day}
     *
     * @param temperatureC temperature, °C, −40 to the freezing point of the mix
     * @throws IllegalArgumentException if there is no ice at that temperature
     */
    public Band cubeUm3PerDay(double temperatureC) {
        double growth = mixTable.growthUm3PerS(checked(temperatureC));
        double perDay = 8 * Lsw.RATE_SHARE * SECONDS_A_DAY * growth;
        return variants.band(v -> v.rate() * perDay);
    }

    /**
     * {@return mean diameter after a time, µm}
     *
     * @param startUm mean diameter at the start, µm
     */
    public Band meanUmAfter(double startUm, StorageTime storageTime) {
        Require.within("startUm", startUm, new Require.Range(1, 1000, "µm"));
        Band rate = cubeUm3PerDay(storageTime.temperatureC());
        double start = startUm * startUm * startUm;
        return rate.map(perDay -> Math.cbrt(start + perDay * storageTime.days()));
    }

    /**
     * {@return viscosity of the liquid between the crystals, gums left out; a trend in the cold,
     * mPa·s}
     *
     * @param temperatureC temperature, °C
     */
    public double liquidViscosityMPaS(double temperatureC) {
        return mixTable.viscosityMPaS(checked(temperatureC));
    }

    @Override
    public List<Phrase> comments() {
        return List.of(
                Phrase.of("science.crystal", "coarsening.rate"),
                Phrase.of("science.crystal", "coarsening.viscosity"));
    }

    private double checked(double temperatureC) {
        return Require.within(
                "temperatureC",
                temperatureC,
                new Require.Range(
                        FrozenMixTable.COLDEST_C, mixTable.initialFreezingPointC(), "°C"));
    }

    /**
     * Temperature and time of storage.
     *
     * @param temperatureC temperature, °C
     * @param days time, d, zero or more
     */
    public record StorageTime(double temperatureC, double days) {
        public StorageTime {
            Require.notNegative("days", days, "d");
        }
    }
}
