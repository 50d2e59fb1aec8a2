package coldwright.terminal;

import coldwright.bench.Outcome;
import coldwright.lesson.Fault;
import coldwright.lesson.Lesson;
import coldwright.lesson.Part;
import coldwright.lesson.Step;

import java.util.ArrayList;
import java.util.List;

/** Runs every snippet of a lesson and tries all that it says of what they give. */
final class LessonCheck {
    private final Lesson lesson;
    private final Runs runs;
    private final List<String> failures = new ArrayList<>();
    private final List<String> above = new ArrayList<>();
    private final MissingNames missing = new MissingNames();
    private int snippets;
    private final List<Claim> pending = new ArrayList<>();
    private final List<Claim> afterRun = new ArrayList<>();
    private int lines;
    private int numbers;
    private int held;
    private int sourced;

    /**
     * What came of it.
     *
     * @param lesson the lesson
     * @param snippets how many snippets were run
     * @param lines how many check lines were tried
     * @param numbers how many numbers of the text were tried
     * @param held how many of the check lines held
     * @param sourced how many of those name a published source
     * @param failures a line for each failure, {@code file:line: what, expected, got}
     */
    record Report(
            Lesson lesson,
            int snippets,
            int lines,
            int numbers,
            int held,
            int sourced,
            List<String> failures) {}

    private LessonCheck(Lesson lesson, Runs runs) {
        this.lesson = lesson;
        this.runs = runs;
    }

    static Report of(Lesson lesson, Runs runs) {
        LessonCheck check = new LessonCheck(lesson, runs);
        lesson.faults().stream().map(Fault::toString).forEach(check.failures::add);
        check.step(lesson.opening());
        lesson.steps().stream().map(Step::parts).forEach(check::step);
        return new Report(
                lesson,
                check.snippets,
                check.lines,
                check.numbers,
                check.held,
                check.sourced,
                check.failures);
    }

    /** Runs a step; an exercise's solution stands in for it from there to the step's end. */
    private void step(List<Part> parts) {
        List<String> asWritten = new ArrayList<>(above);
        for (Part part : parts) {
            part(part, asWritten);
        }
        pending.addAll(afterRun);
        afterRun.clear();
        tryPending();
        if (parts.stream().anyMatch(p -> p instanceof Part.Snippet s && !s.solution().isEmpty())) {
            above.clear();
            above.addAll(asWritten);
        }
    }

    private void part(Part part, List<String> asWritten) {
        if (part instanceof Part.Snippet snippet) {
            tryPending();
            snippet(snippet, asWritten);
            if (!snippet.given()) {
                pending.addAll(afterRun);
                afterRun.clear();
            }
        } else if (part instanceof Part.Check check) {
            check.expectations().forEach(line -> pending.add(Claim.of(line)));
        } else if (part instanceof Part.Prose prose) {
            prose.held().forEach(number -> pending.add(Claim.of(number)));
        } else if (part instanceof Part.Teacher note) {
            note.held().forEach(number -> pending.add(Claim.of(number)));
        } else if (part instanceof Part.Forecast forecast) {
            forecast.held().forEach(number -> afterRun.add(Claim.of(number)));
        } else {
            throw new AssertionError(part);
        }
    }

    private void snippet(Part.Snippet snippet, List<String> asWritten) {
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
        Outcome outcome = runs.run(above, code).outcome();
        for (Ending.Trouble trouble : Ending.troubles(outcome)) {
            boolean own = what.equals("snippet");
            fail(
                    own ? fenceLine + trouble.line() : fenceLine,
                    "%s, expected to run to its end, got: %s"
                            .formatted(what, missing.why(trouble.words())));
        }
        if (!outcome.finished()) {
            missing.failed("the %s on line %d".formatted(what, fenceLine), code);
        }
        return outcome.finished();
    }

    /** Tries what was said since the last snippet, all in one go. */
    private void tryPending() {
        List<Verdict> verdicts = Trial.of(pending, above, runs);
        for (int i = 0; i < verdicts.size(); i++) {
            count(pending.get(i), verdicts.get(i));
        }
        pending.clear();
    }

    private void count(Claim claim, Verdict verdict) {
        numbers += claim.number() ? 1 : 0;
        lines += claim.number() ? 0 : 1;
        held += verdict.held() && !claim.number() ? 1 : 0;
        sourced += verdict.held() && claim.sourced() ? 1 : 0;
        if (!verdict.held()) {
            fail(claim.line(), missing.why(verdict.sentence()));
        }
    }

    private void fail(int line, String words) {
        failures.add(new Fault(lesson.file(), line, words).toString());
    }
}
