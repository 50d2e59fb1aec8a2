package coldwright.batch;

import coldwright.words.Phrase;

import java.util.Optional;

/**
 * One entry of a {@link BatchReport}. Whoever shows it takes its words in a form and a language, or
 * its bare value.
 *
 * @param group the part of the report it is in, such as {@code crystals}; may be empty
 * @param key its key in {@code --json}, which ends in its unit if it has one
 * @param value a number in that unit, infinite if it is never reached; or a text, or a list
 * @param band its lowest and highest value, if its sources leave it open
 * @param words how it is said; its values are of the same figure
 */
public record Fact(String group, String key, Object value, Optional<Ends> band, Phrase words) {
    /**
     * Both ends of a band, in the fact's unit.
     *
     * @param lowKey the lowest value's key in {@code --json}
     * @param low lowest value
     * @param highKey the highest value's key
     * @param high highest value
     */
    public record Ends(String lowKey, double low, String highKey, double high) {}

    /** A fact without a band, in words of its own key. */
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

    /**
     * It in a sentence, in the language that is shown.
     *
     * @return a whole sentence
     */
    public String sentence() {
        return words.shown();
    }

    /**
     * It in another form of words, such as a caption's.
     *
     * @param form the end of the form's key, such as {@code tile}
     * @return the words, in the language that is shown
     */
    public String as(String form) {
        return new Phrase(words.area(), words.key() + "." + form, words.values()).shown();
    }
}
