package coldwright.science.freezing;

import coldwright.published.FromTable;
import coldwright.published.Ledger;
import coldwright.published.PublishedTable.Row;
import coldwright.published.Tolerance;

import org.junit.jupiter.params.ParameterizedTest;

/**
 * Dilute brine against the limiting law of P. Debye and E. Hückel, whose slope follows from the
 * constants of nature and from water's density and permittivity at 0 °C; nothing in it is fitted.
 */
class LimitingLawTest {
    private static final Ledger LEDGER = Ledger.of(LimitingLawTest.class);

    /**
     * The permittivity is given to 0.05 %, which makes 0.0003 of the slope; the rest is rounding.
     */
    private static final Tolerance PERMITTIVITY =
            Tolerance.of(0.001, "uncertainty of the permittivity of water, and rounding to 0.001");

    private static final double AVOGADRO = 6.02214076e23;
    private static final double CHARGE_C = 1.602176634e-19;
    private static final double BOLTZMANN = 1.380649e-23;
    private static final double VACUUM = 8.8541878128e-12;

    /** So dilute that the denominator 1 + 1.2√I and the terms in m are below 0.02 %. */
    private static final double MOLALITY = 1e-8;

    @ParameterizedTest
    @FromTable("debye-hueckel-slope")
    void diluteBrineObeysTheLimitingLaw(Row row) {
        Solute salt = Solute.valueOf(row.text("solute"));
        double stronger = row.number("ionic_strength_per_molality");
        double charges = row.number("charges");
        double osmotic =
                salt.binding().minusLn(MOLALITY)
                        * SoluteActivity.WATER_MOL_PER_KG
                        / (row.number("ions") * MOLALITY);
        double slope = (1 - osmotic) / charges / Math.sqrt(stronger * MOLALITY);
        LEDGER.at(row, salt.displayName())
                .compare(
                        "slope of the osmotic coefficient, (kg/mol)^½",
                        slope(row),
                        slope,
                        PERMITTIVITY);
    }

    /** A = ⅓ √(2π N ρ) (e²/(4π ε₀ ε k T))^(3/2). */
    private static double slope(Row row) {
        double kelvin = row.number("temperature_k");
        double bjerrum =
                CHARGE_C
                        * CHARGE_C
                        / (4 * Math.PI * VACUUM * row.number("permittivity") * BOLTZMANN * kelvin);
        return Math.sqrt(2 * Math.PI * AVOGADRO * row.number("density_kg_per_m3"))
                * Math.pow(bjerrum, 1.5)
                / 3;
    }
}
