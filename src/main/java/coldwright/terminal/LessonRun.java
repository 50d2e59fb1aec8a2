package coldwright.terminal;

import coldwright.bench.Outcome;
import coldwright.bench.Run;
import coldwright.lesson.Lesson;
import coldwright.print.Given;
import coldwright.print.Played;
import coldwright.print.Wish;

import java.util.Map;

/** Runs the snippets of a lesson, or what a learner made of them, and keeps what they gave. */
final class LessonRun {
    private LessonRun() {}

    /**
     * Runs it.
     *
     * @param lesson the lesson
     * @param wish the handout that it is for
     * @param runs runs them
     * @return what each gave, by the line of its fence
     */
    static Map<Integer, Given> of(Lesson lesson, Wish wish, Runs runs) {
        return Played.of(lesson, wish, (above, snippet) -> given(runs.run(above, snippet)));
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
