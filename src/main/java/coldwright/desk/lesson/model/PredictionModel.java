package coldwright.desk.lesson.model;

import coldwright.desk.figure.model.CurveSketch;
import coldwright.desk.figure.model.DisplayNumber;
import coldwright.desk.messages.Messages;
import coldwright.figure.Axis;
import coldwright.figure.Figure;
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

/** A question before the run, the learner's answer, and, after the run, the right one. */
public final class PredictionModel implements PartModel {
    /** No choice yet. */
    public static final int NONE = -1;

    private final LessonPart.Asked prediction;
    private final IntegerProperty chosen = new SimpleIntegerProperty(NONE);
    private final StringProperty typed = new SimpleStringProperty("");
    private final Optional<CurveSketch> sketch;
    private Supplier<Optional<Series.Curve>> result = Optional::empty;
    private final ObservableList<Integer> hands = FXCollections.observableArrayList();
    private final ReadOnlyBooleanWrapper revealed = new ReadOnlyBooleanWrapper(false);

    public PredictionModel(LessonPart.Asked prediction) {
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

    /** The first run of a snippet answers it; the prediction is added to that run's figure. */
    void answeredBy(SnippetModel snippet) {
        snippet.whenRun(() -> revealed.set(true));
        result = snippet.result()::firstCurve;
        snippet.result().predicted(this::into);
    }

    /** A figure with the curve or the number predicted, if it has an axis of the number's unit. */
    private Figure into(Figure figure) {
        boolean onX = isOn(figure.x());
        OptionalDouble number = onX == isOn(figure.y()) ? OptionalDouble.empty() : number();
        Figure marked =
                number.isEmpty()
                        ? figure
                        : onX
                                ? figure.markX(CurveSketch.name(), number.getAsDouble())
                                : figure.markY(CurveSketch.name(), number.getAsDouble());
        return sketch.map(drawn -> drawn.into(marked)).orElse(marked);
    }

    private boolean isOn(Axis axis) {
        return prediction.answer() instanceof ExpectedAnswer.Amount amount
                && !amount.unit().isBlank()
                && (axis.unit() + " ").startsWith(amount.unit() + " ");
    }

    /** Whether the learner reveals the answer, because no run does. */
    public boolean withoutRun() {
        return prediction instanceof LessonPart.Question;
    }

    /** Shows the answer of a question without a run. */
    public void reveal() {
        revealed.set(true);
    }

    /** The curve that the learner draws; empty for other kinds of question. */
    public Optional<CurveSketch> sketch() {
        return sketch;
    }

    /**
     * The distance of the drawn curve from the result's first, in a sentence; empty before the run.
     */
    public Optional<String> distance() {
        return sketch.flatMap(drawn -> result.get().flatMap(drawn::distance));
    }

    /** Resets it to unanswered. */
    void reset() {
        hands.replaceAll(count -> 0);
        revealed.set(false);
        chosen.set(NONE);
        typed.set("");
        sketch.ifPresent(CurveSketch::clear);
    }

    /** Runs an action whenever the learner's answer changes. */
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

    public PredictionOutcome verdict() {
        return PredictionOutcome.of(prediction.answer(), said());
    }

    /** As chosen or typed; empty if nothing was. */
    private String said() {
        return prediction.answer() instanceof ExpectedAnswer.Choice choice
                ? chosen.get() == NONE ? "" : choice.choices().get(chosen.get())
                : typed.get();
    }

    /** The answer in words; empty if there is no valid one. */
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

    /** The right answer, in words. */
    public String right() {
        if (prediction.answer() instanceof ExpectedAnswer.Choice choice) {
            return choice.choices().get(choice.right());
        }
        if (prediction.answer() instanceof ExpectedAnswer.Several several) {
            return several.words(several.right());
        }
        if (prediction.answer() instanceof ExpectedAnswer.Amount amount) {
            return DisplayNumber.of(amount.value(), amount.unit());
        }
        if (prediction.answer() instanceof ExpectedAnswer.Curve) {
            return Messages.of("prediction.curve");
        }
        throw new AssertionError(prediction.answer());
    }

    /** The error of the typed number, in one sentence; empty if there is none. */
    public Optional<String> inputError() {
        return typed.get().isBlank()
                        || !(prediction.answer() instanceof ExpectedAnswer.Amount)
                        || number().isPresent()
                ? Optional.empty()
                : Optional.of(Messages.of("prediction.invalid", typed.get().strip()));
    }

    private OptionalDouble number() {
        return prediction.answer() instanceof ExpectedAnswer.Amount amount
                ? amount.read(typed.get())
                : OptionalDouble.empty();
    }

    /** Adds hands for a choice, from 0; subtracts them if negative. */
    public void count(int choice, int more) {
        hands.set(choice, Math.max(0, hands.get(choice) + more));
    }

    /** The number of hands for each choice, in the order of the choices. */
    public ObservableList<Integer> hands() {
        return hands;
    }

    /** The question and its right answer, from the lesson. */
    public LessonPart.Asked prediction() {
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

    public ReadOnlyBooleanProperty revealed() {
        return revealed.getReadOnlyProperty();
    }
}
