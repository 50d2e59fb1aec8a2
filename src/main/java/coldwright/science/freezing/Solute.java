package coldwright.science.freezing;

import coldwright.science.freezing.SoluteActivity.Electrolyte;
import coldwright.science.freezing.SoluteActivity.Margules;
import coldwright.science.freezing.SoluteActivity.WeakAcid;
import coldwright.words.Phrase;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A small molecule or salt that lowers the freezing point of a mix, with its model and sources.
 *
 * <p>Masses are without crystal water (glucose monohydrate is 9 % water). "CRC" is J. Rumble (ed.),
 * CRC Handbook of Chemistry and Physics, 102nd ed. (2021), table "Concentrative properties of
 * aqueous solutions", read second-hand in a transcription; the constants are least-squares fits to
 * the rows marked {@code fit} in the tests' table {@code crc-102-freezing-points}.
 */
public enum Solute {
    /**
     * Table sugar. Fitted to four CRC rows and the eutectic 62.3 %, −13.95 °C (F. E. Young and F.
     * T. Jones, J. Phys. Colloid Chem. 53 (1949) 1334; value from memory). Starzak and Peacock's
     * equation of 1997, not used in the fit, agrees within 0.05 °C to 30 % and within 4 % to 75 %.
     */
    SUCROSE(342.296, Margules.upTo(0.18, 5.922, 57.13, -351.9), -34, crc(-13.95, 1)),

    /** Grape sugar, dextrose. Fitted to four CRC rows (to 30 %) and −46 °C at 80 % (memory). */
    GLUCOSE(180.156, Margules.upTo(0.29, 2.775, -5.265), -46, crc(-4.79, 1)),

    /** Fruit sugar. Fitted to five CRC rows (to 28 %; the print has a kink) and −46 °C at 80 %. */
    FRUCTOSE(180.156, Margules.upTo(0.29, 1.966, -2.439), -46, crc(-4.2, 1.5)),

    /** Milk sugar. Fitted to two CRC rows (the table ends at 8 %) and −30 °C at 80 % (memory). */
    LACTOSE(342.296, Margules.upTo(0.25, 6.822, -19.93), -30, crc(-0.5, 3)),

    /** Malt sugar. Fitted to five CRC rows (to 44 %) and −32 °C at 80 % (from memory). */
    MALTOSE(342.296, Margules.upTo(0.15, 3.896, 112.5, -644.5), -32, crc(-5.35, 1)),

    /** One half of lactose: taken as glucose, whose Norrish constant is the same (memory). */
    GALACTOSE(GLUCOSE, 180.156, -45, 3),

    /** The sugar of mushrooms: taken as sucrose. */
    TREHALOSE(SUCROSE, 342.296, -30, 3),

    /** A rare sugar, a mirror of fructose at one carbon: taken as fructose. */
    ALLULOSE(FRUCTOSE, 180.156, -46, 3),

    /** Glucose and fructose, joined at another carbon than in sucrose: taken as sucrose. */
    ISOMALTULOSE(SUCROSE, 342.296, -34, 3),

    /** Sugar alcohol of maltose: taken as maltose, with its own molar mass. */
    MALTITOL(MALTOSE, 344.313, -34, 4),

    /** Two sugar alcohols of isomaltulose, without crystal water: taken as sucrose. */
    ISOMALT(SUCROSE, 344.313, -34, 4),

    /** Sugar alcohol of lactose, without crystal water: taken as lactose. */
    LACTITOL(LACTOSE, 344.313, -30, 4),

    /** Sugar alcohol. Two of its CRC rows set the 0.7 of the other polyols. */
    MANNITOL(182.171, polyol(0.906), -40, crc(-1.69, 1)),

    /** Sugar alcohol. */
    SORBITOL(182.172, polyol(1.65), -49, Validity.unmeasured("activity", 4)),

    /** Sugar alcohol. */
    XYLITOL(152.146, polyol(1.66), -57, Validity.unmeasured("activity", 4)),

