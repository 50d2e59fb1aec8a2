package coldwright.science.freezing;

/**
 * Water activity of fruit acids, which dissociate in part.
 *
 * <p>Equation: as {@link Margules}, but counted in particles m(1 + α), where α solves α² m / (1 −
 * α) = K_a: the first dissociation, with activity coefficients left out. α is near 1 in very dilute
 * solution and below 0.1 in lemon juice; the further dissociations hardly matter.
 *
 * @param ka first dissociation constant, mol/kg
 * @param k the Margules constants
 * @param mostX greatest mole fraction to which the series is used
 */
record WeakAcid(double ka, double[] k, double mostX) implements SoluteActivity {
    @Override
    public double minusLn(double molality) {
        double ions = 2 * ka * molality / (ka + Math.sqrt(ka * ka + 4 * ka * molality));
        double n = molality + ions;
        double x = n / (n + WATER_MOL_PER_KG);
        return -Math.log1p(-x) + Margules.excess(k, Math.min(x, mostX));
    }
}
