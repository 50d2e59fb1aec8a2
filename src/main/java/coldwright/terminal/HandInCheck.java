package coldwright.terminal;

import coldwright.bench.Run;
import coldwright.figure.Series;
import coldwright.lesson.Answer;
import coldwright.lesson.Lesson;
import coldwright.lesson.Part;
import coldwright.workbook.handin.CameTrue;
import coldwright.workbook.handin.HandIn;
import coldwright.workbook.handin.HandedStep;
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
    private final Runs runs;
    private final List<MarkedStep> steps = new ArrayList<>();
    private final List<String> above = new ArrayList<>();
    private final MissingNames missing = new MissingNames();
    private boolean changedAbove;

    private HandInCheck(HandIn handIn, Lesson lesson, Runs runs) {
        this.handIn = handIn;
        this.lesson = lesson;
        this.runs = runs;
    }

    /** Step by step, what came of a hand-in. */
    static List<MarkedStep> of(HandIn handIn, Lesson lesson, Runs runs) {
        HandInCheck check = new HandInCheck(handIn, lesson, runs);
        StepNames.parts(lesson)
                .forEach((name, parts) -> check.steps.add(check.new StepCheck(name, parts).mark()));
        return check.steps;
    }

    private final class StepCheck {
        private final String name;
        private final List<Part> parts;
        private final Optional<HandedStep> handed;
        private final List<MarkedForecast> forecasts = new ArrayList<>();
        private final List<String> troubles = new ArrayList<>();
        private Optional<Series.Curve> drawn = Optional.empty();
        private int snippets;
        private int ran;
        private int checks;
        private int held;

        StepCheck(String name, List<Part> parts) {
            this.name = name;
            this.parts = parts;
            this.handed = handIn.step(name);
        }

        MarkedStep mark() {
            boolean changedHere = isChanged();
            String cause = changedAbove && !changedHere ? FROM_ABOVE : "";
            List<Part.Forecast> asked = new ArrayList<>();
            for (Part part : parts) {
                if (part instanceof Part.Snippet snippet) {
                    ran += runs(snippet, snippets++) ? 1 : 0;
                } else if (part instanceof Part.Check check) {
                    check(check, cause);
                } else if (part instanceof Part.Forecast forecast) {
                    asked.add(forecast);
                }
            }
            asked.forEach(forecast -> forecasts.add(marked(forecast)));
            changedAbove |= changedHere;
            return new MarkedStep(
                    title(),
                    ran == snippets && held == checks && handed.map(HandedStep::done).orElse(false),
                    ran,
                    snippets,
                    held,
                    checks,
                    forecasts,
                    troubles);
        }

        private String title() {
            return name.equals(StepNames.OPENING) ? lesson.title() : name;
        }

        private boolean isChanged() {
            List<Part.Snippet> all =
                    parts.stream()
                            .filter(Part.Snippet.class::isInstance)
                            .map(Part.Snippet.class::cast)
                            .toList();
            return IntStream.range(0, all.size())
                    .anyMatch(
                            i ->
                                    handed.flatMap(step -> step.text(i))
                                            .filter(text -> !text.equals(all.get(i).code()))
                                            .isPresent());
        }

        /** Where none was handed in the author's runs, so that what stands below can be tried. */
        private boolean runs(Part.Snippet snippet, int index) {
            Optional<String> text = handed.flatMap(step -> step.text(index));
            if (text.isEmpty()) {
                troubles.add(
                        "snippet %d was not handed in and is not counted; its author's stood in for it"
                                .formatted(index + 1));
            }
            String code = text.orElse(snippet.code());
            Run run = runs.run(above, code);
            if (run.outcome().finished()) {
                above.add(code);
            } else {
                missing.failed(
                        "snippet %d of “%s”".formatted(index + 1, Marked.oneLine(title())), code);
            }
            for (Ending.Trouble trouble : Ending.troubles(run.outcome())) {
                String where = trouble.line() > 0 ? ", line " + trouble.line() : "";
                troubles.add(
                        "snippet %d%s: %s"
                                .formatted(
                                        index + 1,
                                        where,
                                        Marked.oneLine(missing.why(trouble.words()))));
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

        private void check(Part.Check check, String cause) {
            List<Claim> claims = check.expectations().stream().map(Claim::of).toList();
            for (Verdict verdict : Trial.of(claims, above, runs)) {
                checks++;
                held += verdict.held() ? 1 : 0;
                if (!verdict.held()) {
                    troubles.add(Marked.oneLine(missing.why(verdict.sentence()) + cause));
                }
            }
        }

        private MarkedForecast marked(Part.Forecast forecast) {
            String said =
                    Marked.oneLine(handed.map(step -> step.said(forecast.question())).orElse(""));
            String right = CameTrue.words(forecast.answer());
            return new MarkedForecast(
                    Marked.oneLine(forecast.question()),
                    said,
                    right.isEmpty() ? besideFigure(forecast, said) : "right is " + right,
                    CameTrue.of(forecast.answer(), said));
        }

        /** A drawn curve stands beside what the run's first curve has in its place. */
        private String besideFigure(Part.Forecast forecast, String said) {
            return Optional.of(forecast.answer())
                    .filter(Answer.Curve.class::isInstance)
                    .filter(answer -> said.startsWith(CURVE))
                    .flatMap(
                            answer ->
                                    DrawnPoints.read(
                                            (Answer.Curve) answer, said.substring(CURVE.length())))
                    .flatMap(points -> drawn.map(points::beside))
                    .filter(words -> !words.isEmpty())
                    .map("the run gives "::concat)
                    .orElse("see the figure");
        }
    }
}
