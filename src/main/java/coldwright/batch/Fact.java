package coldwright.batch;

import coldwright.words.Phrase;
import coldwright.words.Words;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * One entry of a {@link BatchReport}. Views show its words in some form and language, or its bare
 * value.
 *
 * @param group the part of the report it is in, such as {@code crystals}; may be empty
 * @param key its key in {@code --json}, ending in its unit if it has one
 * @param value a number in that unit (infinite if never reached), a text or a list
 * @param unit its unit, such as {@code °C}; empty for texts and lists
 * @param band its lowest and highest value, if its sources give a range
 * @param basis its source
 * @param validity where its model holds; empty if nothing limits it
 * @param words its words, with the same values
 */
public record Fact(
        String group,
        String key,
        Object value,
        String unit,
        Optional<Ends> band,
        Basis basis,
        Optional<Basis.Validity> validity,
        Phrase words) {
    private static final Words WORDS = Words.of("batch");

    /** Units by what is in a key; the first that matches counts. */
    private static final Map<String, String> UNITS = new LinkedHashMap<>();

    static {
        UNITS.put(".*_g_per_100_g_water", "g per 100 g of water");
        UNITS.put(".*_per_1000_g", "unit.per-1000-g");
        UNITS.put(".*percent.*", "%");
        UNITS.put(".*_kg_per_l", "kg/L");
        UNITS.put(".*_micrometres", "µm");
        UNITS.put(".*minutes.*", "min");
        UNITS.put(".*_kj", "kJ");
        UNITS.put(".*_hours", "h");
        UNITS.put("days", "days");
        UNITS.put("parts", "1");
        UNITS.put(".*_c", "°C");
        UNITS.put(".*_g", "g");
        UNITS.put(".*_l", "L");
    }

    /**
     * Both ends of a range, in the fact's unit.
     *
     * @param lowKey the lowest value's key in {@code --json}
     * @param highKey the highest value's key
     */
    public record Ends(String lowKey, double low, String highKey, double high) {}

    /** A fact without a range, with the words of its own key. */
    static Fact of(String group, String key, Object value, Basis basis) {
        String unit =
                value instanceof Number
                        ? UNITS.entrySet().stream()
                                .filter(one -> key.matches(one.getKey()))
                                .findFirst()
                                .map(one -> WORDS.text(Locale.ENGLISH, one.getValue()))
                                .orElseThrow()
                        : "";
        return new Fact(
                group,
                key,
                value,
                unit,
                Optional.empty(),
                basis,
                Optional.empty(),
                words(key, value));
    }

    static Phrase words(String key, Object... values) {
        return Phrase.of("batch", "fact." + key, values);
    }

    Fact said(String key, Object... values) {
        return new Fact(group, this.key, value, unit, band, basis, validity, words(key, values));
    }

    Fact between(String lowKey, double low, String highKey, double high) {
        Ends ends = new Ends(lowKey, low, highKey, high);
        return new Fact(group, key, value, unit, Optional.of(ends), basis, validity, words);
    }

    /** The same, valid from a lowest to a highest value of what the model depends on. */
    Fact valid(double least, double most, String of) {
        Basis.Validity range = new Basis.Validity(least, most, of);
        return new Fact(group, key, value, unit, band, basis, Optional.of(range), words);
    }

    /**
     * Its value.
     *
     * @return in its unit; infinite if never reached
     * @throws ClassCastException if it isn't a number
     */
    public double number() {
        return ((Number) value).doubleValue();
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
