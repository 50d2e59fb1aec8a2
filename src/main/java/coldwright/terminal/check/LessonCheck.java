package coldwright.terminal.check;

import coldwright.bench.RunOutcome;
import coldwright.lesson.Lesson;
import coldwright.lesson.LessonFault;
import coldwright.lesson.LessonPart;
import coldwright.lesson.LessonStep;
import coldwright.terminal.console.BlockingBench;
import coldwright.terminal.console.MissingNameText;
import coldwright.terminal.console.RunFailureText;

import java.util.ArrayList;
import java.util.List;

/** Runs every snippet of a lesson and tries all that it says of what they give. */
public final class LessonCheck {
    private final Lesson lesson;
    private final BlockingBench blockingBench;
    private final List<String> failures = new ArrayList<>();
    private final List<String> above = new ArrayList<>();
    private final MissingNameText missing = new MissingNameText();
    private int snippets;
    private final List<LessonClaim> pending = new ArrayList<>();
    private final List<LessonClaim> afterRun = new ArrayList<>();
    private int lines;
    private int numbers;
    private int passed;
    private int sourced;

    /**
     * What came of it.
     *
     * @param lesson the lesson
     * @param snippets how many snippets were run
     * @param lines how many check lines were tried
     * @param numbers how many numbers of the text were tried
     * @param passed how many of the check lines held
     * @param sourced how many of those name a published source
     * @param failures a line for each failure, {@code file:line: what, expected, got}
     */
    public record Report(
            Lesson lesson,
            int snippets,
            int lines,
            int numbers,
            int passed,
            int sourced,
            List<String> failures) {}

    private LessonCheck(Lesson lesson, BlockingBench blockingBench) {
        this.lesson = lesson;
        this.blockingBench = blockingBench;
    }

    static Report of(Lesson lesson, BlockingBench blockingBench) {
        LessonCheck check = new LessonCheck(lesson, blockingBench);
        lesson.faults().stream().map(LessonFault::toString).forEach(check.failures::add);
        check.step(lesson.opening());
        lesson.steps().stream().map(LessonStep::parts).forEach(check::step);
        return new Report(
                lesson,
                check.snippets,
                check.lines,
                check.numbers,
                check.passed,
                check.sourced,
                check.failures);
    }

    /** Runs a step; an exercise's solution stands in for it from there to the step's end. */
    private void step(List<LessonPart> parts) {
        List<String> asWritten = new ArrayList<>(above);
        for (LessonPart part : parts) {
            part(part, asWritten);
        }
        pending.addAll(afterRun);
        afterRun.clear();
        tryPending();
        if (parts.stream()
                .anyMatch(p -> p instanceof LessonPart.Snippet s && !s.solution().isEmpty())) {
            above.clear();
            above.addAll(asWritten);
        }
    }

    private void part(LessonPart part, List<String> asWritten) {
        if (part instanceof LessonPart.Snippet snippet) {
            tryPending();
            snippet(snippet, asWritten);
            if (!snippet.given()) {
                pending.addAll(afterRun);
                afterRun.clear();
            }
        } else if (part instanceof LessonPart.Check check) {
            check.expectations().forEach(line -> pending.add(LessonClaim.of(line)));
        } else if (part instanceof LessonPart.Prose prose) {
            prose.verifiedNumbers().forEach(number -> pending.add(LessonClaim.of(number)));
        } else if (part instanceof LessonPart.Teacher note) {
            note.verifiedNumbers().forEach(number -> pending.add(LessonClaim.of(number)));
        } else if (part instanceof LessonPart.Prediction prediction) {
            prediction.verifiedNumbers().forEach(number -> afterRun.add(LessonClaim.of(number)));
        } else {
            throw new AssertionError(part);
        }
    }

    private void snippet(LessonPart.Snippet snippet, List<String> asWritten) {
        if (runs(snippet.line(), "snippet", snippet.code())) {
            asWritten.add(snippet.code());
            if (snippet.solution().isEmpty()) {
                above.add(snippet.code());
            }
        }
        if (!snippet.solution().isEmpty()
                && runs(snippet.line(), "solution of the snippet", snippet.solution())) {
            above.add(snippet.solution());
        }
    }

    private boolean runs(int fenceLine, String what, String code) {
        snippets++;
        RunOutcome outcome = blockingBench.run(above, code).outcome();
        for (RunFailureText.RunFailure runFailure : RunFailureText.troubles(outcome)) {
            boolean own = what.equals("snippet");
            fail(
                    own ? fenceLine + runFailure.line() : fenceLine,
                    "%s, expected to run to its end, got: %s"
                            .formatted(what, missing.why(runFailure.words())));
        }
        if (!outcome.finished()) {
            missing.failed("the %s on line %d".formatted(what, fenceLine), code);
        }
        return outcome.finished();
    }

    /** Tries what was said since the last snippet, all in one go. */
    private void tryPending() {
        List<ClaimVerdict> verdicts = ClaimTrial.of(pending, above, blockingBench);
        for (int i = 0; i < verdicts.size(); i++) {
            count(pending.get(i), verdicts.get(i));
        }
        pending.clear();
    }

    private void count(LessonClaim lessonClaim, ClaimVerdict claimVerdict) {
        numbers += lessonClaim.number() ? 1 : 0;
        lines += lessonClaim.number() ? 0 : 1;
        passed += claimVerdict.passed() && !lessonClaim.number() ? 1 : 0;
        sourced += claimVerdict.passed() && lessonClaim.sourced() ? 1 : 0;
        if (!claimVerdict.passed()) {
            fail(lessonClaim.line(), missing.why(claimVerdict.sentence()));
        }
    }

    private void fail(int line, String words) {
        failures.add(new LessonFault(lesson.file(), line, words).toString());
    }
}
