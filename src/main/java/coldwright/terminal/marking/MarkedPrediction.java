package coldwright.terminal.marking;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.workbook.handin.PredictionOutcome;

/**
 * An answer: to a prediction or to a question that no run answers; empty if there is none; with the
 * right one in words, and how they compare.
 */
record MarkedPrediction(
        boolean predicts, String question, String answer, String right, PredictionOutcome outcome) {
    String line() {
        return text(predicts ? "mark.prediction" : "mark.question", brief());
    }

    /** The same without saying what it is. */
    String brief() {
        return answer.isEmpty()
                ? text("mark.no-answer", question, right)
                : text("mark.answer." + outcome, question, answer, right);
    }

    /** Whether a prediction was made. */
    boolean made() {
        return predicts && !answer.isEmpty();
    }
}
