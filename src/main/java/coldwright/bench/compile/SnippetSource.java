package coldwright.bench.compile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A snippet to run, with its dials where they are.
 *
 * @param text the snippet as it is written now
 * @param compiledText the same with the numbers that its dials had first; it is compiled once for
 *     all their positions
 * @param values the positions that differ from it, by where the number begins in {@code
 *     compiledText}, which must be the only thing that a {@code double} or an {@code int} is
 *     declared with
 */
public record SnippetSource(String text, String compiledText, Map<Integer, Double> values) {
    /** Copies what is given. */
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
