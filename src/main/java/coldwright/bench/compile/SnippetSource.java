package coldwright.bench.compile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A snippet to run, at the current positions of its dials.
 *
 * @param text the snippet as it is now
 * @param compiledText the same with the initial numbers of its dials; compiled once for all
 *     positions
 * @param values positions that differ from it, keyed by where the number begins in {@code
 *     compiledText}; the number must be the whole initializer of a {@code double} or an {@code int}
 */
public record SnippetSource(String text, String compiledText, Map<Integer, Double> values) {
    /** Makes defensive copies. */
    public SnippetSource {
        values = Map.copyOf(values);
    }

    /** A snippet without dials. */
    public static SnippetSource of(String text) {
        return new SnippetSource(text, text, Map.of());
    }

    /** Snippets without dials, the one to run last. */
    public static List<SnippetSource> of(List<String> above, String snippet) {
        List<SnippetSource> all = new ArrayList<>();
        above.forEach(one -> all.add(of(one)));
        all.add(of(snippet));
        return all;
    }
}
