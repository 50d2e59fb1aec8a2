package coldwright.terminal;

import coldwright.bench.Outcome;
import coldwright.bench.Run;
import coldwright.lesson.Lesson;
import coldwright.lesson.Part;
import coldwright.print.Given;
import coldwright.workbook.handin.HandIn;
import coldwright.workbook.handin.HandedStep;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Runs the snippets of a lesson, or what a learner made of them, and keeps what they gave. */
final class LessonRun {
    /** The type of a line that printed; what it gives is of no interest. */
    private static final String PRINTING = "PrintStream";

    private final Optional<HandIn> work;
    private final Runs runs;
    private final List<String> above = new ArrayList<>();
    private final Map<Integer, Given> given = new HashMap<>();

    private LessonRun(Optional<HandIn> work, Runs runs) {
        this.work = work;
        this.runs = runs;
    }

    /**
     * Runs it.
     *
     * @param lesson the lesson
     * @param work a learner's snippets, in place of the author's
     * @param runs runs them
     * @return what each gave, by the line of its fence
     */
    static Map<Integer, Given> of(Lesson lesson, Optional<HandIn> work, Runs runs) {
        LessonRun run = new LessonRun(work, runs);
        run.step("", lesson.opening());
        lesson.steps().forEach(step -> run.step(step.title(), step.parts()));
        return run.given;
    }

    private void step(String name, List<Part> parts) {
        Optional<HandedStep> handed = work.flatMap(one -> one.step(name));
        int index = 0;
        for (Part part : parts) {
            if (part instanceof Part.Snippet snippet) {
                int at = index++;
                String code = handed.flatMap(step -> step.text(at)).orElse(snippet.code());
                Run run = runs.run(above, code);
                if (run.outcome().finished()) {
                    above.add(code);
                }
                given.put(snippet.line(), given(run));
            }
        }
    }

    private static Given given(Run run) {
        boolean value =
                run.outcome() instanceof Outcome.Finished finished
                        && !finished.type().endsWith(PRINTING);
        String trouble =
                Ending.troubles(run.outcome()).stream()
                        .findFirst()
                        .map(
                                one ->
                                        (one.line() > 0 ? "Line " + one.line() + ": " : "")
                                                + one.words())
                        .orElse("");
        return new Given(
                run.printed(),
                value ? ((Outcome.Finished) run.outcome()).value() : "",
                trouble,
                run.exhibits());
    }
}
