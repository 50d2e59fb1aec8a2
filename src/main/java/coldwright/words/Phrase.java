package coldwright.words;

import java.util.List;
import java.util.Locale;

/**
 * A sentence that is not yet in a language: its key in an area of texts, and its values: numbers,
 * texts, other phrases and lists of these.
 */
public record Phrase(String area, String key, List<Object> values) {
    public Phrase {
        values = List.copyOf(values);
    }

    /**
     * A sentence, by the area of its text, such as {@code science.diagnosis}, and its key there;
     * the values are in the order of the English text.
     */
    public static Phrase of(String area, String key, Object... values) {
        return new Phrase(area, key, List.of(values));
    }

    /**
     * A name that may have a translation; otherwise it is the same in each language.
     *
     * @param area the area of its text, which must have the key {@code plain}
     * @param kind the first part of its key
     * @param name the name; with hyphens for spaces it is the second part of its key
     */
    public static Phrase named(String area, String kind, String name) {
        String key = kind + "." + name.replace(' ', '-');
        return Words.of(area).has(key) ? of(area, key) : of(area, "plain", name);
    }

    /** The English texts of phrases, as in lessons. */
    public static List<String> english(List<Phrase> phrases) {
        return phrases.stream().map(Phrase::english).toList();
    }

    /** The sentence in a language; in English if there is no translation. */
    public String in(Locale language) {
        return Words.of(area).text(language, key, values.toArray());
    }

    /** The sentence in English, as in lessons, JSON and paper. */
    public String english() {
        return in(Locale.ENGLISH);
    }

    /** The sentence in the language shown. */
    public String shown() {
        return Words.of(area).shown(key, values.toArray());
    }

    @Override
    public String toString() {
        return english();
    }
}
