package coldwright.desk.model;

import coldwright.figure.Exhibit;
import coldwright.figure.Figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A figure or drawing as it stands on the page.
 *
 * @param exhibit what the last run drew
 * @param earlier the figure that the run before drew in its place, to be set pale behind it; none
 *     for a drawing
 */
public record Drawn(Exhibit exhibit, Optional<Figure> earlier) {
    /** Figures in place of former ones, each with the one it replaces behind it. */
    static List<Drawn> over(List<Drawn> former, List<Exhibit> exhibits) {
        List<Drawn> now = new ArrayList<>();
        for (Exhibit exhibit : exhibits) {
            int place = now.size();
            now.add(
                    new Drawn(
                            exhibit,
                            exhibit instanceof Figure && place < former.size()
                                    ? former.get(place).figure()
                                    : Optional.empty()));
        }
        return now;
    }

    /**
     * What the last run drew, if it is a chart.
     *
     * @return the figure
     */
    public Optional<Figure> figure() {
        return exhibit instanceof Figure figure ? Optional.of(figure) : Optional.empty();
    }
}
