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
}
