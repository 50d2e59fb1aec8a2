package coldwright.science.emulsion;

import coldwright.science.Require;
import coldwright.science.mix.Mix;

/**
 * Creaming: how fast fat rises.
 *
 * <p>Equation (Stokes): v = g d² Δρ/(18 η). Crowding slows it by (1 − φ)^4.65 (J. F. Richardson and
 * W. N. Zaki 1954, from memory).
 *
 * <p>Values: Δρ 80 kg/m³ is that of W. M. Deen's milk problem (seen); milk 1.5 to 2 mPa·s (seen).
 * Range: globules to clusters of 1 mm in thin to thick mixes, where the flow around each is slow.
 * Left out: Brownian motion (it wins below some 0.5 µm), gums with a yield stress (they stop
 * creaming). Error: that of d².
 *
 * @param serum the liquid that the globules rise through
 * @param fatVolumePercent fat by volume, %, 0 to 60
 */
public record Creaming(Serum serum, double fatVolumePercent) {
    private static final double GRAVITY_M_PER_S2 = 9.80665;
    private static final double CROWDING_POWER = 4.65;
    private static final double DEEN_GAP_KG_PER_M3 = 80;
    private static final double MILK_MPAS = 1.75;
    private static final double MILK_FAT_VOLUME_PERCENT = 4;

    public Creaming {
        Require.within("fatVolumePercent", fatVolumePercent, new Require.Range(0, 60, "%"));
    }

    /** Whole milk. */
    public static Creaming inMilk() {
        return new Creaming(new Serum(DEEN_GAP_KG_PER_M3, MILK_MPAS), MILK_FAT_VOLUME_PERCENT);
    }

    /**
     * A mix at rest before it is frozen, at the middle of its viscosity's band.
     *
     * @param temperatureC temperature, °C, 0 to 80
     * @throws IllegalArgumentException if the serum is lighter than fat, as in strong spirit
     */
    public static Creaming in(MixViscosity viscosity, double temperatureC) {
        Mix mix = viscosity.mix();
        double fatL = mix.fatPercent() / FatSurface.FAT_KG_PER_M3;
        double allL = 100 / mix.densityKgPerL() / 1000;
        double serumKgPerM3 = (100 - mix.fatPercent()) / (allL - fatL);
        return new Creaming(
                new Serum(
                        serumKgPerM3 - FatSurface.FAT_KG_PER_M3,
                        viscosity.serumMPaSAt(temperatureC).middle()),
                Math.min(60, 100 * fatL / allL));
    }

    /**
     * Clusters of globules with serum between them, which weigh more than bare fat; use it with the
     * diameter of the cluster.
     *
     * @param fatShare share of fat in the cluster by volume, 0.05 to 1
     */
    public Creaming ofClusters(double fatShare) {
        Require.within("fatShare", fatShare, new Require.Range(0.05, 1, ""));
        return new Creaming(
                new Serum(serum.densityGapKgPerM3 * fatShare, serum.viscosityMPaS),
                fatVolumePercent);
    }

    /**
     * {@return speed of rise, µm/s}
     *
     * @param diameterUm diameter, µm, 0.05 to 2000
     */
    public double umPerS(double diameterUm) {
        Require.within("diameterUm", diameterUm, new Require.Range(0.05, 2000, "µm"));
        double d = diameterUm * 1e-6;
        double lonely =
                GRAVITY_M_PER_S2
                        * d
                        * d
                        * serum.densityGapKgPerM3
                        / (18 * serum.viscosityMPaS * 1e-3)
                        * 1e6;
        return lonely * Math.pow(1 - fatVolumePercent / 100, CROWDING_POWER);
    }

    /**
     * {@return time to rise through a height, h}
     *
     * @param diameterUm diameter, µm
     * @param heightMm height, mm, more than 0
     */
    public double hours(double diameterUm, double heightMm) {
        Require.positive("heightMm", heightMm, "mm");
        return heightMm * 1000 / umPerS(diameterUm) / 3600;
    }

    /**
     * {@return the diameter that rises through a height in a time, µm}
     *
     * @param heightMm height, mm
     * @param minutes time, min
     */
    public double diameterUm(double heightMm, double minutes) {
        Require.positive("heightMm", heightMm, "mm");
        Require.positive("minutes", minutes, "min");
        return Math.sqrt(heightMm * 1000 / (minutes * 60) / umPerS(1));
    }

    /**
     * {@return fat that has left the lowest part of a vessel, in a time: that in globules fast
     * enough to pass the height, % of the fat}
     */
    public double creamedPercent(GlobuleSizes sizes, Vessel vessel) {
        double least = diameterUm(vessel.heightMm(), vessel.hours() * 60);
        return 100 - sizes.fatPercentBelow(least);
    }

    /**
     * The liquid that the globules rise through.
     *
     * @param densityGapKgPerM3 its density less that of fat, kg/m³, 0.1 to 500
     * @param viscosityMPaS its viscosity, mPa·s, 0.2 to 10⁷
     */
    public record Serum(double densityGapKgPerM3, double viscosityMPaS) {
        public Serum {
            Require.within(
                    "densityGapKgPerM3", densityGapKgPerM3, new Require.Range(0.1, 500, "kg/m³"));
            Require.within("viscosityMPaS", viscosityMPaS, new Require.Range(0.2, 1e7, "mPa·s"));
        }
    }

    /**
     * A vessel at rest.
     *
     * @param heightMm height of the liquid, mm
     * @param hours time, h
     */
    public record Vessel(double heightMm, double hours) {
        public Vessel {
            Require.positive("heightMm", heightMm, "mm");
            Require.positive("hours", hours, "h");
        }
    }
}
