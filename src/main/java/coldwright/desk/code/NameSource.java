package coldwright.desk.code;

import coldwright.help.Suggestion;

import java.util.List;
import java.util.concurrent.CompletableFuture;

/** Knows which names may stand in a snippet. */
@FunctionalInterface
public interface NameSource {
    /**
     * Finds the names that may stand at a place.
     *
     * @param text the snippet
     * @param caret a place in it
     * @return the names, best first; completed on any thread, perhaps never
     */
    CompletableFuture<List<Suggestion>> suggest(String text, int caret);
}
