package coldwright.desk.messages;

import coldwright.words.Words;

/** The window's own texts, in the language that is shown; lessons have their own. */
public final class Messages {
    private static final Words WINDOW = Words.of("desk");

    private Messages() {}

    /**
     * A text of the window in the language shown, with values in place of its {@code %s}; the key
     * itself if there is none.
     */
    public static String of(String key, Object... values) {
        return WINDOW.shown(key, values);
    }
}
