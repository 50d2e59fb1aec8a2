package coldwright.play;

import coldwright.bench.FinishedRun;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonClaim;
import coldwright.lesson.LessonPart;
import coldwright.lesson.VerifiedNumber;
import coldwright.workbook.work.StepNames;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Plays a lesson from top to bottom: runs its snippets, tries its claims, and has its questions
 * answered. The rest runs without a snippet that fails.
 *
 * <pre>{@code
 * new LessonPlayer(lesson, PlayMode.LEARN, SnippetTexts.AUTHORS, bench).play(listener);
 * }</pre>
 */
public final class LessonPlayer {
    private final List<Map.Entry<String, List<LessonPart>>> steps;
    private final PlayMode mode;
    private final SnippetTexts texts;
    private final BlockingRunner runner;
    private List<String> above = new ArrayList<>();
    private boolean changed;

    /** A player at the beginning of a lesson; {@code texts} is the version to play. */
    public LessonPlayer(Lesson lesson, PlayMode mode, SnippetTexts texts, BlockingRunner runner) {
        this.steps = List.copyOf(StepNames.parts(lesson).entrySet());
        this.mode = mode;
        this.texts = texts;
        this.runner = runner;
    }

    /** Plays the whole lesson. */
    public void play(PlayListener listener) {
        for (int i = 0; i < steps.size(); i++) {
            play(i, listener);
        }
    }

    /** Plays the next step, by its position, from 1; 0 for the part before the first step. */
    public void play(int number, PlayListener listener) {
        PlayedStep step = step(number);
        listener.stepBegan(step);
        Turn turn = new Turn(step, listener);
        step.parts().forEach(part -> part.accept(turn));
        turn.end();
        changed |= step.changed();
        listener.stepEnded(step);
    }

    /**
     * Skips the next step, by its position. Its snippets run because later ones need them, but no
     * listener is called.
     */
    public void skip(int number) {
        PlayedStep step = step(number);
        for (SnippetText snippet : step.snippets()) {
            if (run(snippet.text()).outcome().finished()) {
                above.add(snippet.text());
            }
        }
        changed |= step.changed();
    }

    private PlayedStep step(int number) {
        Map.Entry<String, List<LessonPart>> step = steps.get(number);
        return new PlayedStep(number, step.getKey(), step.getValue(), texts, changed);
    }

    private FinishedRun run(String text) {
        return runner.run(List.copyOf(above), text);
    }

    /** One step while it is played. */
    private final class Turn implements LessonPart.Visitor {
        private final PlayedStep step;
        private final PlayListener listener;
        private final List<String> asWritten = new ArrayList<>(above);
        private final RunLinks<LessonPart.Prediction, LessonPart.Snippet> links = new RunLinks<>();
        private final List<LessonClaim> pending = new ArrayList<>();
        private boolean solved;

        Turn(PlayedStep step, PlayListener listener) {
            this.step = step;
            this.listener = listener;
        }

        @Override
        public void prose(LessonPart.Prose prose) {
            listener.prose(prose);
            claim(prose.verifiedNumbers());
        }

        @Override
        public void teacher(LessonPart.Teacher note) {
            listener.teacher(note);
            claim(note.verifiedNumbers());
        }

        @Override
        public void prediction(LessonPart.Prediction prediction) {
            listener.prediction(prediction);
            links.question(prediction);
        }

        @Override
        public void question(LessonPart.Question question) {
            listener.question(question);
            claim(question.verifiedNumbers());
        }

        @Override
        public void check(LessonPart.Check check) {
            listener.check(check);
            if (mode == PlayMode.LEARN) {
                listener.tried(ClaimTrial.of(check.expectations(), above, runner));
            } else if (mode == PlayMode.CHECK) {
                pending.addAll(check.expectations());
            }
        }

        @Override
        public void snippet(LessonPart.Snippet snippet) {
            tryPending();
            listener.snippet(snippet);
            SnippetText text = step.of(snippet);
            FinishedRun run = run(text.text());
            listener.ran(text, run);
            Optional<FinishedRun> solution = solution(text);
            boolean finished = run.outcome().finished();
            if (finished) {
                asWritten.add(text.text());
            }
            if (mode == PlayMode.CHECK && solution.isPresent()) {
                solved = true;
                if (solution.get().outcome().finished()) {
                    above.add(snippet.solution());
                }
            } else if (finished) {
                above.add(text.text());
            }
            answer(links.snippet(snippet, snippet), Optional.of(run));
        }

        private Optional<FinishedRun> solution(SnippetText text) {
            if (!mode.solves() || text.snippet().solution().isEmpty()) {
                return Optional.empty();
            }
            FinishedRun run = run(text.snippet().solution());
            listener.solved(text, run);
            return Optional.of(run);
        }

        /** A solution replaces its snippet until the end of the step. */
        void end() {
            answer(links.unanswered(), Optional.empty());
            tryPending();
            if (solved) {
                above = asWritten;
            }
        }

        private void answer(List<LessonPart.Prediction> answered, Optional<FinishedRun> run) {
            if (!answered.isEmpty()) {
                listener.answered(answered, run);
            }
            answered.forEach(prediction -> claim(prediction.verifiedNumbers()));
        }

        private void claim(List<VerifiedNumber> numbers) {
            if (mode == PlayMode.CHECK) {
                pending.addAll(numbers);
            }
        }

        /** Tries the claims since the last snippet, all together. */
        private void tryPending() {
            if (!pending.isEmpty()) {
                listener.tried(ClaimTrial.of(pending, above, runner));
                pending.clear();
            }
        }
    }
}
