package coldwright.terminal.marking;

import java.util.List;

/**
 * What came of one step of a hand-in.
 *
 * @param title the step's title
 * @param done whether it was done when it was handed in, and all of it ran and held here
 * @param ran how many of its snippets were handed in and ran to their end
 * @param snippets how many snippets it has
 * @param passed how many of its check lines held
 * @param checks how many check lines it has
 * @param predictions what was said before the runs
 * @param troubles what did not run or hold, a sentence each
 */
record MarkedHandInStep(
        String title,
        boolean done,
        int ran,
        int snippets,
        int passed,
        int checks,
        List<MarkedPrediction> predictions,
        List<String> troubles) {
    MarkedHandInStep {
        predictions = List.copyOf(predictions);
        troubles = List.copyOf(troubles);
    }

    /** Whether all of it ran and held. */
    boolean passes() {
        return ran == snippets && passed == checks;
    }

    /** Whether there is anything to tell of it. */
    boolean hasContent() {
        return snippets + checks > 0 || !predictions.isEmpty() || !troubles.isEmpty();
    }

    /** One line for a person. */
    String line() {
        return "%s: %d of %s, %d of %s%s"
                .formatted(
                        title,
                        ran,
                        MarkedHandIn.counted(snippets, "snippet")
                                + (snippets == 1 ? " runs" : " run"),
                        passed,
                        MarkedHandIn.counted(checks, "check line")
                                + (checks == 1 ? " holds" : " hold"),
                        done ? "; done" : "");
    }
}
