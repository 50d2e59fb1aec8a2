package coldwright.science.freezing;

/** Lowering of water activity by one solute, alone in water, along its own ice line. */
interface SoluteActivity {
    /** Moles of water in a kilogram of it: 1000 / 18.01528 (IUPAC atomic weights). */
    double WATER_MOL_PER_KG = 1000 / 18.01528;

    /**
     * {@return −ln of the water activity at mol of solute per kg of liquid water: 0 in pure water,
     * and rising with the amount of solute}
     */
    double minusLn(double molality);

    /**
     * {@return mol of solute per kg of liquid water at which −ln a_w has a value above 0: the
     * inverse of {@link #minusLn}} Bisection instead of a library's solver, because loading the
     * solver's classes would add 30 ms to the first freezing point of each process.
     */
    default double molality(double minusLn) {
        double high = minusLn * WATER_MOL_PER_KG;
        while (minusLn(high) < minusLn) {
            high *= 2;
        }
        double low = 0;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (minusLn(middle) < minusLn) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /**
     * Water activity of molecules that don't dissociate: sugars, sugar alcohols, glycerol.
     *
     * <p>Equation: −ln a_w = −ln(1 − x) + x² (k₀ + k₁ x + k₂ x²), x the mole fraction of solute:
     * the ideal term plus Margules' series, with the right limit (Raoult) in dilute solution. With
     * k₀ alone it is Norrish's equation (R. S. Norrish, J. Food Technol. 1 (1966) 25), with three
     * constants the form of M. Starzak and S. D. Peacock, Zuckerindustrie 122 (1997) 380. Past
     * {@code mostX} the activity coefficient is constant: there are no measurements there, and it
     * must not turn back.
     *
     * @param particles dissolved molecules per formula weight: 1 unless molecules are partly
     *     associated
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

    /**
     * Water activity of fruit acids, which dissociate in part.
     *
     * <p>Equation: as {@link Margules}, but counted in particles m(1 + α), where α solves α² m / (1
     * − α) = K_a: the first dissociation, with activity coefficients left out. α is near 1 in very
     * dilute solution and below 0.1 in lemon juice; the further dissociations hardly matter.
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

    /**
     * Water activity with ethanol, from a dash of rum to neat spirit.
     *
     * <p>Equation: −ln a_w = −ln(1 − x) + x² K(x), K(x) = a + b x + c/(1 + ((x − p)/w)²) + d/(1 +
     * ((x − q)/v)²): Margules' leading term with two bells, because cold water forms cages at about
     * one molecule of alcohol in seven, which no short series fits. An empirical form of this
     * project.
     *
     * <p>Eight constants by least squares on 13 rows of the CRC table (0–68 %, to −49.5 °C) and,
     * loosely (±3 °C), on −102.4 °C at 90 % (from a chart without a source, as good as from
     * memory). All other rows of that table agree within 0.21 °C, Melinder's curve within 0.15 °C.
     * Past 68 % it is a guess: sources differ by 6 °C at 73 %.
     */
    record Ethanol() implements SoluteActivity {
        private static final double LEVEL = -2.8398;
        private static final double SLOPE = 1.4138;
        private static final Bell NARROW = new Bell(1.7283, 0.1304, 0.072037);
        private static final Bell WIDE = new Bell(3.1422, 0.14461, 0.28698);

        @Override
        public double minusLn(double molality) {
            double x = molality / (molality + WATER_MOL_PER_KG);
            double k = LEVEL + SLOPE * x + NARROW.at(x) + WIDE.at(x);
            return -Math.log1p(-x) + k * x * x;
        }

        private record Bell(double height, double centre, double width) {
            double at(double x) {
                double off = (x - centre) / width;
                return height / (1 + off * off);
            }
        }
    }

    /**
     * Water activity of salts, which dissociate into ions.
     *
     * <p>Equation: −ln a_w = ν m φ / 55.508, with the osmotic coefficient in Pitzer's form, φ = 1 −
     * A|z₊z₋|√I/(1 + 1.2√I) + m(b₀ + b₁ e^(−2√I)) + c m² (K. S. Pitzer, J. Phys. Chem. 77 (1973)
     * 268; from memory). A = 0.377 (kg/mol)^½ is the Debye–Hückel slope of water at 0 °C (from
     * memory), so that dilute brine obeys the limiting law. The constants b and c are valid along
     * the ice line, not at one temperature. Past {@code mostMolality} φ is constant.
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
}
