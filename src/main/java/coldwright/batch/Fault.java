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

    /** A fault on a line of a file, from 1; on line 0, of the whole file. */
    static IllegalArgumentException at(String file, int line, String words) {
        return new IllegalArgumentException(file + (line > 0 ? ":" + line : "") + ": " + words);
    }
}
