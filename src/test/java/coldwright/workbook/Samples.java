package coldwright.workbook;

import coldwright.workbook.work.ContentHash;
import coldwright.workbook.work.GivenPrediction;
import coldwright.workbook.work.LearnerAnswer;
import coldwright.workbook.work.LessonKey;
import coldwright.workbook.work.LessonWork;
import coldwright.workbook.work.SnippetEdit;

import java.time.Instant;

/** Work in a lesson about oats. */
final class Samples {
    static final LessonKey OATS = new LessonKey("01-toasted-oats");
    static final ContentHash AUTHORS = ContentHash.of("double heat = 180;");

    private Samples() {}

    static LessonWork empty() {
        return LessonWork.empty(
                OATS, "01-toasted-oats.md", "Toasted oats", ContentHash.of("# Toasted oats"));
    }

    /** A state that says of itself which one it is, in each of many places. */
    static LessonWork state(int number, int snippets) {
        LessonWork work =
                empty().changedAt(Instant.ofEpochSecond(number))
                        .withDone("Toast", true)
                        .withPrediction(
                                "Toast",
                                new GivenPrediction(
                                        0, "How hot?", new LearnerAnswer.Typed("" + number)));
        for (int i = 0; i < snippets; i++) {
            String text = ("double heat = " + number + ";\n").repeat(20);
            work = work.withSnippet("Toast", new SnippetEdit(i, text, AUTHORS));
        }
        return work;
    }
}
