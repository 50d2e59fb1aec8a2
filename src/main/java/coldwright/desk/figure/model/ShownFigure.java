package coldwright.desk.figure.model;

import coldwright.figure.Exhibit;
import coldwright.figure.Figure;
import coldwright.figure.Series;
import coldwright.figure.UnitConversion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A figure or drawing of the last run on the page. The figure of the run before is drawn pale
 * behind it; a drawing has none. The line that the learner drew before the run is shown with the
 * result.
 */
public record ShownFigure(
        Exhibit exhibit, Optional<Figure> earlier, Optional<Series.Curve> predictedCurve) {
    /** The result of a run and the figure before it, without a prediction. */
    public ShownFigure(Exhibit exhibit, Optional<Figure> earlier) {
        this(exhibit, earlier, Optional.empty());
    }

    /** The same with the predicted line, if the axes allow it. */
    public ShownFigure beside(Optional<Series.Curve> line) {
        return exhibit instanceof Figure ? new ShownFigure(exhibit, earlier, line) : this;
    }

    /** The same in the reader's units; this itself if nothing is converted. */
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

    /** The exhibit, with the predicted line in a figure if one was drawn. */
    public Exhibit shown() {
        return exhibit instanceof Figure figure && predictedCurve.isPresent()
                ? with(figure, predictedCurve.get())
                : exhibit;
    }

    /** A figure with the predicted line as its last series, unless it has one of that name. */
    public static Figure with(Figure figure, Series.Curve line) {
        boolean taken = figure.series().stream().anyMatch(one -> one.name().equals(line.name()));
        return taken ? figure : figure.plus(line);
    }

    /** New figures, each with the one that it replaces behind it. */
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

    /** The result of the last run, if it is a chart. */
    public Optional<Figure> figure() {
        return exhibit instanceof Figure figure ? Optional.of(figure) : Optional.empty();
    }
}
