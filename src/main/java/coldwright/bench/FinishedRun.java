package coldwright.bench;

import coldwright.figure.Exhibit;
import coldwright.figure.Figure;

import java.time.Duration;
import java.util.List;

/**
 * A finished run of a snippet.
 *
 * @param outcome how it ended
 * @param printed its output, cut at the limit
 * @param printedCut whether the output was cut
 * @param exhibits figures and drawings, in order, up to the limit
 * @param elapsed time from the call to the end
 */
public record FinishedRun(
        RunOutcome outcome,
        String printed,
        boolean printedCut,
        List<Exhibit> exhibits,
        Duration elapsed) {
    /** Makes defensive copies. */
    public FinishedRun {
        exhibits = List.copyOf(exhibits);
    }

    /** A run without output. */
    public static FinishedRun silent(RunOutcome outcome) {
        return new FinishedRun(outcome, "", false, List.of(), Duration.ZERO);
    }

    /** The same output with another outcome. */
    public FinishedRun with(RunOutcome other) {
        return new FinishedRun(other, printed, printedCut, exhibits, elapsed);
    }

    /** The charts among the exhibits, in order. */
    public List<Figure> figures() {
        return exhibits.stream().filter(Figure.class::isInstance).map(Figure.class::cast).toList();
    }
}
