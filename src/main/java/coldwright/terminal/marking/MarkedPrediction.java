package coldwright.terminal.marking;

import coldwright.workbook.handin.PredictionOutcome;

/**
 * A prediction and the right answer.
 *
 * @param answer the learner's answer; empty if none
 * @param right the right answer, in words
 * @param outcome how they compare
 */
record MarkedPrediction(String question, String answer, String right, PredictionOutcome outcome) {
    /** One line for a person. */
    String line() {
        String words =
                answer.isEmpty() ? "nothing said; " + right : "said " + answer + "; " + right;
        return "forecast: “%s”: %s%s".formatted(question, words, judged());
    }

    private String judged() {
        return switch (outcome) {
            case YES -> " (came true)";
            case NO -> " (otherwise)";
            case OPEN -> "";
        };
    }
}
