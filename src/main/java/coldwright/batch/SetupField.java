package coldwright.batch;

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
    DAYS("days", "days", text -> StorageConditions.days(TypedQuantity.of("stored", text).days())),
    /** How far the freezer swings up and down, °C, up to 10. */
    SWING(
            "swinging",
            "°C",
            text -> StorageConditions.swing(TypedQuantity.of("swinging", text).degrees())),
    /** To what temperature it was warmed once, °C, −40 to −0.5. */
    WARM("warmed to", "°C", text -> TypedQuantity.of("warmed", text).celsius(-40, -0.5)),
    /** For how long it was so warm, h, up to 100. */
    WARM_FOR(
            "warmed for",
            "h",
            text -> StorageConditions.hours(TypedQuantity.of("warmed for", text).hours())),
    /** Ice of the bath, g, more than 0. */
    ICE("ice", "g", text -> some("ice", text, SetupField.NO_ICE)),
    /** Salt of the bath, g, more than 0. */
    SALT("salt", "g", text -> some("salt", text, SetupField.NO_SALT));

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

    private static double some(String what, String text, String none) {
        double massG = TypedQuantity.of(what, text).grams();
        if (massG == 0) {
            throw new IllegalArgumentException(none);
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
