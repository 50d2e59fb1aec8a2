package coldwright.science.freezing;

import java.util.Locale;

/** Small molecules and salts that dissolve in a mix and lower its freezing point. */
public enum Solute {
    /** Table sugar. */
    SUCROSE(342.296, Margules.of(6.47)),
    /** Grape sugar, dextrose (anhydrous). */
    GLUCOSE(180.156, Margules.of(2.25)),
    /** Fruit sugar. */
    FRUCTOSE(180.156, Margules.of(2.25)),
    /** Milk sugar. */
    LACTOSE(342.296, Margules.of(6.47)),
    /** Malt sugar. */
    MALTOSE(342.296, Margules.of(6.47)),
    /** One half of lactose. */
    GALACTOSE(180.156, Margules.of(2.25)),
    /** The mushroom sugar. */
    TREHALOSE(342.296, Margules.of(6.47)),
    /** A sugar alcohol. */
    SORBITOL(182.172, Margules.of(1.65)),
    /** Glycerine. */
    GLYCEROL(92.094, Margules.of(1.16)),
    /** Drinking alcohol. */
    ETHANOL(46.068, Margules.of(1.0)),
    /** Table salt. */
    SODIUM_CHLORIDE(58.443, new Electrolyte(2, 1, new double[] {0.02})),
    /** The other table salt. */
    POTASSIUM_CHLORIDE(74.551, new Electrolyte(2, 1, new double[] {0.0})),
    /** Road and cheese salt (anhydrous). */
    CALCIUM_CHLORIDE(110.984, new Electrolyte(3, 2, new double[] {0.1})),
    /** The acid of lemons (anhydrous). */
    CITRIC_ACID(192.124, Margules.of(2.0));

    private final double molarMassGPerMol;
    private final WaterBinding binding;

    Solute(double molarMassGPerMol, WaterBinding binding) {
        this.molarMassGPerMol = molarMassGPerMol;
        this.binding = binding;
    }

    /**
     * Molar mass without any crystal water.
     *
     * @return g/mol, from the CRC Handbook's table of concentrative properties
     */
    public double molarMassGPerMol() {
        return molarMassGPerMol;
    }

    /**
     * The name as it stands in a sentence.
     *
     * @return such as {@code sodium chloride}
     */
    public String spoken() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    WaterBinding binding() {
        return binding;
    }
}