    /** Sugar alcohol. */
    ERYTHRITOL(122.12, polyol(1.34), -57, Validity.unmeasured("activity", 4)),

    /** Glycerine. Fitted to five CRC rows and the eutectic 66.7 %, −46.5 °C (from memory). */
    GLYCEROL(92.094, Margules.upTo(0.6, 2.608, -4.144), -65, crc(-46.5, 1)),

    /** Drinking alcohol; see {@code SoluteActivity.Ethanol}. */
    ETHANOL(46.068, new SoluteActivity.Ethanol(), -115, crc(-49.5, 1.5)),

    /** Table salt. Fitted to six CRC rows and the eutectic 23.3 %, −21.1 °C. */
    SODIUM_CHLORIDE(
            58.443,
            new Electrolyte(2, 1, 1, 0.04262, 0.269, 0.003477, 6.2),
            -21.1,
            crc(-21.1, 0.3)),

    /**
     * The other table salt. Fitted to six CRC rows (to 13 %) and the eutectic 19.7 %, −10.7 °C
     * (from memory; J. Chin. Inst. Chem. Eng. 33 (2002) 469 measured 19.5 %, −11.1 °C, abstract
     * read).
     */
    POTASSIUM_CHLORIDE(
            74.551, new Electrolyte(2, 1, 1, 0.02289, 0.1818, 0, 6), -10.7, crc(-10.7, 1)),

    /**
     * Cheese and road salt. Fitted to six CRC rows up to 20 %, where sources begin to differ: at 30
     * % CRC gives −41, Melinder −48 °C. Eutectic 30.2 %, −49.8 °C from memory.
     */
    CALCIUM_CHLORIDE(
            110.984, new Electrolyte(3, 2, 3, 0.4586, 1.132, -0.02069, 6), -49.8, crc(-18.3, 0.5)),

    /** The acid of lemons. K_a 7.4e-4 (from memory); fitted to seven CRC rows (to 30 %). */
    CITRIC_ACID(
            192.124, new WeakAcid(7.4e-4, new double[] {3.18, -60.14}, 0.039), -50, crc(-4.25, 1)),

    /**
     * The acid of yogurt. The acid of the CRC table counts as 0.89 molecules per formula weight, as
     * it does when some molecules form pairs; fitted to its rows as one number.
     */
    LACTIC_ACID(90.078, new Margules(0.89, new double[] {0}, 1), -60, crc(-4.44, 1.5)),

    /** The acid of apples. K_a 4.0e-4 and Norrish's constant 1.82, both from memory. */
    MALIC_ACID(
            134.087,
            new WeakAcid(4.0e-4, new double[] {1.82}, 0.1),
            -50,
            Validity.unmeasured("activity-from-memory", 4)),

    /** The acid of grapes. K_a 1.0e-3 and Norrish's constant 4.68, both from memory. */
    TARTARIC_ACID(
            150.087,
            new WeakAcid(1.0e-3, new double[] {4.68}, 0.1),
            -50,
            Validity.unmeasured("activity-from-memory", 4));

    private final double molarMassGPerMol;
    private final SoluteActivity binding;
    private final double iceStopsC;
    private final Eutectic eutectic;
    private final Validity validity;
    private volatile double[] effectiveParticles;

    /** A solute without measurements of its own, taken as another. */
    Solute(Solute like, double molarMassGPerMol, double iceStopsC, double errorPercent) {
        this(
                molarMassGPerMol,
                like.binding,
                iceStopsC,
                Validity.unmeasured("like-" + like.displayName(), errorPercent));
    }

    Solute(double molarMassGPerMol, SoluteActivity binding, double iceStopsC, Validity validity) {
        this.molarMassGPerMol = molarMassGPerMol;
        this.binding = binding;
        this.iceStopsC = iceStopsC;
        this.eutectic = null;
        this.validity = validity;
    }

