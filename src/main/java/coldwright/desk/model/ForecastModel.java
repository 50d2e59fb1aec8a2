package coldwright.desk.model;

import coldwright.lesson.Answer;
import coldwright.lesson.Part;

import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

import java.util.Optional;
import java.util.OptionalDouble;

/** A question before the run, what the learner said, and, after the run, what is right. */
public final class ForecastModel implements PartModel {
    /** No choice yet. */
    public static final int NONE = -1;

    /** How a forecast stands beside the result. */
    public enum Verdict {
        /** It was run without a forecast. */
        NOT_SAID,
        /** As forecast. */
        RIGHT,
        /** Otherwise. */
        OTHERWISE
    }

    private final Part.Forecast forecast;
    private final IntegerProperty chosen = new SimpleIntegerProperty(NONE);
    private final StringProperty typed = new SimpleStringProperty("");
    private final ReadOnlyBooleanWrapper revealed = new ReadOnlyBooleanWrapper(false);

    ForecastModel(Part.Forecast forecast) {
        this.forecast = forecast;
    }

    void reveal() {
        revealed.set(true);
    }

    /** As if it had never been asked. */
    void reset() {
        revealed.set(false);
        chosen.set(NONE);
        typed.set("");
    }

    /** Does something whenever the learner says something else. */
    void whenChanged(Runnable action) {
        chosen.addListener((value, was, is) -> action.run());
        typed.addListener((value, was, is) -> action.run());
    }

    /**
     * How what was said stands beside what is right.
     *
     * @return the verdict
     */
    public Verdict verdict() {
        if (forecast.answer() instanceof Answer.Choice choice) {
            return chosen.get() == NONE
                    ? Verdict.NOT_SAID
                    : chosen.get() == choice.right() ? Verdict.RIGHT : Verdict.OTHERWISE;
        }
        if (forecast.answer() instanceof Answer.Amount amount) {
            OptionalDouble said = number();
            return said.isEmpty()
                    ? Verdict.NOT_SAID
                    : Math.abs(said.getAsDouble() - amount.value()) <= amount.within()
                            ? Verdict.RIGHT
                            : Verdict.OTHERWISE;
        }
        if (forecast.answer() instanceof Answer.Curve) {
            return Verdict.NOT_SAID;
        }
        throw new AssertionError(forecast.answer());
    }

    /**
     * What the learner said.
     *
     * @return in words; empty if nothing usable was said
     */
    public Optional<String> said() {
        if (forecast.answer() instanceof Answer.Choice choice) {
            return chosen.get() == NONE
                    ? Optional.empty()
                    : Optional.of(choice.choices().get(chosen.get()));
        }
        if (forecast.answer() instanceof Answer.Amount amount) {
            OptionalDouble said = number();
            return said.isEmpty()
                    ? Optional.empty()
                    : Optional.of(PageNumber.of(said.getAsDouble(), amount.unit()));
        }
        if (forecast.answer() instanceof Answer.Curve) {
            return Optional.empty();
        }
        throw new AssertionError(forecast.answer());
    }

    /**
     * What is right.
     *
     * @return in words
     */
    public String right() {
        if (forecast.answer() instanceof Answer.Choice choice) {
            return choice.choices().get(choice.right());
        }
        if (forecast.answer() instanceof Answer.Amount amount) {
            return PageNumber.of(amount.value(), amount.unit());
        }
        if (forecast.answer() instanceof Answer.Curve) {
            return "the first curve of the result";
        }
        throw new AssertionError(forecast.answer());
    }

    /**
     * What is wrong with the typed number.
     *
     * @return one sentence; empty if it can be read or nothing is typed
     */
    public Optional<String> mend() {
        return typed.get().isBlank() || number().isPresent()
                ? Optional.empty()
                : Optional.of(
                        "“%s” is no number; write one like −1.5".formatted(typed.get().strip()));
    }

    private OptionalDouble number() {
        String unit =
                forecast.answer() instanceof Answer.Amount amount ? amount.unit().strip() : "";
        String text = typed.get().strip();
        if (!unit.isEmpty() && text.endsWith(unit)) {
            text = text.substring(0, text.length() - unit.length()).strip();
        }
        return PageNumber.read(text);
    }

    /**
     * As the lesson has it.
     *
     * @return the question and its answer
     */
    public Part.Forecast forecast() {
        return forecast;
    }

    /**
     * Which choice the learner made.
     *
     * @return from 0; {@link #NONE} before
     */
    public IntegerProperty chosen() {
        return chosen;
    }

    /**
     * The number the learner typed.
     *
     * @return as typed
     */
    public StringProperty typed() {
        return typed;
    }

    /**
     * Whether the run has answered it.
     *
     * @return true once it has
     */
    public ReadOnlyBooleanProperty revealed() {
        return revealed.getReadOnlyProperty();
    }
}
