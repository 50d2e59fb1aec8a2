package coldwright.workbook.work;

import static coldwright.workbook.entry.WorkbookText.refusal;

import java.util.Objects;

/** A learner's answer before a run; the index is the prediction's in its step, from 0. */
public record GivenPrediction(int index, String question, LearnerAnswer answer) {
    private static final int MOST = 99_999;

    /** Refuses an index below 0 or above 99,999. */
    public GivenPrediction {
        requireIndex(index);
        Objects.requireNonNull(question);
        Objects.requireNonNull(answer);
    }

    /** Refuses an index of a part of a step that is below 0 or above 99,999. */
    static void requireIndex(int index) {
        if (index < 0 || index > MOST) {
            throw refusal("index.range", index, MOST);
        }
    }
}
