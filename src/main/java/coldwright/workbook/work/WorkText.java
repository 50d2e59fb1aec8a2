package coldwright.workbook.work;

import coldwright.workbook.entry.KeyedEntryWriter;
import coldwright.workbook.entry.ParsedEntries;

import java.util.Optional;

/** Work in a lesson as readable text; {@code docs/workbook.md} describes it. */
public final class WorkText {
    /** The first line of each file. */
    public static final String HEADING = "Coldwright workbook 1";

    private WorkText() {}

    /** Writes work as a text that {@link #read} parses to the same work. */
    public static String write(LessonWork work) {
        KeyedEntryWriter out = new KeyedEntryWriter(HEADING);
        out.entry("lesson", work.lessonFile())
                .entry("title", work.title())
                .entry("hash", work.lessonHash().hex())
                .entry("changed", work.changed().toString())
                .entry("in sight", work.inSight());
        work.steps().forEach(step -> write(step, out));
        return out.text();
    }

    private static void write(StepWork step, KeyedEntryWriter out) {
        out.gap().entry("step", step.title());
        if (step.read()) {
            out.entry("read", "yes");
        }
        if (step.done()) {
            out.entry("done", "yes");
        }
        for (GivenPrediction one : step.predictions()) {
            out.entry("forecast " + (one.index() + 1), one.question());
            write(one.answer(), out);
        }
        step.edits().forEach(edit -> write("snippet ", edit, out));
        step.aside().forEach(edit -> write("aside ", edit, out));
    }

    private static void write(String word, SnippetEdit edit, KeyedEntryWriter out) {
        out.entry(word + (edit.index() + 1), edit.from().hex()).block(edit.text());
    }

    private static void write(LearnerAnswer learnerAnswer, KeyedEntryWriter out) {
        if (learnerAnswer instanceof LearnerAnswer.Choice choice) {
            out.entry("choice " + (choice.index() + 1), choice.words());
        } else if (learnerAnswer instanceof LearnerAnswer.Typed typed) {
            out.entry("typed", typed.text());
        } else if (learnerAnswer instanceof LearnerAnswer.Curve curve) {
            out.entry("curve", curve.points().size() + " points");
            if (!curve.points().isEmpty()) {
                out.block(
                        String.join(
                                "\n",
                                curve.points().stream()
                                        .map(LearnerAnswer.Point::toString)
                                        .toList()));
            }
        } else {
            throw new AssertionError(learnerAnswer);
        }
    }

    /** Reads work: the usable part, empty if it isn't such a file or names no lesson; errors. */
    public static ParsedEntries<Optional<LessonWork>> read(LessonKey key, String text) {
        return new WorkReader(key).read(text);
    }
}
