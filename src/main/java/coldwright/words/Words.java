package coldwright.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import java.util.function.ToDoubleBiFunction;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The texts of one area, such as {@code batch} or {@code science.diagnosis}. They are in {@code
 * words.properties} and its translations, in the resource folder of that name.
 *
 * <p>{@code %s} in a text is the next value, {@code %2$s} the second; {@code %.1f} rounds a number
 * to one decimal; {@code %%} is a percent sign. {@code %.0t} is a temperature, {@code %d} a
 * difference of temperatures and {@code %g} a mass, each with its unit; capitals leave the unit
 * out.
 */
public final class Words {
    private static final Pattern VALUE =
            Pattern.compile("%(?:(\\d)\\$)?(?:([s%tTdDgG])|\\.(\\d)([ftTdDgG]))");

    /** The language shown, set before anything appears. */
    private static volatile Locale shown = Locale.ENGLISH;

    /** The units shown. */
    private static volatile Units units = Units.METRIC;

    /**
     * The units in which texts are shown to a reader.
     *
     * @param unit gives the unit shown instead of °C, K (for differences of temperature) or g
     * @param value converts a value from such a unit to the one shown
     */
    public record Units(UnaryOperator<String> unit, ToDoubleBiFunction<Double, String> value) {
        /** °C and grams. */
        public static final Units METRIC = new Units(unit -> unit, (value, unit) -> value);

        /** The unit shown instead of °C, K or g. */
        public String unit(String is) {
            return unit.apply(is);
        }

        /** The value in the unit shown instead of °C, K or g. */
        public double value(double is, String of) {
            return value.applyAsDouble(is, of);
        }
    }

    private final String bundle;

    private Words(String bundle) {
        this.bundle = bundle;
    }

    /** The texts of an area: its package without {@code coldwright}. */
    public static Words of(String area) {
        return new Words("coldwright." + area + ".words");
    }

    /** Sets the language shown, English by default and if there is no translation. */
    public static void show(Locale language) {
        shown = language;
    }

    public static Locale shown() {
        return shown;
    }

    /** Sets the units shown, °C and grams by default. */
    public static void show(Units is) {
        units = is;
    }

    /** The units shown. */
    public static Units units() {
        return units;
    }

    /** A text as {@link #text} gives it, in the language and the units shown. */
    public String shown(String key, Object... values) {
        return text(shown, units, key, values);
    }

    /** English, and every language whose texts are in the resource folder of this package. */
    public static List<Locale> languages() {
        return Stream.concat(
                        Stream.of(Locale.ENGLISH),
                        Stream.of(Locale.getISOLanguages())
                                .filter(
                                        tag ->
                                                Words.class.getResource(
                                                                "words_" + tag + ".properties")
                                                        != null)
                                .map(Locale::forLanguageTag))
                .toList();
    }

    /**
     * A text with its values: texts, numbers, phrases and lists of these. In English if there is no
     * translation; the key itself if there is no text.
     */
    public String text(Locale language, String key, Object... values) {
        return text(language, Units.METRIC, key, values);
    }

    String text(Locale language, Units in, String key, Object... values) {
        String text;
        try {
            text = bundle(language).getString(key);
        } catch (MissingResourceException e) {
            return key;
        }
        if (values.length == 0) {
            return text;
        }
        StringBuilder filled = new StringBuilder();
        Matcher matcher = VALUE.matcher(text);
        int next = 0;
        while (matcher.find()) {
            boolean percent = "%".equals(matcher.group(2));
            boolean chosen = matcher.group(1) != null;
            int index = chosen ? Integer.parseInt(matcher.group(1)) - 1 : next;
            next += percent || chosen ? 0 : 1;
            String value = percent ? "%" : value(language, in, values[index], matcher);
            matcher.appendReplacement(filled, Matcher.quoteReplacement(value));
        }
        return matcher.appendTail(filled).toString();
    }

    /** Whether there is an English text for a key. */
    public boolean has(String key) {
        return bundle(Locale.ENGLISH).containsKey(key);
    }

    private static String value(Locale language, Units in, Object value, MatchResult place) {
        if (value instanceof Phrase phrase) {
            return Words.of(phrase.area())
                    .text(language, in, phrase.key(), phrase.values().toArray());
        }
        if (value instanceof List<?> list) {
            return list.stream()
                    .map(one -> value(language, in, one, place))
                    .collect(Collectors.joining(", "));
        }
        String kind = place.group(2) == null ? place.group(4) : place.group(2);
        String unit =
                switch (kind) {
                    case "t", "T" -> "°C";
                    case "d", "D" -> "K";
                    case "g", "G" -> "g";
                    default -> "";
                };
        String shown = in.unit(unit).equals("K") ? "°C" : in.unit(unit);
        String end = unit.isEmpty() || Character.isUpperCase(kind.charAt(0)) ? "" : " " + shown;
        if (!(value instanceof Double || value instanceof Number && !unit.isEmpty())) {
            return value + end;
        }
        double number = ((Number) value).doubleValue();
        boolean finer = !in.unit(unit).equals(unit) && unit.equals("g");
        String text =
                place.group(3) == null
                        ? number(rounded(in.value(number, unit), unit, in))
                        : decimals(
                                Integer.parseInt(place.group(3)) + (finer ? 1 : 0),
                                in.value(number, unit));
        return written(language, text) + end;
    }

    /** Converted numbers get a tenth, those of ounces a hundredth. */
    private static double rounded(double value, String unit, Units in) {
        double step = unit.equals("g") ? 100 : 10;
        return in.unit(unit).equals(unit) ? value : Math.round(value * step) / step;
    }

    /** A number with the decimal mark of a language. */
    public static String written(Locale language, String number) {
        char mark = DecimalFormatSymbols.getInstance(language).getDecimalSeparator();
        return number.matches("[−-]?[0-9]+\\.[0-9]+") ? number.replace('.', mark) : number;
    }

    /** The decimal mark of the language shown. */
    public static char decimalMark() {
        return written(shown, "0.0").charAt(1);
    }

    /** A number with so many decimals and a true minus, never before zero. */
    public static String decimals(int places, double value) {
        String text = String.format(Locale.ROOT, "%." + places + "f", value);
        String plain = text.matches("-0(\\.0+)?") ? text.substring(1) : text;
        return plain.replace('-', '−');
    }

    /** The same with the decimal mark of the language shown. */
    public static String shown(int places, double value) {
        return written(shown, decimals(places, value));
    }

    /** A number with at most six significant digits and a true minus, such as {@code −2.64}. */
    public static String number(double value) {
        if (Double.isNaN(value)) {
            return of("words").text(shown(), "not-a-number");
        }
        if (Double.isInfinite(value)) {
            return (value > 0 ? "" : "−") + of("words").text(shown(), "infinite");
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded =
                BigDecimal.valueOf(Math.abs(value)).round(new MathContext(6)).stripTrailingZeros();
        boolean plain = Math.abs(value) >= 1e-4 && Math.abs(value) < 1e12;
        String text = (plain ? rounded.toPlainString() : rounded.toString()).replace('-', '−');
        return value < 0 ? "−" + text : text;
    }

    /** All texts of the area in a language. */
    public ResourceBundle bundle(Locale language) {
        return ResourceBundle.getBundle(
                bundle,
                language,
                ResourceBundle.Control.getNoFallbackControl(
                        ResourceBundle.Control.FORMAT_PROPERTIES));
    }
}
