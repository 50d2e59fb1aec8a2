package coldwright.words;

import java.util.List;
import java.util.Locale;

/**
 * A sentence before it is in a language: which one, and its values.
 *
 * @param area where its words are
 * @param key its key there
 * @param values numbers, texts, other phrases and lists of these
 */
public record Phrase(String area, String key, List<Object> values) {
    public Phrase {
        values = List.copyOf(values);
    }

    /**
     * A sentence.
     *
     * @param area where its words are, such as {@code science.diagnosis}
     * @param key its key there
     * @param values in the order of the English text
     * @return the phrase
     */
    public static Phrase of(String area, String key, Object... values) {
        return new Phrase(area, key, List.of(values));
    }

    /**
     * A name that may have a translation; others are the same in each language.
     *
     * @param area where its words are; it has the key {@code plain} too
     * @param kind the first part of its key
     * @param name the name; with hyphens for blanks the second part of its key
     * @return the phrase
     */
    public static Phrase named(String area, String kind, String name) {
        String key = kind + "." + name.replace(' ', '-');
        return Words.of(area).has(key) ? of(area, key) : of(area, "plain", name);
    }

    /**
     * Phrases in English, as lessons have them.
     *
     * @param phrases any phrases
     * @return their texts
     */
    public static List<String> english(List<Phrase> phrases) {
        return phrases.stream().map(Phrase::english).toList();
    }

    /**
     * The sentence in a language.
     *
     * @param language English where there is no translation
     * @return the text
     */
    public String in(Locale language) {
        return Words.of(area).text(language, key, values.toArray());
    }

    /**
     * The sentence in English, as lessons, JSON and paper have it.
     *
     * @return the text
     */
    public String english() {
        return in(Locale.ENGLISH);
    }

    /**
     * The sentence in the language that the program shows.
     *
     * @return the text
     */
    public String shown() {
        return in(Words.shown());
    }

    @Override
    public String toString() {
        return english();
    }
}
