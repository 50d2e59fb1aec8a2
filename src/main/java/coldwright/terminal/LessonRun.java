package coldwright.terminal;

import coldwright.bench.Outcome;
import coldwright.bench.Run;
import coldwright.lesson.Lesson;
import coldwright.print.Given;
import coldwright.print.Played;
import coldwright.workbook.handin.HandIn;

import java.util.Map;
import java.util.Optional;

/** Runs the snippets of a lesson, or what a learner made of them, and keeps what they gave. */
final class LessonRun {
    /** The type of a line that printed; what it gives is of no interest. */
    private static final String PRINTING = "PrintStream";

    private LessonRun() {}

    /**
     * Runs it.
     *
     * @param lesson the lesson
     * @param work a learner's snippets, in place of the author's
     * @param runs runs them
     * @return what each gave, by the line of its fence
     */
    static Map<Integer, Given> of(Lesson lesson, Optional<HandIn> work, Runs runs) {
        return Played.of(lesson, work, (above, snippet) -> given(runs.run(above, snippet)));
    }

    private static Given given(Run run) {
        boolean value =
                run.outcome() instanceof Outcome.Finished finished
                        && !finished.type().endsWith(PRINTING);
        String trouble =
                Ending.troubles(run.outcome()).stream()
                        .findFirst()
                        .map(
                                one ->
                                        (one.line() > 0 ? "Line " + one.line() + ": " : "")
                                                + one.words())
                        .orElse("");
        return new Given(
                run.printed(),
                value ? ((Outcome.Finished) run.outcome()).value() : "",
                trouble,
                run.exhibits());
    }
}
