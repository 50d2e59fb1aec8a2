package coldwright.workbook.handin;

/**
 * A forecast as handed in.
 *
 * @param index which forecast of its step, from 0
 * @param question the question
 * @param said what the learner said, in words; empty if nothing
 * @param right what was right, in words
 * @param cameTrue how they stand
 */
public record HandedForecast(
        int index, String question, String said, String right, CameTrue cameTrue) {}
