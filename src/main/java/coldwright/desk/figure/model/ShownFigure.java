package coldwright.desk.figure.model;

import coldwright.figure.Exhibit;
import coldwright.figure.Figure;
import coldwright.figure.Series;
import coldwright.figure.UnitConversion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A figure or drawing as it stands on the page.
 *
 * @param exhibit what the last run drew
 * @param earlier the figure that the run before drew in its place, to be set pale behind it; none
 *     for a drawing
 * @param predictedCurve the line that the learner drew before the run, to stand beside the result
 */
public record ShownFigure(
        Exhibit exhibit, Optional<Figure> earlier, Optional<Series.Curve> predictedCurve) {
    /**
     * A figure without a forecast.
     *
     * @param exhibit what the run drew
     * @param earlier the figure before it
     */
    public ShownFigure(Exhibit exhibit, Optional<Figure> earlier) {
        this(exhibit, earlier, Optional.empty());
    }

    /** The same with a line that was drawn before the run, if it can stand there. */
    public ShownFigure beside(Optional<Series.Curve> line) {
        return exhibit instanceof Figure ? new ShownFigure(exhibit, earlier, line) : this;
    }

    /**
     * The same in the units that the reader is used to.
     *
     * @param units which
     * @return this itself if nothing is exchanged
     */
    public ShownFigure in(UnitConversion units) {
        if (!(exhibit instanceof Figure figure) || !units.exchanges(figure)) {
            return this;
        }
        Optional<Series.Curve> line =
                predictedCurve.map(
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
        return new ShownFigure(units.of(figure), earlier.map(units::of), line);
    }

    /** The same without its earlier trace. */
    ShownFigure still() {
        return new ShownFigure(exhibit, Optional.empty(), predictedCurve);
    }

    /**
     * What is to be seen: the exhibit, and in a figure the line drawn before the run.
     *
     * @return the exhibit itself if no line was drawn
     */
    public Exhibit shown() {
        return exhibit instanceof Figure figure && predictedCurve.isPresent()
                ? with(figure, predictedCurve.get())
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
    public static List<ShownFigure> over(List<ShownFigure> former, List<Exhibit> exhibits) {
        List<ShownFigure> now = new ArrayList<>();
        for (Exhibit exhibit : exhibits) {
            int place = now.size();
            now.add(
                    new ShownFigure(
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
