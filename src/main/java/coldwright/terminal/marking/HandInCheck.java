package coldwright.terminal.marking;

import coldwright.bench.FinishedRun;
import coldwright.figure.Series;
import coldwright.lesson.ExpectedAnswer;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonPart;
import coldwright.terminal.check.ClaimTrial;
import coldwright.terminal.check.ClaimVerdict;
import coldwright.terminal.check.LessonClaim;
import coldwright.terminal.console.BlockingBench;
import coldwright.terminal.console.MissingNameText;
import coldwright.terminal.console.RunFailureText;
import coldwright.terminal.console.TypedCurve;
import coldwright.workbook.handin.HandIn;
import coldwright.workbook.handin.HandedInStep;
import coldwright.workbook.handin.PredictionOutcome;
import coldwright.workbook.work.StepNames;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Runs a learner's snippets with the lesson's check lines, and judges the forecasts. */
final class HandInCheck {
    private static final String FROM_ABOVE = "; nothing was changed in this step, only above it";
    private static final String CURVE = "a curve through ";

    private final HandIn handIn;
    private final Lesson lesson;
    private final BlockingBench blockingBench;
    private final List<MarkedHandInStep> steps = new ArrayList<>();
    private final List<String> above = new ArrayList<>();
    private final MissingNameText missing = new MissingNameText();
    private boolean changedAbove;

    private HandInCheck(HandIn handIn, Lesson lesson, BlockingBench blockingBench) {
        this.handIn = handIn;
        this.lesson = lesson;
        this.blockingBench = blockingBench;
    }

    /** Step by step, what came of a hand-in. */
    static List<MarkedHandInStep> of(HandIn handIn, Lesson lesson, BlockingBench blockingBench) {
        HandInCheck check = new HandInCheck(handIn, lesson, blockingBench);
        StepNames.parts(lesson)
                .forEach((name, parts) -> check.steps.add(check.new StepCheck(name, parts).mark()));
        return check.steps;
    }

    private final class StepCheck {
        private final String name;
        private final List<LessonPart> parts;
        private final Optional<HandedInStep> handed;
        private final List<MarkedPrediction> predictions = new ArrayList<>();
        private final List<String> troubles = new ArrayList<>();
        private Optional<Series.Curve> drawn = Optional.empty();
        private int snippets;
        private int ran;
        private int checks;
        private int passed;

        StepCheck(String name, List<LessonPart> parts) {
            this.name = name;
            this.parts = parts;
            this.handed = handIn.step(name);
        }

        MarkedHandInStep mark() {
            boolean changedHere = isChanged();
            String cause = changedAbove && !changedHere ? FROM_ABOVE : "";
            List<LessonPart.Prediction> asked = new ArrayList<>();
            for (LessonPart part : parts) {
                if (part instanceof LessonPart.Snippet snippet) {
                    ran += runs(snippet, snippets++) ? 1 : 0;
                } else if (part instanceof LessonPart.Check check) {
                    check(check, cause);
                } else if (part instanceof LessonPart.Prediction prediction) {
                    asked.add(prediction);
                }
            }
            asked.forEach(prediction -> predictions.add(marked(prediction)));
            changedAbove |= changedHere;
            return new MarkedHandInStep(
                    title(),
                    ran == snippets
                            && passed == checks
                            && handed.map(HandedInStep::done).orElse(false),
                    ran,
                    snippets,
                    passed,
                    checks,
                    predictions,
                    troubles);
        }

        private String title() {
            return name.equals(StepNames.OPENING) ? lesson.title() : name;
        }

        private boolean isChanged() {
            List<LessonPart.Snippet> all =
                    parts.stream()
                            .filter(LessonPart.Snippet.class::isInstance)
                            .map(LessonPart.Snippet.class::cast)
                            .toList();
            return IntStream.range(0, all.size())
                    .anyMatch(
                            i ->
                                    handed.flatMap(step -> step.text(i))
                                            .filter(text -> !text.equals(all.get(i).code()))
                                            .isPresent());
        }

        /** Where none was handed in the author's runs, so that what stands below can be tried. */
        private boolean runs(LessonPart.Snippet snippet, int index) {
            Optional<String> text = handed.flatMap(step -> step.text(index));
            if (text.isEmpty()) {
                troubles.add(
                        "snippet %d was not handed in and is not counted; its author's stood in for it"
                                .formatted(index + 1));
            }
            String code = text.orElse(snippet.code());
            FinishedRun run = blockingBench.run(above, code);
            if (run.outcome().finished()) {
                above.add(code);
            } else {
                missing.failed(
                        "snippet %d of “%s”".formatted(index + 1, MarkedHandIn.oneLine(title())),
                        code);
            }
            for (RunFailureText.RunFailure runFailure : RunFailureText.troubles(run.outcome())) {
                String where = runFailure.line() > 0 ? ", line " + runFailure.line() : "";
                troubles.add(
                        "snippet %d%s: %s"
                                .formatted(
                                        index + 1,
                                        where,
                                        MarkedHandIn.oneLine(missing.why(runFailure.words()))));
            }
            if (drawn.isEmpty()) {
                drawn =
                        run.figures().stream()
                                .flatMap(figure -> figure.series().stream())
                                .filter(Series.Curve.class::isInstance)
                                .map(Series.Curve.class::cast)
                                .findFirst();
            }
            return text.isPresent() && run.outcome().finished();
        }

        private void check(LessonPart.Check check, String cause) {
            List<LessonClaim> claims = check.expectations().stream().map(LessonClaim::of).toList();
            for (ClaimVerdict claimVerdict : ClaimTrial.of(claims, above, blockingBench)) {
                checks++;
                passed += claimVerdict.passed() ? 1 : 0;
                if (!claimVerdict.passed()) {
                    troubles.add(
                            MarkedHandIn.oneLine(missing.why(claimVerdict.sentence()) + cause));
                }
            }
        }

        private MarkedPrediction marked(LessonPart.Prediction prediction) {
            String said =
                    MarkedHandIn.oneLine(
                            handed.map(step -> step.answer(prediction.question())).orElse(""));
            String right = PredictionOutcome.words(prediction.answer());
            return new MarkedPrediction(
                    MarkedHandIn.oneLine(prediction.question()),
                    said,
                    right.isEmpty() ? besideFigure(prediction, said) : "right is " + right,
                    PredictionOutcome.of(prediction.answer(), said));
        }

        /** A drawn curve stands beside what the run's first curve has in its place. */
        private String besideFigure(LessonPart.Prediction prediction, String said) {
            return Optional.of(prediction.answer())
                    .filter(ExpectedAnswer.Curve.class::isInstance)
                    .filter(answer -> said.startsWith(CURVE))
                    .flatMap(
                            answer ->
                                    TypedCurve.read(
                                            (ExpectedAnswer.Curve) answer,
                                            said.substring(CURVE.length())))
                    .flatMap(points -> drawn.map(points::beside))
                    .filter(words -> !words.isEmpty())
                    .map("the run gives "::concat)
                    .orElse("see the figure");
        }
    }
}
