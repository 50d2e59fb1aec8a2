package coldwright.workbook.work;

import java.util.Objects;

/** A learner's answer before a run; the index is the prediction's in its step, from 0. */
public record GivenPrediction(int index, String question, LearnerAnswer answer) {
    /** Refuses an index below 0 or above 99,999. */
    public GivenPrediction {
        PartPositions.require(index);
        Objects.requireNonNull(question);
        Objects.requireNonNull(answer);
    }
}
