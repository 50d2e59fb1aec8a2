package coldwright.science.freezing;

record Electrolyte(int ions, int chargeProduct, double[] virial) implements WaterBinding {
    @Override
    public double minusLn(double molality) {
        double strength = chargeProduct == 1 ? molality : 3 * molality;
        double root = Math.sqrt(strength);
        double phi = 1 - 0.377 * chargeProduct * root / (1 + 1.2 * root);
        double power = molality;
        for (double c : virial) {
            phi += c * power;
            power *= molality;
        }
        return ions * molality * phi / WATER_MOL_PER_KG;
    }
}
