package coldwright.science.mix;

import java.util.Locale;

/** A component of a composition; all together make up 100 %. */
public enum Component {
    WATER(Kind.WATER),
    MILK_FAT(Kind.FAT),
    OTHER_FAT(Kind.FAT),
    MILK_PROTEIN(Kind.PROTEIN),
    OTHER_PROTEIN(Kind.PROTEIN),
    SUCROSE(Kind.SUGAR),
    GLUCOSE(Kind.SUGAR),
    FRUCTOSE(Kind.SUGAR),
    LACTOSE(Kind.SUGAR),
    MALTOSE(Kind.SUGAR),
    GALACTOSE(Kind.SUGAR),
    TREHALOSE(Kind.SUGAR),
    ALLULOSE(Kind.SUGAR),
    ISOMALTULOSE(Kind.SUGAR),
    /** Chains of three and more glucose units from starch syrups; dissolved, hardly sweet. */
    HIGHER_SACCHARIDES(Kind.CARBOHYDRATE),
    SORBITOL(Kind.POLYOL),
    GLYCEROL(Kind.POLYOL),
    ERYTHRITOL(Kind.POLYOL),
    XYLITOL(Kind.POLYOL),
    MALTITOL(Kind.POLYOL),
    ISOMALT(Kind.POLYOL),
    LACTITOL(Kind.POLYOL),
    MANNITOL(Kind.POLYOL),
    /** Chains of fructose units, of any length; dissolved. */
    INULIN(Kind.CARBOHYDRATE),
    /** Branched chains of glucose units; dissolved. */
    POLYDEXTROSE(Kind.CARBOHYDRATE),
    STARCH(Kind.CARBOHYDRATE),
    FIBRE(Kind.CARBOHYDRATE),
    OTHER_CARBOHYDRATE(Kind.CARBOHYDRATE),
    /** Minerals of milk, as its ash. */
    MILK_SALTS(Kind.MINERAL),
    /** Minerals of everything else, as its ash without added salt. */
    ASH(Kind.MINERAL),
    /** Added sodium chloride. */
    SALT(Kind.MINERAL),
    POTASSIUM_CHLORIDE(Kind.MINERAL),
    CALCIUM_CHLORIDE(Kind.MINERAL),
    ALCOHOL(Kind.ALCOHOL),
    CITRIC_ACID(Kind.ACID),
    MALIC_ACID(Kind.ACID),
    TARTARIC_ACID(Kind.ACID),
    LACTIC_ACID(Kind.ACID),
    ACETIC_ACID(Kind.ACID),
    /** Gums, gelatine, pectin. */
    STABILISER(Kind.OTHER),
    /** Lecithin and mono- and diglycerides sold as such. */
    EMULSIFIER(Kind.OTHER),
    /** The sweet substances of stevia leaves. */
    STEVIOL_GLYCOSIDES(Kind.OTHER),
    SUCRALOSE(Kind.OTHER);

    private final Kind kind;

    Component(Kind kind) {
        this.kind = kind;
    }

    /**
     * The family of the component.
     *
     * @return the family
     */
    public Kind kind() {
        return kind;
    }

    /**
     * Its name in plain words.
     *
     * @return such as {@code milk fat}
     */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** A family of components. */
    public enum Kind {
        WATER,
        FAT,
        PROTEIN,
        SUGAR,
        POLYOL,
        CARBOHYDRATE,
        MINERAL,
        ALCOHOL,
        ACID,
        OTHER
    }
}
