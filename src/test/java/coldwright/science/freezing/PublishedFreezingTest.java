package coldwright.science.freezing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.published.FromTable;
import coldwright.published.Goal;
import coldwright.published.Ledger;
import coldwright.published.PublishedTable;
import coldwright.published.PublishedTable.Row;
import coldwright.published.Tolerance;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Freezing points against published tables. */
class PublishedFreezingTest {
    private static final Ledger LEDGER = Ledger.of(PublishedFreezingTest.class);

    /** Below this depression an error is judged in °C, above it in per cent. */
    private static final double SMALL_C = 2;

    /** The project's goal for brine, in °C and in % of salt. */
    private static final double GOAL_BRINE = 0.05;

    private static final Tolerance EUTECTIC =
            Tolerance.of(0.5, "sources for one eutectic lie up to 0.5 °C apart");

    private static final Tolerance LEIGHTON =
            Tolerance.of(0.0065, "Leighton takes lactose as ideal, which is 2 % less")
                    .judgedBy(Goal.FREEZING_SMALL);

    private static final Tolerance END_OF_FREEZING =
            Tolerance.of(2, "published values run from 78 to 83 %; not fitted");

    @ParameterizedTest
    @FromTable("crc-102-freezing-points")
    void handbook(Row row) {
        double percent = row.number("massPercent");
        double computed = -alone(row, percent, 100 - percent).freezingPointC();
        compare(row, row.text("massPercent") + " %", row.number("depressionC"), computed);
    }

    @ParameterizedTest
    @FromTable("melinder-2010-freezing-points")
    void secondaryFluids(Row row) {
        double percent = row.number("massPercent");
        double computed = -alone(row, percent, 100 - percent).freezingPointC();
        compare(row, row.text("massPercent") + " %", -row.number("freezingPointC"), computed);
    }

    @ParameterizedTest
    @FromTable("forsythe-1956-electrolytes")
    void electrolytes(Row row) {
        double molality = row.number("molality");
        double soluteG = molality * solute(row).molarMassGPerMol();
        double computed = -alone(row, soluteG, 1000).freezingPointC();
        compare(row, row.text("molality") + " mol/kg", row.number("depressionC"), computed);
    }

    private static Solute solute(Row row) {
        return Solute.valueOf(row.text("solute"));
    }

    private static Solution alone(Row row, double soluteG, double waterG) {
        return Solution.inWater(waterG).with(soluteG, solute(row));
    }

    private static void compare(Row row, String where, double publishedC, double computedC) {
        Solute solute = solute(row);
        boolean small = publishedC < SMALL_C;
        Goal large = solute == Solute.ETHANOL ? Goal.FREEZING_ALCOHOL : Goal.FREEZING_LARGE;
        LEDGER.at(row, where)
                .compare(
                        "depression by %s, %s 2 °C, °C"
                                .formatted(solute.displayName(), small ? "under" : "over"),
                        publishedC,
                        computedC,
                        Tolerance.toMeet(small ? Goal.FREEZING_SMALL : large));
    }

    @Test
    void everyMeasuredSoluteIsChecked() {
        Set<String> checked =
                Stream.of(
                                "crc-102-freezing-points",
                                "melinder-2010-freezing-points",
                                "forsythe-1956-electrolytes")
                        .flatMap(name -> PublishedTable.read(name).checks().stream())
                        .map(row -> row.text("solute"))
                        .collect(Collectors.toSet());
        Stream.of(Solute.values())
                .filter(solute -> solute.validity().measured())
                .forEach(
                        solute -> assertTrue(checked.contains(solute.name()), solute::displayName));
    }

    @Test
    void brineOfTheHandbook() {
        var rows =
                PublishedTable.read("crc-102-freezing-points").checks().stream()
                        .filter(row -> row.text("solute").equals("SODIUM_CHLORIDE"))
                        .toList();
        assertTrue(rows.size() >= 5);
        for (Row row : rows) {
            assertEquals(
                    -row.number("depressionC"),
                    Brine.freezingPointC(row.number("massPercent")),
                    GOAL_BRINE,
                    row::toString);
            assertEquals(
                    row.number("massPercent"),
                    Brine.saltPercentAtIceLine(-row.number("depressionC")),
                    GOAL_BRINE,
                    row::toString);
        }
    }

    @ParameterizedTest
    @FromTable("drebushchak-2017-eutectics")
    void eutecticsLieOnTheIceLine(Row row) {
        double percent = row.number("massPercent");
        LEDGER.at(row, solute(row).displayName() + " " + row.text("massPercent") + " %")
                .compare(
                        "freezing point, °C",
                        row.number("temperatureC"),
                        alone(row, percent, 100 - percent).freezingPointC(),
                        EUTECTIC);
    }

    @ParameterizedTest
    @FromTable("starzak-1997-sucrose-ice-line")
    void strongSyrupAgainstAnotherModel(Row row) {
        double sugar = row.number("massPercent");
        double published = row.number("freezingPointC");
        boolean small = -published < SMALL_C;
        LEDGER.at(row, row.text("massPercent") + " %")
                .compare(
                        "freezing point, %s 2 °C of depression, °C"
                                .formatted(small ? "under" : "over"),
                        published,
                        Solution.inWater(100 - sugar).with(sugar, Solute.SUCROSE).freezingPointC(),
                        Tolerance.toMeet(small ? Goal.FREEZING_SMALL : Goal.FREEZING_LARGE));
    }

    @ParameterizedTest
    @FromTable("leighton-1927-milk")
    void milkAfterLeighton(Row row) {
        double waterG = 87.11;
        double saltsMillimol = row.number("saltsC") / 1.86 * waterG;
        double computed =
                -Solution.inWater(waterG)
                        .with(row.number("lactoseG"), Solute.LACTOSE)
                        .withIdealParticles(saltsMillimol, "milk salts")
                        .freezingPointC();
        LEDGER.at(row, row.text("what"))
                .compare("depression, °C", row.number("depressionC"), computed, LEIGHTON);
    }

    @ParameterizedTest
    @FromTable("memory-sucrose-end-of-freezing")
    void freezeConcentratedSucroseEndsNearEightyPerCent(Row row) {
        FreezingCurve curve = Solution.inWater(80).with(20, Solute.SUCROSE).freezingCurve();
        double onset = row.number("melting_onset_c");
        assertEquals(onset, curve.iceStopsGrowingC());
        LEDGER.at(row, "at the end of freezing")
                .compare(
                        "sucrose in what stays liquid, %",
                        row.number("sucrose_percent"),
                        curve.concentratedPhaseSolidsPercent(onset),
                        END_OF_FREEZING);
        assertEquals(
                curve.concentratedPhaseSolidsPercent(onset),
                curve.concentratedPhaseSolidsPercent(-50));
    }
}
