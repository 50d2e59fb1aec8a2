package coldwright.terminal;

import coldwright.workbook.handin.CameTrue;

/**
 * A forecast beside what is right.
 *
 * @param question the question
 * @param said what the learner said; empty if nothing
 * @param right what is right, in words
 * @param cameTrue how they stand
 */
record MarkedForecast(String question, String said, String right, CameTrue cameTrue) {
    /** One line for a person. */
    String line() {
        String words = said.isEmpty() ? "nothing said; " + right : "said " + said + "; " + right;
        return "forecast: “%s”: %s%s".formatted(question, words, judged());
    }

    private String judged() {
        return switch (cameTrue) {
            case YES -> " (came true)";
            case NO -> " (otherwise)";
            case OPEN -> "";
        };
    }
}
