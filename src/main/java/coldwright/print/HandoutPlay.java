package coldwright.print;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunOutcome;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonPart;
import coldwright.play.BlockingRunner;
import coldwright.play.LessonPlayer;
import coldwright.play.PlayListener;
import coldwright.play.PlayMode;
import coldwright.play.SnippetText;
import coldwright.play.SnippetTexts;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;

/** Keeps what the snippets of a lesson, or what a learner made of them, gave. */
public final class HandoutPlay implements PlayListener {
    private final Function<RunOutcome, String> trouble;
    private final Map<Integer, SnippetOutput> given = new HashMap<>();

    private HandoutPlay(Function<RunOutcome, String> trouble) {
        this.trouble = trouble;
    }

    /**
     * Plays a lesson as a handout needs it.
     *
     * @param lesson the lesson
     * @param options a learner's snippets take the place of the author's; the teacher's handout has
     *     what the solutions give too
     * @param runner runs them
     * @param trouble says why a run did not end well, in one sentence
     * @return what each gave, by the line of its fence
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

    @Override
    public void prose(LessonPart.Prose prose) {}

    @Override
    public void teacher(LessonPart.Teacher note) {}

    @Override
    public void prediction(LessonPart.Prediction prediction) {}

    @Override
    public void snippet(LessonPart.Snippet snippet) {}

    @Override
    public void check(LessonPart.Check check) {}
}