    Solute(double molarMassGPerMol, Electrolyte binding, double eutecticC, Validity validity) {
        this.molarMassGPerMol = molarMassGPerMol;
        this.binding = binding;
        this.iceStopsC = Double.NaN;
        this.eutectic = Eutectic.at(eutecticC, binding);
        this.validity = validity;
    }

    /**
     * Finds a solute by its name.
     *
     * @param name as {@link #displayName} gives it, in any case
     * @throws IllegalArgumentException if there is none of that name; the message lists them
     */
    public static Solute named(String name) {
        for (Solute solute : values()) {
            if (solute.displayName().equalsIgnoreCase(name.strip())) {
                return solute;
            }
        }
        throw new IllegalArgumentException(
                "\"%s\" is not a solute; use one of %s"
                        .formatted(
                                name,
                                Arrays.stream(values())
                                        .map(Solute::displayName)
                                        .collect(Collectors.joining(", "))));
    }

    /** {@return molar mass without crystal water, g/mol, from the CRC table if it is there} */
    public double molarMassGPerMol() {
        return molarMassGPerMol;
    }

    /** Its name in any language. */
    public Phrase phrase() {
        return Phrase.named("science.freezing", "solute", displayName());
    }

    /** {@return the name as used in a sentence, such as {@code sodium chloride}} */
    public String displayName() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** {@return range, error and source of the model of this solute alone in water} */
    public Validity validity() {
        return validity;
    }

    /**
     * {@return whether it is a salt, which crystallises with the last ice at a eutectic: true for
     * sodium, potassium and calcium chloride}
     */
    public boolean isSalt() {
        return eutectic != null;
    }

    SoluteActivity binding() {
        return binding;
    }

    /** The eutectic of a salt; null for anything else. */
    Eutectic eutectic() {
        return eutectic;
    }

    /**
     * Temperature Tm′ below which no more ice grows in it, °C; not a number for salts. All from
     * memory (Y. Roos, Carbohydr. Res. 238 (1993) 39, for the sugars); acids, erythritol, mannitol,
     * alcohol and whatever is taken as another sugar by judgement.
     */
    double iceStopsC() {
        return iceStopsC;
    }

    /** See {@link IceLineGrid#effectiveParticles}; made at first use. */
    double[] effectiveParticles() {
        double[] made = effectiveParticles;
        if (made == null) {
            made = IceLineGrid.effectiveParticles(binding);
            effectiveParticles = made;
        }
        return made;
    }

    /**
     * A sugar alcohol without a freezing table of its own, by Norrish's constant K at 25 °C (table
     * 3 of an open review, pmc.ncbi.nlm.nih.gov PMC2836749: sorbitol 1.65, xylitol 1.66, erythritol
     * 1.34, mannitol 0.906, glycerol 1.16).
     *
     * <p>Near 0 °C it is larger, because these solutions give off heat when diluted: the CRC
     * freezing points give 1.6 for mannitol and 2.3 for glycerol, 0.7 and 1.1 more. Mannitol's 0.7
     * is added here, by judgement; the fall with concentration is glycerol's. A Japanese
     * measurement (Nippon Shokuhin Kagaku Kogaku Kaishi 44 (1997) 380, abstract read) finds that
     * such polyols freeze slightly above the sugars they come from, as they do here.
     */
    private static Margules polyol(double norrishAt25C) {
        return Margules.upTo(0.3, norrishAt25C + 0.7, -2.5);
    }

    private static Validity crc(double coldestC, double errorPercent) {
        return new Validity(coldestC, errorPercent, Phrase.of("science.freezing", "source.crc"));
    }

    /**
     * The eutectic of a salt and water, °C, where both freeze out together and no brine is left:
     * salt in the last brine, mol per kg of water, by the salt's own model. Colder liquids are
     * assumed to dissolve no more.
     */
    record Eutectic(double temperatureC, double molality) {
        static Eutectic at(double temperatureC, SoluteActivity binding) {
            return new Eutectic(temperatureC, binding.molality(IceActivity.minusLn(temperatureC)));
        }
    }
}
