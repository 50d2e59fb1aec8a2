package coldwright.terminal;

import java.util.List;

/**
 * What came of one step of a hand-in.
 *
 * @param title the step's title
 * @param done whether it was done when it was handed in, and all of it ran and held here
 * @param ran how many of its snippets were handed in and ran to their end
 * @param snippets how many snippets it has
 * @param held how many of its check lines held
 * @param checks how many check lines it has
 * @param forecasts what was said before the runs
 * @param troubles what did not run or hold, a sentence each
 */
record MarkedStep(
        String title,
        boolean done,
        int ran,
        int snippets,
        int held,
        int checks,
        List<MarkedForecast> forecasts,
        List<String> troubles) {
    MarkedStep {
        forecasts = List.copyOf(forecasts);
        troubles = List.copyOf(troubles);
    }

    /** Whether all of it ran and held. */
    boolean holds() {
        return ran == snippets && held == checks;
    }

    /** Whether there is anything to tell of it. */
    boolean tells() {
        return snippets + checks > 0 || !forecasts.isEmpty() || !troubles.isEmpty();
    }

    /** One line for a person. */
    String line() {
        return "%s: %d of %s, %d of %s%s"
                .formatted(
                        title,
                        ran,
                        Marked.counted(snippets, "snippet") + (snippets == 1 ? " runs" : " run"),
                        held,
                        Marked.counted(checks, "check line") + (checks == 1 ? " holds" : " hold"),
                        done ? "; done" : "");
    }
}
