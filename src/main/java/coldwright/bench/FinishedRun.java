package coldwright.bench;

import coldwright.figure.Exhibit;
import coldwright.figure.Figure;

import java.time.Duration;
import java.util.List;

/**
 * One run of a snippet, as it ended.
 *
 * @param outcome how it ended
 * @param printed what it printed, cut at the limit
 * @param printedCut whether more was printed than is kept
 * @param exhibits what it drew, figures and drawings, in order, at most as many as the limit
 * @param elapsed from the call to the end
 */
public record FinishedRun(
        RunOutcome outcome,
        String printed,
        boolean printedCut,
        List<Exhibit> exhibits,
        Duration elapsed) {
    /** Copies what is given. */
    public FinishedRun {
        exhibits = List.copyOf(exhibits);
    }

    /**
     * The charts among what it drew.
     *
     * @return the figures, in order
     */
    public List<Figure> figures() {
        return exhibits.stream().filter(Figure.class::isInstance).map(Figure.class::cast).toList();
    }
}
