package coldwright.desk.lesson.model;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunOutcome;
import coldwright.bench.SnippetProblem;
import coldwright.desk.figure.model.ShownFigure;
import coldwright.desk.run.PrintedOutput;
import coldwright.desk.run.SnippetDependencies;
import coldwright.figure.Figure;
import coldwright.figure.Series;

import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The results of a snippet's runs, and whether they are out of date. */
public final class SnippetResult {
    private final ReadOnlyObjectWrapper<PrintedOutput> printed =
            new ReadOnlyObjectWrapper<>(PrintedOutput.NOTHING);
    private final ReadOnlyObjectWrapper<FinishedRun> lastRun = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper changedSinceRun = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyBooleanWrapper outOfDate = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyBooleanWrapper everFinished = new ReadOnlyBooleanWrapper(false);
    private final ObservableList<ShownFigure> drawn = FXCollections.observableArrayList();
    private UnaryOperator<Figure> prediction = UnaryOperator.identity();
    private List<String> ranWith = List.of();

    /** The figures from before a dial started to move; null while none moves. */
    private List<ShownFigure> beforeTurning;

    /** Has one more prediction added to the first figure. */
    void predicted(UnaryOperator<Figure> into) {
        UnaryOperator<Figure> others = prediction;
        prediction = figure -> into.apply(others.apply(figure));
    }

    /** The first curve of its figures. */
    Optional<Series.Curve> firstCurve() {
        return drawn.stream()
                .flatMap(one -> one.figure().stream())
                .flatMap(figure -> figure.series().stream())
                .filter(Series.Curve.class::isInstance)
                .map(Series.Curve.class::cast)
                .findFirst();
    }

    /** A run starts: clears the printed text of the last one. */
    void start() {
        printed.set(PrintedOutput.NOTHING);
    }

    /** A run has printed something and goes on. */
    void prints(String soFar) {
        printed.set(PrintedOutput.of(soFar, false));
    }

    /**
     * A run has ended.
     *
     * @param run its end
     * @param texts the texts that ran, from the top, its own last
     * @param turn whether it was for a dial: the earlier trace stays where the dial started
     */
    void take(FinishedRun run, List<String> texts, boolean turn) {
        printed.set(PrintedOutput.of(run.printed(), run.printedCut()));
        if (!run.exhibits().isEmpty() || run.outcome().finished()) {
            drawn.setAll(over(run, turn));
        }
        ranWith = texts;
        changedSinceRun.set(false);
        outOfDate.set(false);
        lastRun.set(run);
        if (run.outcome().finished()) {
            everFinished.set(true);
        }
    }

    /** Resets it to no results. */
    void forget() {
        beforeTurning = null;
        ranWith = List.of();
        printed.set(PrintedOutput.NOTHING);
        drawn.clear();
        changedSinceRun.set(false);
        outOfDate.set(false);
        everFinished.set(false);
        lastRun.set(null);
    }

    private List<ShownFigure> over(FinishedRun run, boolean turn) {
        if (turn && beforeTurning == null) {
            beforeTurning = List.copyOf(drawn);
        } else if (!turn) {
            beforeTurning = null;
        }
        if (run.exhibits().equals(drawn.stream().map(ShownFigure::exhibit).toList())) {
            return List.copyOf(drawn);
        }
        List<ShownFigure> now =
                new ArrayList<>(ShownFigure.over(turn ? beforeTurning : drawn, run.exhibits()));
        if (!now.isEmpty()) {
            now.set(0, now.get(0).beside(prediction));
        }
        return now;
    }

    /** Whether a run with these texts might differ from the last; false before the first. */
    boolean wouldDiffer(List<String> texts, SnippetDependencies snippetDependencies) {
        return lastRun.get() != null && snippetDependencies.outOfDate(ranWith, texts);
    }

    /** Whether a dial is being turned, so that another run will follow at once. */
    public boolean turning() {
        return beforeTurning != null;
    }

    /** The texts have changed: updates whether the results are out of date. */
    void judge(List<String> texts, SnippetDependencies snippetDependencies) {
        if (lastRun.get() != null) {
            changedSinceRun.set(!own(texts).equals(own(ranWith)));
            outOfDate.set(snippetDependencies.outOfDate(ranWith, texts));
        }
    }

    private static String own(List<String> texts) {
        return texts.get(texts.size() - 1);
    }

    /** The printed text, even during a run. */
    public ReadOnlyObjectProperty<PrintedOutput> printed() {
        return printed.getReadOnlyProperty();
    }

    /** The last run that ended; null before the first. */
    public ReadOnlyObjectProperty<FinishedRun> lastRun() {
        return lastRun.getReadOnlyProperty();
    }

    /** Whether the snippet's own text was changed after the last run. */
    public ReadOnlyBooleanProperty changedSinceRun() {
        return changedSinceRun.getReadOnlyProperty();
    }

    /**
     * Whether another run might differ, because the snippet or one above it was changed; false
     * before the first run.
     */
    public ReadOnlyBooleanProperty outOfDate() {
        return outOfDate.getReadOnlyProperty();
    }

    public ReadOnlyBooleanProperty everFinished() {
        return everFinished.getReadOnlyProperty();
    }

    /** Its figures, in order. A run that failed leaves the earlier figures in place. */
    public ObservableList<ShownFigure> drawn() {
        return drawn;
    }

    /** The problems of the last run; empty if the text was changed since. */
    public List<SnippetProblem> problems() {
        FinishedRun run = lastRun.get();
        if (run == null || changedSinceRun.get()) {
            return List.of();
        }
        if (run.outcome() instanceof RunOutcome.Rejected rejected) {
            return rejected.problems();
        }
        return run.outcome() instanceof RunOutcome.Threw threw
                ? List.of(threw.problem())
                : List.of();
    }
}
