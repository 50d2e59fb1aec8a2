package coldwright.terminal;

import coldwright.bench.Outcome;
import coldwright.lesson.Expectation;
import coldwright.lesson.Fault;
import coldwright.lesson.Lesson;
import coldwright.lesson.Part;
import coldwright.lesson.Step;

import java.util.ArrayList;
import java.util.List;

/** Runs every snippet of a lesson and every line of its checks. */
final class LessonCheck {
    private final Lesson lesson;
    private final Runs runs;
    private final List<String> failures = new ArrayList<>();
    private final List<String> above = new ArrayList<>();
    private int snippets;
    private int lines;

    /**
     * What came of it.
     *
     * @param lesson the lesson
     * @param snippets how many snippets were run
     * @param lines how many check lines were tried
     * @param failures a line for each failure, {@code file:line: what, expected, got}
     */
    record Report(Lesson lesson, int snippets, int lines, List<String> failures) {}

    private LessonCheck(Lesson lesson, Runs runs) {
        this.lesson = lesson;
        this.runs = runs;
    }

    static Report of(Lesson lesson, Runs runs) {
        LessonCheck check = new LessonCheck(lesson, runs);
        lesson.faults().stream().map(Fault::toString).forEach(check.failures::add);
        check.step(lesson.opening());
        lesson.steps().stream().map(Step::parts).forEach(check::step);
        return new Report(lesson, check.snippets, check.lines, check.failures);
    }

    /** Runs a step; an exercise's solution stands in for it from there to the step's end. */
    private void step(List<Part> parts) {
        List<String> asWritten = new ArrayList<>(above);
        for (Part part : parts) {
            if (part instanceof Part.Snippet snippet) {
                snippet(snippet, asWritten);
            } else if (part instanceof Part.Check check) {
                check.expectations().forEach(this::expectation);
            }
        }
        if (parts.stream().anyMatch(p -> p instanceof Part.Snippet s && !s.solution().isEmpty())) {
            above.clear();
            above.addAll(asWritten);
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
                    "%s, expected to run to its end, got: %s".formatted(what, trouble.words()));
        }
        return outcome.finished();
    }

    private void expectation(Expectation expectation) {
        lines++;
        Outcome outcome = runs.run(above, expectation.expression()).outcome();
        if (outcome.finished()) {
            above.add(expectation.expression());
        }
        Verdict verdict = Verdict.of(expectation, outcome);
        if (!verdict.held()) {
            fail(expectation.line(), verdict.sentence());
        }
    }

    private void fail(int line, String words) {
        failures.add(new Fault(lesson.file(), line, words).toString());
    }
}
