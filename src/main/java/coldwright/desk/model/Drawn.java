package coldwright.desk.model;

import coldwright.figure.Figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A figure as it stands on the page.
 *
 * @param figure what the last run drew
 * @param earlier what the run before drew in its place, to be set pale behind it
 */
public record Drawn(Figure figure, Optional<Figure> earlier) {
    /** Figures in place of former ones, each with the one it replaces behind it. */
    static List<Drawn> over(List<Drawn> former, List<Figure> figures) {
        List<Drawn> now = new ArrayList<>();
        for (Figure figure : figures) {
            int place = now.size();
            now.add(
                    new Drawn(
                            figure,
                            place < former.size()
                                    ? Optional.of(former.get(place).figure())
                                    : Optional.empty()));
        }
        return now;
    }
}
