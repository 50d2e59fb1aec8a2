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
        if (run.outcome() instanceof Outcome.Finished done) {
            return Given.ran(run.printed(), done.value(), done.type(), run.exhibits());
        }
        String trouble =
                Ending.troubles(run.outcome()).stream()
                        .findFirst()
                        .map(
                                one ->
                                        (one.line() > 0 ? "Line " + one.line() + ": " : "")
                                                + one.words())
                        .orElse("");
        return Given.failed(run.printed(), trouble, run.exhibits());
    }
}
