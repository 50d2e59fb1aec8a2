package coldwright.desk.model;

import coldwright.figure.Exhibit;
import coldwright.figure.Figure;
import coldwright.figure.InUnits;
import coldwright.figure.Series;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A figure or drawing as it stands on the page.
 *
 * @param exhibit what the last run drew
 * @param earlier the figure that the run before drew in its place, to be set pale behind it; none
 *     for a drawing
 * @param forecast the line that the learner drew before the run, to stand beside the result
 */
public record Drawn(Exhibit exhibit, Optional<Figure> earlier, Optional<Series.Curve> forecast) {
    /**
     * A figure without a forecast.
     *
     * @param exhibit what the run drew
     * @param earlier the figure before it
     */
    public Drawn(Exhibit exhibit, Optional<Figure> earlier) {
        this(exhibit, earlier, Optional.empty());
    }

    /** The same with a line that was drawn before the run, if it can stand there. */
    Drawn beside(Optional<Series.Curve> line) {
        return exhibit instanceof Figure ? new Drawn(exhibit, earlier, line) : this;
    }

    /**
     * The same in the units that the reader is used to.
     *
     * @param units which
     * @return this itself if nothing is exchanged
     */
    public Drawn in(InUnits units) {
        if (!(exhibit instanceof Figure figure) || !units.exchanges(figure)) {
            return this;
        }
        Optional<Series.Curve> line =
                forecast.map(
                        curve ->
                                (Series.Curve)
                                        units.of(
                                                        new Figure(
                                                                figure.title(),
                                                                figure.x(),
                                                                figure.y(),
                                                                List.of(curve),
                                                                List.of(),
                                                                "",
                                                                List.of()))
                                                .series()
                                                .get(0));
        return new Drawn(units.of(figure), earlier.map(units::of), line);
    }

    /** The same without its earlier trace. */
    Drawn still() {
        return new Drawn(exhibit, Optional.empty(), forecast);
    }

    /**
     * What is to be seen: the exhibit, and in a figure the line drawn before the run.
     *
     * @return the exhibit itself if no line was drawn
     */
    public Exhibit shown() {
        return exhibit instanceof Figure figure && forecast.isPresent()
                ? with(figure, forecast.get())
                : exhibit;
    }

    /**
     * A figure with a forecast in it, last of its series.
     *
     * @param figure what the run drew
     * @param line what was drawn before; left out where the figure has a series of its name
     * @return the figure with both
     */
    public static Figure with(Figure figure, Series.Curve line) {
        boolean taken = figure.series().stream().anyMatch(one -> one.name().equals(line.name()));
        return taken ? figure : figure.plus(line);
    }

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
