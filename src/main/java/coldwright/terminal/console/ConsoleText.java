package coldwright.terminal.console;

import coldwright.words.Phrase;

/** The texts of the commands, in the language shown. */
public final class ConsoleText {
    private ConsoleText() {}

    /** The text of a key with its values. */
    public static String text(String key, Object... values) {
        return Phrase.of("terminal", key, values).shown();
    }

    /** A number of things, such as {@code 3 lessons}. */
    public static String counted(String thing, long count) {
        return text(thing + (count == 1 ? ".one" : ".many"), count);
    }
}
