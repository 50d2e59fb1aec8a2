package coldwright.workbook.handin;

/**
 * A prediction as handed in, by its index in its step, from 0: the answer in words, empty if none,
 * the right answer in words, and how they compare.
 */
public record HandedInPrediction(
        int index, String question, String answer, String right, PredictionOutcome outcome) {}
