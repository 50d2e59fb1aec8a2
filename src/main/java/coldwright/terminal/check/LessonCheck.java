package coldwright.terminal.check;

import static coldwright.terminal.console.ConsoleText.text;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunOutcome;
import coldwright.lesson.CheckExpectation;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFault;
import coldwright.play.BlockingRunner;
import coldwright.play.ClaimVerdict;
import coldwright.play.LessonPlayer;
import coldwright.play.PlayListener;
import coldwright.play.PlayMode;
import coldwright.play.SnippetText;
import coldwright.play.SnippetTexts;
import coldwright.terminal.console.MissingNameText;
import coldwright.terminal.console.RunFailureText;

import java.util.ArrayList;
import java.util.List;

/** Counts the snippets and claims of a lesson that pass, and reports those that fail. */
public final class LessonCheck extends PlayListener.OfResults {
    private final Lesson lesson;
    private final List<String> failures = new ArrayList<>();
    private final MissingNameText missing = new MissingNameText();
    private int snippets;
    private int lines;
    private int numbers;
    private int passed;
    private int sourced;

    /**
     * The result for a lesson: how many snippets ran, how many check lines and verified numbers it
     * has, how many check lines passed and how many of these have a published source; and for each
     * failure a line {@code file:line: claim, expected, got}.
     */
    public record Report(
            Lesson lesson,
            int snippets,
            int lines,
            int numbers,
            int passed,
            int sourced,
            List<String> failures) {}

    private LessonCheck(Lesson lesson) {
        this.lesson = lesson;
        lesson.faults().stream().map(LessonFault::toString).forEach(failures::add);
    }

    static Report of(Lesson lesson, BlockingRunner runner) {
        LessonCheck check = new LessonCheck(lesson);
        new LessonPlayer(lesson, PlayMode.CHECK, SnippetTexts.AUTHORS, runner).play(check);
        return new Report(
                lesson,
                check.snippets,
                check.lines,
                check.numbers,
                check.passed,
                check.sourced,
                check.failures);
    }

    @Override
    public void ran(SnippetText snippet, FinishedRun run) {
        count(snippet, true, snippet.text(), run.outcome());
    }

    @Override
    public void solved(SnippetText snippet, FinishedRun run) {
        count(snippet, false, snippet.snippet().solution(), run.outcome());
    }

    private void count(SnippetText snippet, boolean own, String code, RunOutcome outcome) {
        snippets++;
        String what = text(own ? "the-snippet" : "the-solution");
        int fenceLine = snippet.snippet().line();
        for (RunFailureText.RunFailure runFailure : RunFailureText.troubles(outcome)) {
            fail(
                    own ? fenceLine + runFailure.line() : fenceLine,
                    text("check.snippet-failed", what, missing.why(runFailure.words())));
        }
        if (!outcome.finished()) {
            missing.failed(text("which.line", what, fenceLine), code);
        }
    }

    @Override
    public void tried(List<ClaimVerdict> verdicts) {
        verdicts.forEach(this::count);
    }

    private void count(ClaimVerdict verdict) {
        verdict.claim()
                .match(
                        value -> countLine(value, verdict),
                        truth -> countLine(truth, verdict),
                        number -> numbers++);
        if (!verdict.passed()) {
            fail(verdict.claim().line(), missing.why(ClaimSentence.of(verdict)));
        }
    }

    private int countLine(CheckExpectation line, ClaimVerdict verdict) {
        passed += verdict.passed() ? 1 : 0;
        sourced += verdict.passed() && line.namesPublishedSource() ? 1 : 0;
        return lines++;
    }

    private void fail(int line, String words) {
        failures.add(new LessonFault(lesson.file(), line, words).toString());
    }
}
