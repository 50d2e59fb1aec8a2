package coldwright.terminal.marking;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.workbook.handin.PredictionOutcome;

/** A prediction: the answer, empty if none, the right one in words, and how they compare. */
record MarkedPrediction(String question, String answer, String right, PredictionOutcome outcome) {
    String line() {
        return text("mark.prediction", brief());
    }

    /** The same without saying that it is a prediction. */
    String brief() {
        return answer.isEmpty()
                ? text("mark.no-answer", question, right)
                : text("mark.answer." + outcome, question, answer, right);
    }
}
