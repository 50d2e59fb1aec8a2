package coldwright.terminal.marking;

import static coldwright.terminal.console.ConsoleText.counted;
import static coldwright.terminal.console.ConsoleText.text;

import java.util.List;

/**
 * The result of one step of a hand-in: how many of its snippets ran to their end, how many of its
 * check lines passed, and its failures, a sentence each. A step is done if it was done when it was
 * handed in, and all of it ran and passed here.
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

    /** Whether all of it ran and passed. */
    boolean passes() {
        return ran == snippets && passed == checks;
    }

    /** Whether there is anything to report. */
    boolean hasContent() {
        return snippets + checks > 0 || !predictions.isEmpty() || !troubles.isEmpty();
    }

    String line() {
        return text(
                done ? "mark.step-done" : "mark.step",
                title,
                ran,
                counted("snippet", snippets),
                passed,
                counted("check-line", checks));
    }
}
