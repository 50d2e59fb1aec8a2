package coldwright.bench.compile;

import coldwright.words.Words;

/** The texts of compile errors, in the language shown. */
final class ErrorText {
    private static final Words TEXTS = Words.of("bench.compile");

    private ErrorText() {}

    static String of(String key, Object... values) {
        return TEXTS.shown(key, values);
    }

    static boolean has(String key) {
        return TEXTS.has(key);
    }

    /** The text of a key, or of another one if there is none. */
    static String or(String key, String other, Object... values) {
        return of(has(key) ? key : other, values);
    }
}
