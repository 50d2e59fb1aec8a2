package coldwright.desk.figure.model;

import coldwright.figure.Exhibit;
import coldwright.figure.Figure;
import coldwright.figure.UnitConversion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A figure or drawing of the last run on the page. The figure of the run before is drawn pale
 * behind it; a drawing has none. A prediction is shown in the result: {@code predicted} is the
 * figure with it.
 */
public record ShownFigure(Exhibit exhibit, Optional<Figure> earlier, Optional<Figure> predicted) {
    /** The result of a run and the figure before it, without a prediction. */
    public ShownFigure(Exhibit exhibit, Optional<Figure> earlier) {
        this(exhibit, earlier, Optional.empty());
    }

    /** The same with what a learner predicted, which is added to a figure. */
    public ShownFigure beside(UnaryOperator<Figure> prediction) {
        return exhibit instanceof Figure figure
                ? new ShownFigure(
                        exhibit,
                        earlier,
                        Optional.of(prediction.apply(figure)).filter(with -> !with.equals(figure)))
                : this;
    }

    /** The same in the reader's units; this itself if nothing is converted. */
    public ShownFigure in(UnitConversion units) {
        return exhibit instanceof Figure figure && units.exchanges(figure)
                ? new ShownFigure(
                        units.of(figure), earlier.map(units::of), predicted.map(units::of))
                : this;
    }

    /** The same without its earlier trace. */
    ShownFigure still() {
        return new ShownFigure(exhibit, Optional.empty(), predicted);
    }

    /** The exhibit, with the prediction in a figure if there is one. */
    public Exhibit shown() {
        return predicted.<Exhibit>map(figure -> figure).orElse(exhibit);
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
