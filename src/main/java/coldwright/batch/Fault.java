package coldwright.batch;

import coldwright.words.Phrase;

/** Faults of a recipe in the language shown: what is wrong, and how to fix it. */
final class Fault {
    private Fault() {}

    static String of(String key, Object... values) {
        return Phrase.of("batch", "fault." + key, values).shown();
    }

    static IllegalArgumentException in(String key, Object... values) {
        return new IllegalArgumentException(of(key, values));
    }
}
