package coldwright.science.glass;

import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.published.FromTable;
import coldwright.published.Ledger;
import coldwright.published.PublishedTable.Row;
import coldwright.published.Tolerance;
import coldwright.science.Band;
import coldwright.science.freezing.Solute;
import coldwright.science.freezing.Solution;
import coldwright.science.mix.Component;
import coldwright.science.mix.Composition;

import org.junit.jupiter.params.ParameterizedTest;

import java.util.Locale;

/** Syrups, glasses and the wafer of a cone against published figures. */
class PublishedSyrupTest {
    private static final Ledger LEDGER = Ledger.of(PublishedSyrupTest.class);

    private static final Tolerance CORRELATION =
            Tolerance.percent(1, "no uncertainty is stated; asked for by the project");

    private static final Tolerance SCATTER =
            Tolerance.percent(
                    20, "scatter of the measurements, and the factor for one-unit sugars");

    private static final Tolerance GLASS_LINE =
            Tolerance.of(3, "stated error of the Gordon–Taylor line");

    private static final Tolerance PRINTED = Tolerance.of(5e-6, "half the last digit");
    private static final Tolerance INSIDE = Tolerance.of(1e-9, "within the published range");
    private static final Tolerance TWO_DECIMALS = Tolerance.of(0.03, "parts of a row, rounded");

    @ParameterizedTest
    @FromTable("crc-102-sucrose-viscosity")
    void sucroseAtTwentyDegrees(Row row) {
        LEDGER.at(row, row.text("sucrose_percent") + " %")
                .compare(
                        "viscosity of sucrose at 20 °C, mPa·s",
                        row.number("viscosity_mpas"),
                        SyrupViscosity.sucroseMPaS(row.number("sucrose_percent"), 20),
                        CORRELATION);
    }

    @ParameterizedTest
    @FromTable("telis-2007-fructose-viscosity")
    void fructoseInTheCold(Row row) {
        double percent = row.number("fructose_percent");
        Solution solution = Solution.inWater(100 - percent).with(percent, Solute.FRUCTOSE);
        LEDGER.at(row, row.text("fructose_percent") + " % at " + row.text("temperature_c") + " °C")
                .compare(
                        "viscosity of fructose, mPa·s",
                        row.number("viscosity_mpas"),
                        SyrupViscosity.mPaS(solution, row.number("temperature_c")),
                        SCATTER);
    }

    @ParameterizedTest
    @FromTable("memory-sucrose-end-of-freezing")
    void glassOfTheMostConcentratedSyrup(Row row) {
        LEDGER.at(row, row.text("sucrose_percent") + " %")
                .compare(
                        "glass transition, °C",
                        row.number("glass_transition_c"),
                        GordonTaylor.of(row.number("sucrose_percent"), SugarGlass.SUCROSE)
                                .glassTransitionC(),
                        GLASS_LINE);
    }

    @ParameterizedTest
    @FromTable("gordon-taylor-glasses")
    void dryGlasses(Row row) {
        String substance = row.text("substance");
        double dryC =
                substance.equals("WATER")
                        ? new GordonTaylor(100, java.util.Map.of()).glassTransitionC()
                        : GordonTaylor.of(100, SugarGlass.valueOf(substance)).glassTransitionC();
        LEDGER.at(row, substance.toLowerCase(Locale.ROOT))
                .compare(
                        "glass transition, °C",
                        row.between("low_c", "high_c"),
                        Band.exactly(dryC),
                        INSIDE);
    }

    @ParameterizedTest
    @FromTable("calc-wlf")
    void softeningAboveTheGlass(Row row) {
        double above = row.number("above_c");
        LEDGER.at(row, row.text("above_c") + " °C above")
                .compare(
                        "log₁₀ of viscosity over that of the glass",
                        row.number("log_ratio"),
                        Wlf.logPaS(above) - Wlf.LOG_PAS_AT_GLASS,
                        PRINTED);
    }

    /** The wafer of the cone is the USDA row of the rolled sugar cone. */
    @ParameterizedTest
    @FromTable("usda-sr24-composition")
    void rolledSugarCone(Row row) {
        if (!row.text("name").equals("sugar cone")) {
            return;
        }
        Composition wafer = Wafer.rolledSugarCone().composition();
        assertTrue(Wafer.rolledSugarCone().canBeRolled());
        Ledger.At at = LEDGER.at(row, "the wafer");
        at.compare("water, %", row.number("water"), wafer.percent(Component.WATER), TWO_DECIMALS);
        at.compare("fat, %", row.number("fat"), wafer.percent(Component.Kind.FAT), TWO_DECIMALS);
        at.compare(
                "protein, %",
                row.number("protein"), wafer.percent(Component.Kind.PROTEIN), TWO_DECIMALS);
        at.compare(
                "carbohydrate, %",
                row.number("carbohydrate"),
                wafer.percent(Component.Kind.SUGAR) + wafer.percent(Component.Kind.CARBOHYDRATE),
                TWO_DECIMALS);
    }
}
