package coldwright.science.freezing;

/**
 * Water activity with ethanol, from a dash of rum to neat spirit.
 *
 * <p>Equation: −ln a_w = −ln(1 − x) + x² K(x), K(x) = a + b x + c/(1 + ((x − p)/w)²) + d/(1 + ((x −
 * q)/v)²): Margules' leading term with two bells, because cold water forms cages at about one
 * molecule of alcohol in seven, which no short series fits. An empirical form of this project.
 *
 * <p>Eight constants by least squares on 13 rows of the CRC table (0–68 %, to −49.5 °C) and,
 * loosely (±3 °C), on −102.4 °C at 90 % (from a chart without a source, as good as from memory).
 * All other rows of that table agree within 0.21 °C, Melinder's curve within 0.15 °C. Past 68 % it
 * is a guess: sources differ by 6 °C at 73 %.
 */
record EthanolActivity() implements SoluteActivity {
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
