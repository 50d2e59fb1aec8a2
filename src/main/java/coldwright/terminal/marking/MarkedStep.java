package coldwright.terminal.marking;

import static coldwright.terminal.console.ConsoleText.counted;
import static coldwright.terminal.console.ConsoleText.text;

import java.util.ArrayList;
import java.util.List;

/** The result of one step of a hand-in, filled while it is played. */
final class MarkedStep {
    /** Its title, on one line. */
    final String title;

    final List<MarkedPrediction> predictions = new ArrayList<>();

    /** What failed, a sentence each. */
    final List<String> troubles = new ArrayList<>();

    /** Those failures that the learner's work in this step may have caused. */
    final List<String> own = new ArrayList<>();

    int snippets;

    /** Snippets that were handed in and ran to their end. */
    int ran;

    /** Check lines of the lesson's author. */
    int checks;

    int passed;

    /** Snippets that have a solution. */
    int exercises;

    /** Exercises that were changed and ran, and whose check lines in this step passed. */
    int solved;

    /** Whether it was done when it was handed in, and all of it ran and passed here. */
    boolean done;

    MarkedStep(String title) {
        this.title = title;
    }

    /** Whether all of it ran and passed. */
    boolean passes() {
        return ran == snippets && passed == checks;
    }

    void failed(String why, boolean here) {
        troubles.add(why);
        if (here) {
            own.add(why);
        }
    }

    /** The result as lines for a person; none if there is nothing to report. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        if (snippets + checks == 0 && predictions.isEmpty() && troubles.isEmpty()) {
            return lines;
        }
        String key = done ? "mark.step-done" : "mark.step";
        lines.add(
                "  "
                        + text(
                                key,
                                title,
                                ran,
                                counted("snippet", snippets),
                                passed,
                                counted("check-line", checks)));
        if (exercises > 0) {
            lines.add("    " + text("mark.exercises", solved, exercises));
        }
        predictions.forEach(one -> lines.add("    " + one.line()));
        troubles.forEach(trouble -> lines.add("    " + trouble));
        return lines;
    }
}
