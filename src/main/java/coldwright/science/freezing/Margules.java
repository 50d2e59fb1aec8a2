package coldwright.science.freezing;

record Margules(double k) implements WaterBinding {
    static Margules of(double k) {
        return new Margules(k);
    }

    @Override
    public double minusLn(double molality) {
        double x = molality / (molality + WATER_MOL_PER_KG);
        return -Math.log1p(-x) + k * x * x;
    }
}
