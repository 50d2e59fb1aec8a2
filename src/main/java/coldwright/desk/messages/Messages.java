package coldwright.desk.messages;

import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/**
 * The words of the window, in the learner's language. All text that the window itself says stands
 * in {@code words.properties} and its translations; lessons speak for themselves.
 */
public final class Messages {
    private static final String WORDS = "coldwright.desk.words";

    /** The window speaks one language at a time; it is set before views are made. */
    private static volatile ResourceBundle words = bundle(Locale.ENGLISH);

    private Messages() {}

    /**
     * Chooses the language for views made from now on.
     *
     * @param locale English is spoken where no translation is known
     */
    public static void in(Locale locale) {
        words = bundle(locale);
    }

    private static ResourceBundle bundle(Locale locale) {
        return ResourceBundle.getBundle(
                WORDS,
                locale,
                ResourceBundle.Control.getNoFallbackControl(
                        ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    /**
     * A text of the window.
     *
     * @param key its key
     * @param values what stands in for {@code %s} and the like, numbers already as text
     * @return the text in the language chosen; the key itself if there is none
     */
    public static String of(String key, Object... values) {
        try {
            String text = words.getString(key);
            return values.length == 0 ? text : String.format(Locale.ROOT, text, values);
        } catch (MissingResourceException e) {
            return key;
        }
    }
}
