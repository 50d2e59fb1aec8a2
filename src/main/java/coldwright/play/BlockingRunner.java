package coldwright.play;

import coldwright.bench.FinishedRun;

import java.util.List;

/** Runs snippets, one at a time. */
@FunctionalInterface
public interface BlockingRunner {
    /**
     * Runs a snippet and waits for its end.
     *
     * @param above the snippets above that ran to their end, in order
     * @param snippet the snippet
     * @return how it ended
     */
    FinishedRun run(List<String> above, String snippet);
}
