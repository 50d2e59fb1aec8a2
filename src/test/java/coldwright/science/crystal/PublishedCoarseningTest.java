package coldwright.science.crystal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.published.FromTable;
import coldwright.published.Ledger;
import coldwright.published.PublishedTable.Row;
import coldwright.published.Tolerance;
import coldwright.science.Band;
import coldwright.science.Temperature;
import coldwright.science.glass.SyrupViscosity;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

import java.util.Locale;

class PublishedCoarseningTest {
    private static final Ledger LEDGER = Ledger.of(PublishedCoarseningTest.class);

    private static final Mix MIX =
            Mix.of(
                    Amount.grams(500, Shelf.WHOLE_MILK),
                    Amount.grams(250, Shelf.HEAVY_CREAM),
                    Amount.grams(130, Shelf.SUCROSE),
                    Amount.grams(45, Shelf.find("skimmed milk powder")));

    private static final CrystalStory DRAWN = CrystalStory.of(MIX).frozenBy(Method.MACHINE);
    private static final CrystalStory HARDENED = DRAWN.storedAt(-18).forDays(0);

    private static final Tolerance PRINTED = Tolerance.of(0.0000501, "half the last digit");

    private static final Tolerance LAST_DIGIT_C = Tolerance.of(0.00005, "half the last digit");

    private static final Tolerance ENERGY = Tolerance.of(0, "the range as it is quoted");

    private static final Tolerance NEAR_THE_END =
            Tolerance.percent(2, "the approach to the theory's shape is logarithmically slow");

    private static final Tolerance WATER_DIFFUSIVITY =
            Tolerance.percent(1, "uncertainty of the table");

    private static final Tolerance SUCROSE_DIFFUSIVITY =
            Tolerance.percent(1, "uncertainty of the table");

    private static final Tolerance MIDDLE =
            Tolerance.of(0, "the middle of the model's band lies in the published range");

    private static final Tolerance NODE = Tolerance.of(0, "stands in the program");

    /** Mean size of the pores at the start of the storage trial, µm. */
    private static final double PORES_AT_THE_START_UM = 23.7;

    @ParameterizedTest
    @FromTable("memory-lsw-moments")
    void theoryHasItsMoments(Row row) {
        double power = row.number("power");
        IterativeLegendreGaussIntegrator quadrature =
                new IterativeLegendreGaussIntegrator(20, 1e-9, 1e-12);
        double found =
                quadrature.integrate(
                        100_000, z -> Math.pow(z, power) * Lsw.share(z), 0, Lsw.LARGEST);
        LEDGER.at(row, "power " + row.text("power"))
                .compare("moment of the theory's shape", row.number("moment"), found, PRINTED);
    }

    @ParameterizedTest
    @FromTable("memory-lsw-moments")
    void thePopulationCoarsensToThoseMoments(Row row) {
        int power = (int) row.number("power");
        for (double spread : new double[] {0.1, 0.3}) {
            CrystalPopulation crowd = Coarsened.tenfold(spread);
            double mean = crowd.meanRadiusUm();
            LEDGER.at(row, "power %d from a spread of %s".formatted(power, spread))
                    .compare(
                            "moment of the coarsened population",
                            row.number("moment"),
                            crowd.sumPowers(power) / crowd.count() / Math.pow(mean, power),
                            NEAR_THE_END);
        }
    }

    @ParameterizedTest
    @FromTable("memory-diffusivity")
    void diffusivityInPureWater(Row row) {
        boolean sugar = row.text("molecule").equals("sucrose");
        double temperatureC = row.number("temperature_c");
        double found =
                sugar
                        ? Diffusion.soluteM2PerS(
                                Diffusion.SUCROSE_G_PER_MOL,
                                SyrupViscosity.sucroseMPaS(0, temperatureC),
                                temperatureC)
                        : Diffusion.waterM2PerS(1, temperatureC);
        LEDGER.at(row, row.text("temperature_c") + " °C")
                .compare(
                        "diffusivity of " + row.text("molecule") + ", · 10⁻¹⁰ m²/s",
                        row.number("diffusivity_e10"),
                        found * 1e10,
                        sugar ? SUCROSE_DIFFUSIVITY : WATER_DIFFUSIVITY);
    }

    @ParameterizedTest
    @FromTable("calc-gibbs-thomson")
    void smallCrystalsMeltEarlier(Row row) {
        LEDGER.at(row, row.text("radius_um") + " µm")
                .compare(
                        "drop of the melting point, °C",
                        row.number("drop_c"),
                        GibbsThomson.meltingPointDropC(row.number("radius_um")),
                        LAST_DIGIT_C);
    }

