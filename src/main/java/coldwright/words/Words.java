package coldwright.words;

import coldwright.text.DisplayText;

import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The texts of one area, such as {@code batch} or {@code science.diagnosis}. They are in {@code
 * words.properties} and its translations, in the resource folder of that name.
 *
 * <p>{@code %s} in a text is the next value, {@code %2$s} the second; {@code %.1f} rounds a number
 * to one decimal; {@code %%} is a percent sign.
 */
public final class Words {
    private static final Pattern VALUE = Pattern.compile("%(?:(\\d)\\$)?(?:([s%])|\\.(\\d)f)");

    /** The language shown, set before anything appears. */
    private static volatile Locale shown = Locale.ENGLISH;

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

    /**
     * A text with its values: texts, numbers, phrases and lists of these. In English if there is no
     * translation; the key itself if there is no text.
     */
    public String text(Locale language, String key, Object... values) {
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
            String value = percent ? "%" : shown(language, values[index], matcher.toMatchResult());
            matcher.appendReplacement(filled, Matcher.quoteReplacement(value));
        }
        return matcher.appendTail(filled).toString();
    }

    /** Whether there is an English text for a key. */
    public boolean has(String key) {
        return bundle(Locale.ENGLISH).containsKey(key);
    }

    private static String shown(Locale language, Object value, MatchResult place) {
        if (value instanceof Phrase phrase) {
            return phrase.in(language);
        }
        if (value instanceof List<?> list) {
            return list.stream()
                    .map(one -> shown(language, one, place))
                    .collect(Collectors.joining(", "));
        }
        if (value instanceof Double number) {
            return place.group(3) == null
                    ? DisplayText.number(number)
                    : DisplayText.decimals(Integer.parseInt(place.group(3)), number);
        }
        return String.valueOf(value);
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
