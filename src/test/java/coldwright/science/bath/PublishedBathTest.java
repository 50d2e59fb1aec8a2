package coldwright.science.bath;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldwright.published.FromTable;
import coldwright.published.Goal;
import coldwright.published.Ledger;
import coldwright.published.PublishedTable.Row;
import coldwright.published.Tolerance;
import coldwright.science.thermal.PureWater;

import org.junit.jupiter.params.ParameterizedTest;

/** Brine and bath against published figures. */
class PublishedBathTest {
    private static final Ledger LEDGER = Ledger.of(PublishedBathTest.class);

    private static final Tolerance POLYNOMIAL =
            Tolerance.percent(0.1, "no uncertainty is stated; asked for by the project");

    private static final Tolerance EUTECTIC_HEAT =
            Tolerance.percent(3, "spread of the sources, and the dihydrate that is left out");

    @ParameterizedTest
    @FromTable("melinder-2010-sodium-chloride-heat")
    void melinder(Row row) {
        double salt = row.number("salt_percent");
        double t = row.number("temperature_c");
        Ledger.At at =
                LEDGER.at(
                        row, row.text("salt_percent") + " %, " + row.text("temperature_c") + " °C");
        at.compare(
                "heat capacity, J/(kg·K)",
                row.number("heat_capacity_j_per_kg_k"),
                1000 * BrineHeat.heatCapacityJPerGK(salt, t),
                POLYNOMIAL);
        at.compare(
                "density, kg/m³",
                row.number("density_kg_per_m3"),
                BrineHeat.densityKgPerM3(salt, t),
                POLYNOMIAL);
    }

    @ParameterizedTest
    @FromTable("ice-salt-full-melt")
    void fullMelt(Row row) {
        IceAndSalt bath = IceAndSalt.of(500 * row.number("ice_to_salt"), 500);
        LEDGER.at(row, row.text("ice_to_salt") + ":1")
                .compare(
                        "temperature as the last ice melts, °C",
                        row.number("temperature_c"),
                        bath.lastIceC(),
                        Tolerance.toMeet(Goal.BATH));
        assertEquals(
                bath.lastIceC(),
                bath.temperatureAfterC(bath.heatUntilMeltedJ()),
                Goal.BATH.size() / 100);
    }

    /** While ice and salt last the bath lies on the handbook's freezing points of brine. */
    @ParameterizedTest
    @FromTable("melinder-2010-freezing-points")
    void bathOnThePhaseDiagram(Row row) {
        if (!row.text("solute").equals("SODIUM_CHLORIDE")) {
            return;
        }
        double percent = row.number("massPercent");
        IceAndSalt bath = IceAndSalt.of(2000, 2000 * percent / (100 - percent));
        LEDGER.at(row, row.text("massPercent") + " % salt")
                .compare(
                        "temperature as the last ice melts, °C",
                        row.number("freezingPointC"),
                        bath.lastIceC(),
                        Tolerance.toMeet(Goal.BATH));
    }

    @ParameterizedTest
    @FromTable("nacl-eutectic-heat")
    void heatOfTheEutectic(Row row) {
        double salt = row.number("salt_percent");
        double t = row.number("temperature_c");
        double share = salt / 100;
        double solid =
                (1 - share) * PureWater.iceEnthalpyJPerG(t)
                        + share * BrineHeat.SOLID_SALT_JPERGK * t;
        LEDGER.at(row, row.text("salt_percent") + " %")
                .compare(
                        "heat of melting, J/g",
                        row.number("heat_j_per_g"),
                        BrineHeat.enthalpyJPerG(salt, t) - solid,
                        EUTECTIC_HEAT);
    }

    @ParameterizedTest
    @FromTable("parker-1965-heat-of-solution")
    void heatOfSolution(Row row) {
        double salt = row.number("salt_percent");
        double found = BrineHeat.heatOfSolutionJPerGSalt(salt) * BrineHeat.SALT_G_PER_MOL / 1000;
        LEDGER.at(row, row.text("salt_percent") + " %")
                .compare(
                        "heat of solution, kJ/mol",
                        row.number("heat_kj_per_mol"),
                        found,
                        Tolerance.of(
                                row.number("uncertainty_kj_per_mol"),
                                "uncertainty of the value itself: Parker's, and of the NBS tables from memory"));
    }
}
