package coldwright.bench;

import coldwright.figure.Figure;

import java.time.Duration;
import java.util.List;

/**
 * One run of a snippet, as it ended.
 *
 * @param outcome how it ended
 * @param printed what it printed, cut at the limit
 * @param printedCut whether more was printed than is kept
 * @param figures what it drew, in order, at most as many as the limit
 * @param elapsed from the call to the end
 */
public record Run(
        Outcome outcome,
        String printed,
        boolean printedCut,
        List<Figure> figures,
        Duration elapsed) {
    public Run {
        figures = List.copyOf(figures);
    }
}
