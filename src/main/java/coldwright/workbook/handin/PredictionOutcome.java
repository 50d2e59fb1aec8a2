package coldwright.workbook.handin;

import coldwright.lesson.ExpectedAnswer;

import java.util.Locale;
import java.util.OptionalDouble;

/** How what a learner said before a run stands beside what is right. */
public enum PredictionOutcome {
    /** It came as said. */
    YES,
    /** It came otherwise. */
    NO,
    /** Nothing was said, or it can't be told from the words alone. */
    OPEN;

    /**
     * Judges an answer.
     *
     * @param answer what the lesson says
     * @param said what the learner said, in words; empty if nothing
     * @return how they stand
     */
    public static PredictionOutcome of(ExpectedAnswer answer, String said) {
        if (said.isBlank()) {
            return OPEN;
        }
        if (answer instanceof ExpectedAnswer.Choice choice) {
            return choice.choices().get(choice.right()).equals(said) ? YES : NO;
        }
        if (answer instanceof ExpectedAnswer.Amount amount) {
            OptionalDouble number = amount.read(said);
            return number.isEmpty() ? OPEN : amount.accepts(number.getAsDouble()) ? YES : NO;
        }
        return OPEN;
    }

    /**
     * What a lesson says is right.
     *
     * @param answer the answer
     * @return in words; empty if words can't say it
     */
    public static String words(ExpectedAnswer answer) {
        if (answer instanceof ExpectedAnswer.Choice choice) {
            return choice.choices().get(choice.right());
        }
        if (answer instanceof ExpectedAnswer.Amount amount) {
            String unit = amount.unit().isBlank() ? "" : " " + amount.unit().strip();
            return number(amount.value()) + unit + " within " + number(amount.within());
        }
        return "";
    }

    private static String number(double value) {
        String text =
                value == Math.rint(value) && Math.abs(value) < 1e15
                        ? Long.toString((long) value)
                        : Double.toString(value);
        return text.replace('-', '−');
    }

    /**
     * As the file has it.
     *
     * @return yes, no or open
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
