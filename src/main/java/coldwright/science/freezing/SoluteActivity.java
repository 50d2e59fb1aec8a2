package coldwright.science.freezing;

/** What one solute, alone in water, takes from water's activity along its own ice line. */
interface SoluteActivity {
    /** Moles of water in a kilogram of it: 1000 / 18.01528 (IUPAC atomic weights). */
    double WATER_MOL_PER_KG = 1000 / 18.01528;

    /**
     * −ln of the water activity: 0 in pure water, and rising with every bit of solute.
     *
     * @param molality mol of solute per kg of liquid water
     * @return −ln a_w
     */
    double minusLn(double molality);

    /**
     * The molality at which −ln a_w has a value: the inverse of {@link #minusLn}. Halved rather
     * than solved by a library: each fresh process would load the solver's classes (30 ms) for its
     * first freezing point.
     *
     * @param minusLn wanted −ln a_w, above 0
     * @return mol of solute per kg of liquid water
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
