package coldwright.science.freezing;

/**
 * Fruit acids: molecules of which some fall into two.
 *
 * <p>Equation: as {@link Margules}, but counted in particles m(1 + α), where α solves α² m / (1 −
 * α) = K_a: the first dissociation, with activity coefficients left out. In very dilute solution α
 * nears 1, in lemon juice it is under 0.1; the further dissociations hardly matter.
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
