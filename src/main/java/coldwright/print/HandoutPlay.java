package coldwright.print;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunOutcome;
import coldwright.lesson.Lesson;
import coldwright.play.BlockingRunner;
import coldwright.play.LessonPlayer;
import coldwright.play.PlayListener;
import coldwright.play.PlayMode;
import coldwright.play.SnippetText;
import coldwright.play.SnippetTexts;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;

/** Collects the output of a lesson's snippets, the author's or a learner's. */
public final class HandoutPlay extends PlayListener.OfResults {
    private final Function<RunOutcome, String> trouble;
    private final Map<Integer, SnippetOutput> given = new HashMap<>();

    private HandoutPlay(Function<RunOutcome, String> trouble) {
        this.trouble = trouble;
    }

    /**
     * Plays a lesson for a handout and returns the output of each snippet, by the line of its
     * fence. A learner's snippets replace the author's; the teacher's edition adds the output of
     * the solutions. {@code trouble} explains a failed run in one sentence.
     */
    public static Map<Integer, SnippetOutput> of(
            Lesson lesson,
            HandoutOptions options,
            BlockingRunner runner,
            Function<RunOutcome, String> trouble) {
        HandoutPlay play = new HandoutPlay(trouble);
        boolean answers = options.edition() == HandoutEdition.ANSWERS;
        PlayMode mode = answers ? PlayMode.PRINT_SOLVED : PlayMode.PRINT;
        SnippetTexts texts =
                options.work().<SnippetTexts>map(work -> work::textOf).orElse(SnippetTexts.AUTHORS);
        new LessonPlayer(lesson, mode, texts, runner).play(play);
        return play.given;
    }

    @Override
    public void ran(SnippetText snippet, FinishedRun run) {
        given.put(snippet.snippet().line(), SnippetOutput.of(run, trouble));
    }

    @Override
    public void solved(SnippetText snippet, FinishedRun run) {
        given.computeIfPresent(
                snippet.snippet().line(),
                (line, output) -> output.with(SnippetOutput.of(run, trouble)));
    }
}
