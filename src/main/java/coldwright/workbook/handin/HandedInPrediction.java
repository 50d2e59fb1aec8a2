package coldwright.workbook.handin;

/**
 * A prediction as handed in.
 *
 * @param index index of the prediction in its step, from 0
 * @param answer the learner's answer in words; empty if none
 * @param right the right answer in words
 * @param outcome how they compare
 */
public record HandedInPrediction(
        int index, String question, String answer, String right, PredictionOutcome outcome) {}
