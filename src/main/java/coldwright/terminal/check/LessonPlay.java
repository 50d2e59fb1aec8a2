package coldwright.terminal.check;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunOutcome;
import coldwright.lesson.Lesson;
import coldwright.print.HandoutOptions;
import coldwright.print.PlayedLesson;
import coldwright.print.SnippetOutput;
import coldwright.terminal.console.BlockingBench;
import coldwright.terminal.console.RunFailureText;

import java.util.Map;

/** Runs the snippets of a lesson, or what a learner made of them, and keeps what they gave. */
public final class LessonPlay {
    private LessonPlay() {}

    /**
     * Runs it.
     *
     * @param lesson the lesson
     * @param handoutOptions the handout that it is for
     * @param blockingBench runs them
     * @return what each gave, by the line of its fence
     */
    public static Map<Integer, SnippetOutput> of(
            Lesson lesson, HandoutOptions handoutOptions, BlockingBench blockingBench) {
        return PlayedLesson.of(
                lesson,
                handoutOptions,
                (above, snippet) -> given(blockingBench.run(above, snippet)));
    }

    private static SnippetOutput given(FinishedRun run) {
        if (run.outcome() instanceof RunOutcome.Finished done) {
            return SnippetOutput.ran(run.printed(), done.value(), done.type(), run.exhibits());
        }
        String trouble =
                RunFailureText.troubles(run.outcome()).stream()
                        .findFirst()
                        .map(
                                one ->
                                        (one.line() > 0 ? "Line " + one.line() + ": " : "")
                                                + one.words())
                        .orElse("");
        return SnippetOutput.failed(run.printed(), trouble, run.exhibits());
    }
}
