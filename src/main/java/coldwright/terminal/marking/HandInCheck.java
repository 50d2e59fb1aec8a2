package coldwright.terminal.marking;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.bench.FinishedRun;
import coldwright.figure.Series;
import coldwright.lesson.ExpectedAnswer;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonPart;
import coldwright.play.BlockingRunner;
import coldwright.play.ClaimVerdict;
import coldwright.play.LessonPlayer;
import coldwright.play.PlayListener;
import coldwright.play.PlayMode;
import coldwright.play.PlayedStep;
import coldwright.play.SnippetText;
import coldwright.terminal.check.ClaimSentence;
import coldwright.terminal.console.MissingNameText;
import coldwright.terminal.console.RunFailureText;
import coldwright.terminal.console.TypedCurve;
import coldwright.workbook.handin.HandIn;
import coldwright.workbook.handin.HandedInStep;
import coldwright.workbook.handin.PredictionOutcome;
import coldwright.workbook.work.LearnerAnswer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Marks a hand-in while it is played with the lesson's check lines. */
final class HandInCheck implements PlayListener {
    private final HandIn handIn;
    private final Lesson lesson;
    private final List<MarkedStep> steps = new ArrayList<>();
    private final List<LessonPart.Asked> asked = new ArrayList<>();
    private final MissingNameText missing = new MissingNameText();
    private Optional<Series.Curve> drawn = Optional.empty();
    private PlayedStep step;
    private MarkedStep marks;

    /** Whether the last exercise of the step is solved so far. */
    private boolean solved;

    private HandInCheck(HandIn handIn, Lesson lesson) {
        this.handIn = handIn;
        this.lesson = lesson;
    }

    /** The result of each step of a hand-in. */
    static List<MarkedStep> of(HandIn handIn, Lesson lesson, BlockingRunner runner) {
        HandInCheck check = new HandInCheck(handIn, lesson);
        new LessonPlayer(lesson, PlayMode.LEARN, handIn::textOf, runner).play(check);
        return check.steps;
    }

    @Override
    public void stepBegan(PlayedStep began) {
        step = began;
        String title = began.number() == 0 ? lesson.title() : began.name();
        marks = new MarkedStep(MarkedHandIn.oneLine(title));
        steps.add(marks);
        asked.clear();
        drawn = Optional.empty();
    }

    @Override
    public void stepEnded(PlayedStep ended) {
        endExercise();
        marks.done = marks.passes() && handed().map(HandedInStep::done).orElse(false);
        asked.stream().map(this::marked).forEach(marks.predictions::add);
    }

    private void endExercise() {
        marks.solved += solved ? 1 : 0;
        solved = false;
    }

    private Optional<HandedInStep> handed() {
        return handIn.step(step.name());
    }

    @Override
    public void prose(LessonPart.Prose prose) {}

    @Override
    public void teacher(LessonPart.Teacher note) {}

    @Override
    public void prediction(LessonPart.Prediction prediction) {
        asked.add(prediction);
    }

    @Override
    public void question(LessonPart.Question question) {
        asked.add(question);
    }

    @Override
    public void snippet(LessonPart.Snippet snippet) {
        marks.snippets++;
    }

    @Override
    public void check(LessonPart.Check check) {
        marks.checks += check.expectations().size();
    }

    /** Without a handed-in snippet the author's runs, so that later ones can be tried. */
    @Override
    public void ran(SnippetText snippet, FinishedRun run) {
        int number = snippet.index() + 1;
        boolean isHandedIn = handed().flatMap(one -> one.text(snippet.index())).isPresent();
        boolean finished = run.outcome().finished();
        if (!isHandedIn) {
            marks.failed(text("mark.not-handed-in", number), true);
        }
        if (!finished) {
            missing.failed(text("which.step", number, marks.title), snippet.text());
        }
        for (RunFailureText.RunFailure runFailure : RunFailureText.troubles(run.outcome())) {
            String why = MarkedHandIn.oneLine(missing.why(runFailure.words()));
            marks.failed(
                    runFailure.line() > 0
                            ? text("mark.failed-line", number, runFailure.line(), why)
                            : text("mark.failed", number, why),
                    true);
        }
        drawn = drawn.or(() -> TypedCurve.firstOf(run.figures()));
        marks.ran += isHandedIn && finished ? 1 : 0;
        if (!snippet.snippet().solution().isEmpty()) {
            endExercise();
            marks.exercises++;
            solved = isHandedIn && finished && snippet.changed();
        }
    }

    @Override
    public void tried(List<ClaimVerdict> verdicts) {
        boolean fromAbove = step.changedAbove() && !step.changed();
        String cause = fromAbove ? " " + text("mark.from-above") : "";
        for (ClaimVerdict verdict : verdicts) {
            marks.passed += verdict.passed() ? 1 : 0;
            solved &= verdict.passed();
            if (!verdict.passed()) {
                String why = missing.why(ClaimSentence.of(verdict));
                marks.failed(MarkedHandIn.oneLine(why + cause), !fromAbove);
            }
        }
    }

    private MarkedPrediction marked(LessonPart.Asked prediction) {
        String said =
                MarkedHandIn.oneLine(
                        handed().map(step -> step.answer(prediction.question())).orElse(""));
        String right = PredictionOutcome.words(prediction.answer());
        return new MarkedPrediction(
                prediction instanceof LessonPart.Prediction,
                MarkedHandIn.oneLine(prediction.question()),
                said,
                right.isEmpty() ? besideFigure(prediction, said) : text("mark.right", right),
                PredictionOutcome.of(prediction.answer(), said));
    }

    /** A drawn curve is compared with the run's first curve. */
    private String besideFigure(LessonPart.Asked prediction, String said) {
        Optional<TypedCurve> typed =
                prediction.answer() instanceof ExpectedAnswer.Curve axes
                                && said.startsWith(LearnerAnswer.Curve.WORDS)
                        ? TypedCurve.read(axes, said.substring(LearnerAnswer.Curve.WORDS.length()))
                        : Optional.empty();
        return typed.flatMap(points -> drawn.map(points::beside))
                .filter(words -> !words.isEmpty())
                .map(words -> text("mark.run-gives", words))
                .orElseGet(() -> text("mark.see-figure"));
    }
}
