package coldwright.batch;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/** Fields of a batch's freezing and storage, each with its unit and range. */
public enum SetupField {
    /** The freezer's temperature, °C, −60 to 0. */
    FREEZER("freezer", "°C", text -> TypedQuantity.of("freezer", text).celsius(-60, 0)),
    /** Overrun, %, 0 to 200. */
    AIR("air", "%", text -> TypedQuantity.of("air", text).percent(200)),
    /** Temperature at which it is served, °C, −40 to −1; the style's if nothing is typed. */
    SERVING("serving", "°C", text -> TypedQuantity.of("serving", text).celsius(-40, -1)),
    /** Storage time, days, up to 1000. */
    DAYS("days", "days", text -> TypedQuantity.of("stored", text).days(1000)),
    /** Temperature variation of the freezer, ± °C, up to 10. */
    SWING("swinging", "°C", text -> TypedQuantity.of("swinging", text).degrees(10)),
    /** Temperature reached when it was once warmed, °C, −40 to −0.5. */
    WARM("warmed to", "°C", text -> TypedQuantity.of("warmed", text).celsius(-40, -0.5)),
    /** Time at that temperature, h, up to 100. */
    WARM_FOR("warmed for", "h", text -> TypedQuantity.of("warmed for", text).hours(100)),
    /** Ice of the bath, g, more than 0. */
    ICE("ice", "g", text -> some("ice", text)),
    /** Salt of the bath, g, more than 0. */
    SALT("salt", "g", text -> some("salt", text));

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

    private static double some(String what, String text) {
        double massG = TypedQuantity.grams(what, text);
        if (massG == 0) {
            throw Fault.in("bath.no-" + what);
        }
        return massG;
    }

    /** Parses the text, valid or not. */
    Typed<Double> read(String text) {
        return Typed.of(text, reader);
    }

    /** The text without the field's unit. */
    String withoutUnit(String text) {
        return unitAtEnd.matcher(text.strip()).replaceFirst("");
    }

    /** The text with the field's unit, if it has none. */
    String withUnit(String text) {
        String bare = text.strip();
        return Character.isDigit(bare.charAt(bare.length() - 1)) ? bare + " " + unit : bare;
    }

    /**
     * What {@link coldwright.words.Words.Units} converts: °C, K for a difference, g, or neither.
     */
    public String measure() {
        return this == SWING ? "K" : unit;
    }

    /** Its key in a file. */
    String key() {
        return key;
    }

    static Optional<SetupField> ofKey(String key) {
        return Arrays.stream(values()).filter(one -> one.key.equals(key)).findFirst();
    }
}
