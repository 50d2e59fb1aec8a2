package coldwright.desk.lesson.model;

import coldwright.desk.figure.model.CurveSketch;
import coldwright.desk.figure.model.DisplayNumber;
import coldwright.desk.messages.Messages;
import coldwright.figure.Series;
import coldwright.lesson.ExpectedAnswer;
import coldwright.lesson.LessonPart;
import coldwright.workbook.handin.PredictionOutcome;
import coldwright.workbook.work.LearnerAnswer;

import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** A question before the run, what the learner said, and, after the run, what is right. */
public final class PredictionModel implements PartModel {
    /** No choice yet. */
    public static final int NONE = -1;

    private final LessonPart.Prediction prediction;
    private final IntegerProperty chosen = new SimpleIntegerProperty(NONE);
    private final StringProperty typed = new SimpleStringProperty("");
    private final Optional<CurveSketch> sketch;
    private Supplier<Optional<Series.Curve>> result = Optional::empty;
    private final ObservableList<Integer> hands = FXCollections.observableArrayList();
    private final ReadOnlyBooleanWrapper revealed = new ReadOnlyBooleanWrapper(false);

    public PredictionModel(LessonPart.Prediction prediction) {
        this.prediction = prediction;
        if (prediction.answer() instanceof ExpectedAnswer.Choice choice) {
            choice.choices().forEach(one -> hands.add(0));
        }
        this.sketch =
                prediction.answer() instanceof ExpectedAnswer.Curve axes
                        ? Optional.of(new CurveSketch(axes))
                        : Optional.empty();
    }

    @Override
    public void accept(Visitor visitor) {
        visitor.prediction(this);
    }

    /** The first run of a snippet answers it; a drawn curve goes into that run's figure. */
    void answeredBy(SnippetModel snippet) {
        snippet.whenRun(() -> revealed.set(true));
        sketch.ifPresent(
                drawn -> {
                    snippet.result().predictedCurve(drawn::curve);
                    result = snippet.result()::firstCurve;
                });
    }

    /** The curve that the learner draws; none for other kinds of question. */
    public Optional<CurveSketch> sketch() {
        return sketch;
    }

    /** How far the drawn curve is from the first of the result, in one sentence; none before. */
    public Optional<String> distance() {
        return sketch.flatMap(drawn -> result.get().flatMap(drawn::distance));
    }

    /** As if it had never been asked. */
    void reset() {
        hands.replaceAll(count -> 0);
        revealed.set(false);
        chosen.set(NONE);
        typed.set("");
        sketch.ifPresent(CurveSketch::clear);
    }

    /** Does something whenever the learner says something else. */
    void whenChanged(Runnable action) {
        chosen.addListener((value, was, is) -> action.run());
        typed.addListener((value, was, is) -> action.run());
        sketch.ifPresent(
                drawn ->
                        drawn.points()
                                .addListener(
                                        (ListChangeListener<LearnerAnswer.Point>)
                                                is -> action.run()));
    }

    /** How the answer compares with what is right. */
    public PredictionOutcome verdict() {
        return PredictionOutcome.of(prediction.answer(), said());
    }

    /** As chosen or typed; empty if nothing was. */
    private String said() {
        return prediction.answer() instanceof ExpectedAnswer.Choice choice
                ? chosen.get() == NONE ? "" : choice.choices().get(chosen.get())
                : typed.get();
    }

    /** The answer in words; empty if nothing usable was given. */
    public Optional<String> answerText() {
        if (prediction.answer() instanceof ExpectedAnswer.Amount amount) {
            OptionalDouble number = number();
            return number.isEmpty()
                    ? Optional.empty()
                    : Optional.of(DisplayNumber.of(number.getAsDouble(), amount.unit()));
        }
        return sketch.isPresent()
                ? sketch.flatMap(CurveSketch::description)
                : Optional.of(said()).filter(words -> !words.isEmpty());
    }

    /** What is right, in words. */
    public String right() {
        if (prediction.answer() instanceof ExpectedAnswer.Choice choice) {
            return choice.choices().get(choice.right());
        }
        if (prediction.answer() instanceof ExpectedAnswer.Amount amount) {
            return DisplayNumber.of(amount.value(), amount.unit());
        }
        if (prediction.answer() instanceof ExpectedAnswer.Curve) {
            return Messages.of("forecast.curve");
        }
        throw new AssertionError(prediction.answer());
    }

    /** What is wrong with the typed number, in one sentence; empty if nothing is. */
    public Optional<String> inputError() {
        return typed.get().isBlank() || number().isPresent()
                ? Optional.empty()
                : Optional.of(Messages.of("forecast.mend", typed.get().strip()));
    }

    private OptionalDouble number() {
        return prediction.answer() instanceof ExpectedAnswer.Amount amount
                ? amount.read(typed.get())
                : OptionalDouble.empty();
    }

    /**
     * Counts hands for a choice.
     *
     * @param choice which, from 0
     * @param more how many more; fewer if negative
     */
    public void count(int choice, int more) {
        hands.set(choice, Math.max(0, hands.get(choice) + more));
    }

    /** How many hands went up for each choice, in the order of the choices. */
    public ObservableList<Integer> hands() {
        return hands;
    }

    /** The question and its right answer, as the lesson has them. */
    public LessonPart.Prediction prediction() {
        return prediction;
    }

    /** The choice that the learner made, from 0; {@link #NONE} before. */
    public IntegerProperty chosen() {
        return chosen;
    }

    /** The number as the learner typed it. */
    public StringProperty typed() {
        return typed;
    }

    /** Whether a run has answered it. */
    public ReadOnlyBooleanProperty revealed() {
        return revealed.getReadOnlyProperty();
    }
}
