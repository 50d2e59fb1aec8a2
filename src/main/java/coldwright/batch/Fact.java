package coldwright.batch;

import coldwright.words.Phrase;

import java.util.Optional;

/**
 * One entry of a {@link BatchReport}. Views show its words in some form and language, or its bare
 * value.
 *
 * @param group the part of the report it is in, such as {@code crystals}; may be empty
 * @param key its key in {@code --json}, ending in its unit if it has one
 * @param value a number in that unit (infinite if never reached), a text or a list
 * @param band its lowest and highest value, if its sources give a range
 * @param words its words, with the same values
 */
public record Fact(String group, String key, Object value, Optional<Ends> band, Phrase words) {
    /**
     * Both ends of a range, in the fact's unit.
     *
     * @param lowKey the lowest value's key in {@code --json}
     * @param highKey the highest value's key
     */
    public record Ends(String lowKey, double low, String highKey, double high) {}

    /** A fact without a range, with the words of its own key. */
    static Fact of(String group, String key, Object value) {
        return new Fact(group, key, value, Optional.empty(), words(key, value));
    }

    static Phrase words(String key, Object... values) {
        return Phrase.of("batch", "fact." + key, values);
    }

    Fact said(String key, Object... values) {
        return new Fact(group, this.key, value, band, words(key, values));
    }

    Fact between(Ends ends) {
        return new Fact(group, key, value, Optional.of(ends), words);
    }

    /** A whole sentence in the language shown. */
    public String sentence() {
        return words.shown();
    }

    /**
     * Another form of its words, such as a caption's, in the language shown.
     *
     * @param form the end of the form's key, such as {@code tile}
     */
    public String as(String form) {
        return new Phrase(words.area(), words.key() + "." + form, words.values()).shown();
    }
}
