package coldwright.desk.code;

import coldwright.help.Suggestion;

import java.util.List;
import java.util.concurrent.CompletableFuture;

/** Suggests names for a snippet. */
@FunctionalInterface
public interface NameSource {
    /**
     * Suggests names at a position.
     *
     * @param text the snippet
     * @param caret a position in it
     * @return the names, best first; completed on any thread, perhaps never
     */
    CompletableFuture<List<Suggestion>> suggest(String text, int caret);
}
