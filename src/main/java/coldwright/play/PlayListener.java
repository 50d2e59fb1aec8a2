package coldwright.play;

import coldwright.bench.FinishedRun;
import coldwright.lesson.LessonPart;

import java.util.List;
import java.util.Optional;

/**
 * Listens while a lesson is played. The methods of {@link LessonPart.Visitor} are called before a
 * part is run or tried; the others report the results.
 */
public interface PlayListener extends LessonPart.Visitor {
    /** Listens to results alone, whatever kind of part gives them. */
    abstract class OfResults implements PlayListener {
        @Override
        public void prose(LessonPart.Prose prose) {}

        @Override
        public void teacher(LessonPart.Teacher note) {}

        @Override
        public void prediction(LessonPart.Prediction prediction) {}

        @Override
        public void question(LessonPart.Question question) {}

        @Override
        public void snippet(LessonPart.Snippet snippet) {}

        @Override
        public void check(LessonPart.Check check) {}
    }

    /** A step begins. */
    default void stepBegan(PlayedStep step) {}

    /** A snippet ran, with or without success. */
    default void ran(SnippetText snippet, FinishedRun run) {}

    /** The author's solution of a snippet ran in its place. */
    default void solved(SnippetText snippet, FinishedRun run) {}

    /** Claims of the lesson were tried, in order. */
    default void tried(List<ClaimVerdict> verdicts) {}

    /**
     * The questions since the last answer, at least one, are answered by a run, or without one at
     * the end of the step.
     */
    default void answered(List<LessonPart.Prediction> predictions, Optional<FinishedRun> run) {}

    /** A step ends. */
    default void stepEnded(PlayedStep step) {}
}