    /**
     * The slope of size against the cube root of time, as published rates are given; the miss is
     * stated in the Javadoc.
     */
    @ParameterizedTest
    @FromTable("memory-recrystallisation-energy")
    void activationEnergyOfTheSlope(Row row) {
        double coldC = row.number("cold_c");
        double warmC = row.number("warm_c");
        Coarsening coarsening = Coarsening.of(MIX);
        double fold =
                coarsening.cubeUm3PerDay(warmC).middle() / coarsening.cubeUm3PerDay(coldC).middle();
        double inverse = 1 / Temperature.kelvin(coldC) - 1 / Temperature.kelvin(warmC);
        double kJPerMol = 8.314e-3 * Math.log(fold) / 3 / inverse;
        LEDGER.at(row, row.text("cold_c") + " to " + row.text("warm_c") + " °C")
                .compare(
                        "activation energy, kJ/mol",
                        row.between("low_kj_per_mol", "high_kj_per_mol"),
                        Band.exactly(kJPerMol),
                        ENERGY);
    }

    /** The middle of the model's band; that the band touches the range would say little. */
    @ParameterizedTest
    @FromTable("memory-ice-crystal-sizes")
    void machineMadeCrystalsHaveTheRememberedSize(Row row) {
        Band published = row.between("low_um", "high_um");
        Band mean = (row.text("stage").equals("drawn") ? DRAWN : HARDENED).meanUm();
        LEDGER.at(row, row.text("stage"))
                .compare("mean size, µm", published, Band.exactly(mean.middle()), MIDDLE);
    }

    /** The rate of coarsening in days and micrometres, crystals far apart: a lower bound. */
    @ParameterizedTest
    @FromTable("sinclair-2025-stored-pores")
    void poresAfterWeeksInStore(Row row) {
        double days = 7 * row.number("weeks");
        Band found =
                Coarsening.of(MIX)
                        .meanUmAfter(
                                PORES_AT_THE_START_UM,
                                new Coarsening.StorageTime(row.number("store_c"), days));
        LEDGER.at(row, row.text("weeks") + " weeks at " + row.text("store_c") + " °C")
                .compare(
                        "mean size in store, µm",
                        row.number("pore_um"),
                        found.middle(),
                        Tolerance.of(
                                row.number("deviation_um"),
                                "the source's standard deviation of six"));
    }

    /** Sizes and what the tongue makes of them. */
    @ParameterizedTest
    @FromTable("cook-hartel-2010-sizes")
    void sizesAndWords(Row row) {
        Band published = row.between("low_um", "high_um");
        Ledger.At at = LEDGER.at(row, row.text("what"));
        switch (row.text("what")) {
            case "mean" ->
                    at.compare(
                            "mean size, µm",
                            published,
                            Band.exactly(HARDENED.meanUm().middle()),
                            MIDDLE);
            default -> {
                Texture texture = Texture.valueOf(row.text("what").toUpperCase(Locale.ROOT));
                assertEquals(texture, Texture.of(published.low()), row::toString);
                at.compare("feels so up to, µm", published.high(), texture.upToUm(), NODE);
            }
        }
    }

    /**
     * Mean size grows with the cube root of time (Donhowe and Hartel 1996, abstract): its cube in
     * proportion to time, once the start is forgotten.
     */
    @Test
    void cubeOfTheSizeGrowsInProportionToTime() {
        double[] cubes = new double[3];
        for (int i = 0; i < 3; i++) {
            double size = HARDENED.storedAt(-10).forDays(20 * (i + 1)).meanUm().middle();
            cubes[i] = size * size * size;
        }
        assertEquals(cubes[1] - cubes[0], cubes[2] - cubes[1], 0.03 * (cubes[1] - cubes[0]));
    }

    /**
     * On slow cooling crystals coarsen fast between −6 and −12 °C and hardly below (J. Mo et al.,
     * Crystals 9 (2019) 321, abstract).
     */
    @Test
    void mostCoarseningOnTheWayDownIsWarm() {
        Coarsening coarsening = Coarsening.of(MIX);
        double warm = coarsening.cubeUm3PerDay(-6).middle();
        double middling = coarsening.cubeUm3PerDay(-12).middle();
        double cold = coarsening.cubeUm3PerDay(-18).middle();
        assertTrue(warm > 3 * middling, warm + " against " + middling);
        assertTrue(middling > 3 * cold, middling + " against " + cold);
    }
}
