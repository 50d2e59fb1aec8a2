package coldwright.workbook.handin;

import coldwright.lesson.ExpectedAnswer;
import coldwright.words.Words;

import java.util.Locale;
import java.util.OptionalDouble;

/** The result of a learner's prediction or answer. */
public enum PredictionOutcome {
    /** The prediction was right. */
    YES,
    /** The prediction was wrong. */
    NO,
    /** There is no answer, or words alone can't decide. */
    OPEN;

    /** Compares an answer with the right one; empty words are no answer. */
    public static PredictionOutcome of(ExpectedAnswer answer, String said) {
        if (said.isBlank()) {
            return OPEN;
        }
        return answer.match(
                choice -> choice.choices().get(choice.right()).equals(said) ? YES : NO,
                several -> several.chosen(said).equals(several.right()) ? YES : NO,
                amount -> {
                    OptionalDouble number = amount.read(said);
                    return number.isEmpty()
                            ? OPEN
                            : amount.accepts(number.getAsDouble()) ? YES : NO;
                },
                curve -> OPEN);
    }

    /** The right answer in words; empty if it has none. */
    public static String words(ExpectedAnswer answer) {
        return answer.match(
                choice -> choice.choices().get(choice.right()),
                several -> several.words(several.right()),
                amount -> {
                    String unit = amount.unit().isBlank() ? "" : " " + amount.unit().strip();
                    return Words.number(amount.value())
                            + unit
                            + " within "
                            + Words.number(amount.within());
                },
                curve -> "");
    }

    /** Its text in the file: yes, no or open. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
