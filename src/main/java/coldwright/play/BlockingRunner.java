package coldwright.play;

import coldwright.bench.FinishedRun;

import java.util.List;

/** Runs snippets, one at a time. */
@FunctionalInterface
public interface BlockingRunner {
    /** Runs a snippet after the snippets above that ran to their end, and waits. */
    FinishedRun run(List<String> above, String snippet);
}
