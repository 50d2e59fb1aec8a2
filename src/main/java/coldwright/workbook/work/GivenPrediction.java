package coldwright.workbook.work;

import java.util.Objects;

/**
 * A learner's answer to a question before a run.
 *
 * @param index index of the prediction in its step, from 0
 * @param question the question
 * @param answer the answer
 */
public record GivenPrediction(int index, String question, LearnerAnswer answer) {
    /**
     * Checks the index.
     *
     * @throws IllegalArgumentException if it is below 0 or above 99,999
     */
    public GivenPrediction {
        PartPositions.require(index);
        Objects.requireNonNull(question);
        Objects.requireNonNull(answer);
    }
}
