package coldwright.science.freezing;

/** What one solute, alone in water, takes from water's activity. */
interface WaterBinding {
    /** Moles of water in a kilogram of it: 1000 / 18.01528 (IUPAC atomic weights). */
    double WATER_MOL_PER_KG = 1000 / 18.01528;

    /**
     * −ln a_w of the solution, never negative and never falling as molality rises.
     *
     * @param molality mol of solute per kg of liquid water
     * @return −ln of the water activity
     */
    double minusLn(double molality);
}
