package coldwright.workbook.handin;

/**
 * A forecast as handed in.
 *
 * @param index which forecast of its step, from 0
 * @param question the question
 * @param answer what the learner said, in words; empty if nothing
 * @param right what was right, in words
 * @param outcome how they stand
 */
public record HandedInPrediction(
        int index, String question, String answer, String right, PredictionOutcome outcome) {}
