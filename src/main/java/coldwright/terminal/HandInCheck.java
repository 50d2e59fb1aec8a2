package coldwright.terminal;

import coldwright.bench.Outcome;
import coldwright.lesson.Expectation;
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

    private final HandIn handIn;
    private final Lesson lesson;
    private final Runs runs;
    private final List<String> lines = new ArrayList<>();
    private final List<String> above = new ArrayList<>();
    private boolean holds = true;
    private boolean changedAbove;

    /**
     * What came of it.
     *
     * @param lines what to print, step by step
     * @param holds whether every snippet ran to its end and every check line held
     */
    record Report(List<String> lines, boolean holds) {}

    private HandInCheck(HandIn handIn, Lesson lesson, Runs runs) {
        this.handIn = handIn;
        this.lesson = lesson;
        this.runs = runs;
    }

    static Report of(HandIn handIn, Lesson lesson, Runs runs) {
        HandInCheck check = new HandInCheck(handIn, lesson, runs);
        StepNames.parts(lesson).forEach(check::step);
        return new Report(check.lines, check.holds);
    }

    private void step(String name, List<Part> parts) {
        Optional<HandedStep> handed = handIn.step(name);
        List<String> details = new ArrayList<>();
        int snippets = 0;
        int ran = 0;
        int checks = 0;
        int held = 0;
        boolean changedHere = isChanged(parts, handed);
        String cause = changedAbove && !changedHere ? FROM_ABOVE : "";
        for (Part part : parts) {
            if (part instanceof Part.Snippet snippet) {
                ran += runs(snippet, snippets++, handed, details) ? 1 : 0;
            } else if (part instanceof Part.Check check) {
                for (Expectation expectation : check.expectations()) {
                    checks++;
                    held += holds(expectation, cause, details) ? 1 : 0;
                }
            } else if (part instanceof Part.Forecast forecast) {
                details.add(
                        forecast(
                                forecast, handed.map(s -> s.said(forecast.question())).orElse("")));
            }
        }
        changedAbove |= changedHere;
        holds &= ran == snippets && held == checks;
        if (snippets + checks > 0 || !details.isEmpty()) {
            lines.add(
                    "  %s: %d of %s, %d of %s%s"
                            .formatted(
                                    name.equals(StepNames.OPENING) ? lesson.title() : name,
                                    ran,
                                    counted(snippets, "snippet")
                                            + (snippets == 1 ? " runs" : " run"),
                                    held,
                                    counted(checks, "check line")
                                            + (checks == 1 ? " holds" : " hold"),
                                    handed.map(HandedStep::done).orElse(false) ? "; done" : ""));
            details.forEach(detail -> lines.add("    " + detail));
        }
    }

    private static boolean isChanged(List<Part> parts, Optional<HandedStep> handed) {
        List<Part.Snippet> snippets =
                parts.stream()
                        .filter(Part.Snippet.class::isInstance)
                        .map(Part.Snippet.class::cast)
                        .toList();
        return IntStream.range(0, snippets.size())
                .anyMatch(
                        i ->
                                handed.flatMap(step -> step.text(i))
                                        .filter(text -> !text.equals(snippets.get(i).code()))
                                        .isPresent());
    }

    private boolean runs(
            Part.Snippet snippet, int index, Optional<HandedStep> handed, List<String> details) {
        Optional<String> text = handed.flatMap(step -> step.text(index));
        if (text.isEmpty()) {
            details.add("snippet %d was not handed in; its author's ran".formatted(index + 1));
        }
        String code = text.orElse(snippet.code());
        Outcome outcome = runs.run(above, code).outcome();
        if (outcome.finished()) {
            above.add(code);
        }
        for (Ending.Trouble trouble : Ending.troubles(outcome)) {
            String where = trouble.line() > 0 ? ", line " + trouble.line() : "";
            details.add("snippet %d%s: %s".formatted(index + 1, where, trouble.words()));
        }
        return outcome.finished();
    }

    private boolean holds(Expectation expectation, String cause, List<String> details) {
        Outcome outcome = runs.run(above, expectation.expression()).outcome();
        if (outcome.finished()) {
            above.add(expectation.expression());
        }
        Verdict verdict = Verdict.of(expectation, outcome);
        if (!verdict.held()) {
            details.add(verdict.sentence() + cause);
        }
        return verdict.held();
    }

    private static String forecast(Part.Forecast forecast, String said) {
        String right = CameTrue.words(forecast.answer());
        String wanted = right.isEmpty() ? "see the figure" : "right is " + right;
        String words =
                said.isEmpty() ? "nothing said; " + wanted : "said %s; %s".formatted(said, wanted);
        CameTrue cameTrue = CameTrue.of(forecast.answer(), said);
        String judged =
                cameTrue == CameTrue.YES ? "came true" : cameTrue == CameTrue.NO ? "otherwise" : "";
        return "forecast: %s %s%s"
                .formatted(forecast.question(), words, judged.isEmpty() ? "" : " (" + judged + ")");
    }

    static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }
}
