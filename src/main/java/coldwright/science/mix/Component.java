package coldwright.science.mix;

import coldwright.science.freezing.Solute;

import java.util.Locale;
import java.util.Optional;

/** A component of a composition; all together make up 100 %. */
public enum Component {
    WATER(Kind.WATER),
    MILK_FAT(Kind.FAT),
    OTHER_FAT(Kind.FAT),
    MILK_PROTEIN(Kind.PROTEIN),
    OTHER_PROTEIN(Kind.PROTEIN),
    SUCROSE(Kind.SUGAR, Solute.SUCROSE),
    GLUCOSE(Kind.SUGAR, Solute.GLUCOSE),
    FRUCTOSE(Kind.SUGAR, Solute.FRUCTOSE),
    LACTOSE(Kind.SUGAR, Solute.LACTOSE),
    MALTOSE(Kind.SUGAR, Solute.MALTOSE),
    GALACTOSE(Kind.SUGAR, Solute.GALACTOSE),
    TREHALOSE(Kind.SUGAR, Solute.TREHALOSE),
    /** Chains of three and more glucose units from starch syrups; dissolved, hardly sweet. */
    HIGHER_SACCHARIDES(Kind.CARBOHYDRATE),
    SORBITOL(Kind.POLYOL, Solute.SORBITOL),
    GLYCEROL(Kind.POLYOL, Solute.GLYCEROL),
    STARCH(Kind.CARBOHYDRATE),
    FIBRE(Kind.CARBOHYDRATE),
    OTHER_CARBOHYDRATE(Kind.CARBOHYDRATE),
    /** Minerals of milk, as its ash. */
    MILK_SALTS(Kind.MINERAL),
    /** Minerals of everything else, as its ash without added salt. */
    ASH(Kind.MINERAL),
    /** Added sodium chloride. */
    SALT(Kind.MINERAL, Solute.SODIUM_CHLORIDE),
    POTASSIUM_CHLORIDE(Kind.MINERAL, Solute.POTASSIUM_CHLORIDE),
    CALCIUM_CHLORIDE(Kind.MINERAL, Solute.CALCIUM_CHLORIDE),
    ALCOHOL(Kind.ALCOHOL, Solute.ETHANOL),
    CITRIC_ACID(Kind.ACID, Solute.CITRIC_ACID),
    MALIC_ACID(Kind.ACID, Solute.MALIC_ACID),
    TARTARIC_ACID(Kind.ACID, Solute.TARTARIC_ACID),
    LACTIC_ACID(Kind.ACID, Solute.LACTIC_ACID),
    ACETIC_ACID(Kind.ACID),
    /** Gums, gelatine, pectin. */
    STABILISER(Kind.OTHER),
    /** Lecithin and mono- and diglycerides sold as such. */
    EMULSIFIER(Kind.OTHER);

    private final Kind kind;
    private final Optional<Solute> solute;

    Component(Kind kind) {
        this.kind = kind;
        this.solute = Optional.empty();
    }

    Component(Kind kind, Solute solute) {
        this.kind = kind;
        this.solute = Optional.of(solute);
    }

    /** {@return its family} */
    public Kind kind() {
        return kind;
    }

    /** {@return what it is as a solute with a model of its own; empty for all others} */
    public Optional<Solute> solute() {
        return solute;
    }

    /** {@return its name in plain words, such as {@code milk fat}} */
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
