package coldwright.science.freezing;

/**
 * Water activity of molecules that don't dissociate: sugars, sugar alcohols, glycerol.
 *
 * <p>Equation: −ln a_w = −ln(1 − x) + x² (k₀ + k₁ x + k₂ x²), x the mole fraction of solute: the
 * ideal term plus Margules' series, with the right limit (Raoult) in dilute solution. With k₀ alone
 * it is Norrish's equation (R. S. Norrish, J. Food Technol. 1 (1966) 25), with three constants the
 * form of M. Starzak and S. D. Peacock, Zuckerindustrie 122 (1997) 380. Past {@code mostX} the
 * activity coefficient is constant: there are no measurements there, and it must not turn back.
 *
 * @param particles dissolved molecules per formula weight: 1 unless molecules are partly associated
 * @param k k₀, k₁, k₂
 * @param mostX greatest mole fraction to which the series is used
 */
record Margules(double particles, double[] k, double mostX) implements SoluteActivity {
    static Margules upTo(double mostX, double... k) {
        return new Margules(1, k, mostX);
    }

    @Override
    public double minusLn(double molality) {
        double n = particles * molality;
        double x = n / (n + WATER_MOL_PER_KG);
        return -Math.log1p(-x) + excess(k, Math.min(x, mostX));
    }

    /** x² (k₀ + k₁ x + k₂ x² …). */
    static double excess(double[] k, double x) {
        double sum = 0;
        for (int i = k.length - 1; i >= 0; i--) {
            sum = sum * x + k[i];
        }
        return x * x * sum;
    }
}
