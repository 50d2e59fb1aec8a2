package coldwright.science.emulsion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldwright.published.FromTable;
import coldwright.published.Ledger;
import coldwright.published.PublishedTable.Row;
import coldwright.published.Tolerance;
import coldwright.science.Band;
import coldwright.science.mix.Amount;
import coldwright.science.mix.Component;
import coldwright.science.mix.Mix;
import coldwright.science.mix.Shelf;

import org.junit.jupiter.params.ParameterizedTest;

import java.util.List;

class PublishedEmulsionTest {
    private static final Ledger LEDGER = Ledger.of(PublishedEmulsionTest.class);

    private static final Tolerance INSIDE = Tolerance.of(1e-9, "within the published range");
    private static final Tolerance PRINTED_M2 = Tolerance.of(0.005, "half the last digit");
    private static final Tolerance PRINTED_MG = Tolerance.of(0.5, "half the last digit");
    private static final Tolerance TAILS = Tolerance.of(2, "tails of a log-normal");
    private static final Tolerance AGAINST_OTHERS =
            Tolerance.percent(15, "expected of the law against other data; none is stated");
    private static final Tolerance GUMS =
            Tolerance.of(0.5, "a factor of three, as gums of one kind differ by brand");
    private static final Tolerance NODE = Tolerance.of(1e-9, "the model's own node");

    @ParameterizedTest
    @FromTable("deen-stokes-milk")
    void homogenisingSlowsCreaming(Row row) {
        Creaming milk = Creaming.inMilk();
        double ratio =
                milk.hours(row.number("homogenised_um"), 100)
                        / milk.hours(row.number("raw_um"), 100);
        LEDGER.at(row, row.text("raw_um") + " against " + row.text("homogenised_um") + " µm")
                .compare("ratio of the times", row.number("time_ratio"), ratio, Tolerance.ROUNDING);
    }

    @ParameterizedTest
    @FromTable("fox-mcsweeney-globules")
    void globulesLieInThePublishedRange(Row row) {
        GlobuleSizes sizes =
                row.text("kind").equals("raw")
                        ? GlobuleSizes.rawMilk()
                        : GlobuleSizes.homogenised();
        Ledger.At at = LEDGER.at(row, row.text("kind"));
        at.compare(
                "fat below the smallest, %",
                0, sizes.fatPercentBelow(row.number("least_um")), TAILS);
        at.compare(
                "fat below the largest, %",
                100, sizes.fatPercentBelow(row.number("most_um")), TAILS);
        at.compare(
                "Sauter diameter, µm",
                row.between("mean_least_um", "mean_most_um"),
                Band.exactly(sizes.sauterDiameterUm()),
                INSIDE);
    }

    @ParameterizedTest
    @FromTable("calc-fat-surface")
    void surfaceAndLoad(Row row) {
        double found = FatSurface.m2PerGFat(new GlobuleSizes(row.number("sauter_um"), 0.3));
        double load = row.number("load_mg_per_m2");
        assertEquals(load, FatSurface.PROTEIN_MG_PER_M2.middle());
        Ledger.At at = LEDGER.at(row, row.text("sauter_um") + " µm");
        at.compare("surface of fat, m²/g", row.number("m2_per_g"), found, PRINTED_M2);
        at.compare(
                "protein on it, mg per g of fat",
                row.number("protein_mg_per_g"),
                found * load,
                PRINTED_MG);
    }

    /** Milk and cream from skimmed milk and heavy cream. */
    @ParameterizedTest
    @FromTable("bakshi-smith-1984-viscosity")
    void viscosityOfMilkAndCream(Row row) {
        double fat = row.number("fat_percent");
        double skimmed = Shelf.SKIMMED_MILK.composition().percent(Component.MILK_FAT);
        double cream = Shelf.HEAVY_CREAM.composition().percent(Component.MILK_FAT);
        double share = (fat - skimmed) / (cream - skimmed);
        Mix milk =
                Mix.of(
                        Amount.grams(1000 * (1 - share), Shelf.SKIMMED_MILK),
                        Amount.grams(1000 * share, Shelf.HEAVY_CREAM));
        double found = MixViscosity.of(milk).mPaSAt(row.number("temperature_c")).middle();
        LEDGER.at(row, "%s %% fat, %s °C".formatted(fat, row.text("temperature_c")))
                .compare("viscosity, mPa·s", row.number("viscosity_mpas"), found, AGAINST_OTHERS);
    }

    /** How many times as thick gum makes a mix, as a power of ten. */
    @ParameterizedTest
    @FromTable("gum-consistency-2013-2023")
    void gumsThickenAsMeasured(Row row) {
        Mix plain =
                Mix.of(
                        Amount.grams(560, Shelf.WHOLE_MILK),
                        Amount.grams(230, Shelf.HEAVY_CREAM),
                        Amount.grams(150, Shelf.SUCROSE),
                        Amount.grams(60, Shelf.SKIM_MILK_POWDER));
        List<String> gums = List.of(row.text("gum").split(" \\+ "));
        Mix mix = plain;
        for (String gum : gums) {
            double g = 10 * row.number("percent") / gums.size();
            mix = mix.with(Amount.grams(g, Shelf.find(gum)));
        }
        double found =
                MixViscosity.of(mix).mPaSAt(5).middle() / MixViscosity.of(plain).mPaSAt(5).middle();
        double measured = row.number("k") / row.number("k_without");
        LEDGER.at(row, row.text("percent") + " % " + row.text("gum"))
                .compare(
                        "thickening by gum, powers of ten",
                        Math.log10(measured),
                        Math.log10(found),
                        GUMS);
    }

    @ParameterizedTest
    @FromTable("memory-milk-fat-solids")
    void solidFatAtItsNodes(Row row) {
        Band found = MilkFat.solidPercent(row.number("temperature_c"));
        Ledger.At at = LEDGER.at(row, row.text("temperature_c") + " °C");
        at.compare("solid fat, least, %", row.number("low_percent"), found.low(), NODE);
        at.compare("solid fat, most, %", row.number("high_percent"), found.high(), NODE);
    }
}
