package coldwright.batch;

import coldwright.science.Require;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/** What is typed of a batch's freezing and storage, each with its unit and its range. */
public enum SetupField {
    /** The freezer's temperature, °C, −60 to 0. */
    FREEZER("freezer", "°C", text -> TypedQuantity.of("freezer", text).celsius(-60, 0)),
    /** How much the volume grows by air, %, 0 to 200. */
    AIR("air", "%", text -> TypedQuantity.of("air", text).percent(0, 200)),
    /** How long it is stored, days, up to 1000. */
    DAYS("days", "days", SetupField::days),
    /** How far the freezer swings up and down, °C, up to 10. */
    SWING("swinging", "°C", SetupField::swing),
    /** To what temperature it was warmed once, °C, up to −0.5. */
    WARM("warmed to", "°C", SetupField::warm),
    /** For how long it was so warm, h. */
    WARM_FOR("warmed for", "h", SetupField::hours),
    /** Ice of the bath, g, more than 0. */
    ICE("ice", "g", SetupField::ice),
    /** Salt of the bath, g, more than 0. */
    SALT("salt", "g", SetupField::salt);

    /** What to do about a bath without ice. */
    static final String NO_ICE = "the bath has no ice; write it as: bath: ice 2000 g, salt 500 g";

    /** What to do about a bath without salt. */
    static final String NO_SALT =
            "the bath has no salt, and ice alone stands at 0 °C, where no mix freezes; add about a quarter of the ice's weight in salt";

    private final String key;
    private final String unit;
    private final Function<String, Double> reader;
    private final Pattern unitAtEnd;

    SetupField(String key, String unit, Function<String, Double> reader) {
        this.key = key;
        this.unit = unit;
        this.reader = reader;
        this.unitAtEnd = Pattern.compile("(?iu)\\s*(?<![a-z])" + Pattern.quote(unit) + "$");
    }

    private static double days(String text) {
        return Require.within(
                "stored", TypedQuantity.of("stored", text).days(), StorageConditions.DAYS);
    }

    private static double swing(String text) {
        return Require.within(
                "swinging", TypedQuantity.of("swinging", text).degrees(), StorageConditions.SWING);
    }

    private static double warm(String text) {
        Require.Range warm = StorageConditions.WARM;
        return TypedQuantity.of("warmed", text).celsius(warm.least(), warm.most());
    }

    private static double hours(String text) {
        return Require.within(
                "warmed for",
                TypedQuantity.of("warmed for", text).hours(),
                StorageConditions.HOURS);
    }

    private static double ice(String text) {
        double massG = TypedQuantity.of("ice", text).grams();
        if (!(massG > 0)) {
            throw new IllegalArgumentException(NO_ICE);
        }
        return massG;
    }

    private static double salt(String text) {
        double massG = TypedQuantity.of("salt", text).grams();
        if (massG == 0) {
            throw new IllegalArgumentException(NO_SALT);
        }
        return massG;
    }

    /** Reads what is typed, right or wrong. */
    Typed<Double> read(String text) {
        return Typed.of(text, reader);
    }

    /** The same without the unit that the field has anyway. */
    String withoutUnit(String text) {
        return unitAtEnd.matcher(text.strip()).replaceFirst("");
    }

    /** The same with the field's unit, if it has none. */
    String withUnit(String text) {
        String bare = text.strip();
        return Character.isDigit(bare.charAt(bare.length() - 1)) ? bare + " " + unit : bare;
    }

    /** Its name where a file names it alone. */
    String key() {
        return key;
    }

    static Optional<SetupField> ofKey(String key) {
        return Arrays.stream(values()).filter(one -> one.key.equals(key)).findFirst();
    }
}
