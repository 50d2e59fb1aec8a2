package coldwright.science.freezing;

/**
 * Water activity of salts, which dissociate into ions.
 *
 * <p>Equation: −ln a_w = ν m φ / 55.508, with the osmotic coefficient in Pitzer's form, φ = 1 −
 * A|z₊z₋|√I/(1 + 1.2√I) + m(b₀ + b₁ e^(−2√I)) + c m² (K. S. Pitzer, J. Phys. Chem. 77 (1973) 268;
 * from memory). A = 0.377 (kg/mol)^½ is the Debye–Hückel slope of water at 0 °C (from memory), so
 * that dilute brine obeys the limiting law. The constants b and c are valid along the ice line, not
 * at one temperature. Past {@code mostMolality} φ is constant.
 *
 * @param ions ν, ions per formula
 * @param charges |z₊z₋|
 * @param strengthPerMolality ionic strength I per molality
 * @param b0 b₀, kg/mol
 * @param b1 b₁, kg/mol
 * @param c c, (kg/mol)²
 * @param mostMolality greatest molality to which the series is used, mol/kg
 */
record Electrolyte(
        int ions,
        int charges,
        int strengthPerMolality,
        double b0,
        double b1,
        double c,
        double mostMolality)
        implements SoluteActivity {
    private static final double DEBYE_HUECKEL = 0.377;

    @Override
    public double minusLn(double molality) {
        double m = Math.min(molality, mostMolality);
        double root = Math.sqrt(strengthPerMolality * m);
        double osmotic =
                1
                        - DEBYE_HUECKEL * charges * root / (1 + 1.2 * root)
                        + m * (b0 + b1 * Math.exp(-2 * root) + c * m);
        return ions * molality * osmotic / WATER_MOL_PER_KG;
    }
}
