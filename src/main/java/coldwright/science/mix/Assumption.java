package coldwright.science.mix;

import coldwright.words.Phrase;

import java.util.List;
import java.util.stream.Collectors;

/** What is assumed of an ingredient whose composition is known in part. */
final class Assumption {
    private Assumption() {}

    /** One assumption; {@code key} is the end of its key. */
    static Phrase of(String key, Object... values) {
        return Phrase.of("science.mix", "assumed." + key, values);
    }

    /** Several in English, as an ingredient keeps them. */
    static String words(List<Phrase> assumptions) {
        return assumptions.stream().map(Phrase::english).collect(Collectors.joining("; "));
    }
}
