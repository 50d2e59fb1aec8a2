package coldwright.desk.lesson.model;

import coldwright.bench.SnippetProblem;
import coldwright.lesson.LessonFault;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What its author has to mend in a lesson: what was found in reading its text, and what kept
 * snippets from their end when they last ran.
 */
public final class LessonFaults {
    private final LessonModel lesson;

    /**
     * Those of a lesson.
     *
     * @param lesson the lesson
     */
    public LessonFaults(LessonModel lesson) {
        this.lesson = lesson;
    }

    /**
     * All of them as they stand now. A snippet that the reader has changed is not its author's; of
     * the program's own lessons only the text counts.
     *
     * @return in the order of their lines
     */
    public List<LessonFault> all() {
        Stream<LessonFault> run =
                lesson.ownFile().isPresent()
                        ? lesson.snippets().stream().flatMap(one -> of(one).stream())
                        : Stream.of();
        return Stream.concat(lesson.lesson().faults().stream(), run)
                .sorted(Comparator.comparingInt(LessonFault::line))
                .toList();
    }

    private Optional<LessonFault> of(SnippetModel one) {
        if (one.edited().get()) {
            return Optional.empty();
        }
        return one.result().problems().stream().findFirst().map(problem -> fault(one, problem));
    }

    private LessonFault fault(SnippetModel one, SnippetProblem problem) {
        int line = one.snippet().line() + Math.max(0, problem.line());
        return new LessonFault(lesson.lesson().file(), line, problem.words());
    }

    /**
     * Does something whenever they may have changed.
     *
     * @param action what
     */
    public void whenChanged(Runnable action) {
        for (SnippetModel one : lesson.snippets()) {
            one.result().lastRun().addListener((value, was, is) -> action.run());
            one.result().changedSinceRun().addListener((value, was, is) -> action.run());
        }
    }
}
