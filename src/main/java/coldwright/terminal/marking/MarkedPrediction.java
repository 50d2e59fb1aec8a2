package coldwright.terminal.marking;

import coldwright.workbook.handin.PredictionOutcome;

/**
 * A forecast beside what is right.
 *
 * @param question the question
 * @param answer what the learner said; empty if nothing
 * @param right what is right, in words
 * @param outcome how they stand
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
