package coldwright.desk.lesson.model;

import coldwright.bench.SnippetProblem;
import coldwright.lesson.LessonFault;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Errors that an author has to fix in a lesson: those in its text, and those of the last runs. */
public final class LessonFaults {
    private final LessonModel lesson;

    /** Watches the errors of a lesson. */
    public LessonFaults(LessonModel lesson) {
        this.lesson = lesson;
    }

    /**
     * All current errors in the order of their lines. Snippets that the reader has changed don't
     * count; in the program's own lessons only errors of the text count.
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

    /** Runs an action whenever they may have changed. */
    public void whenChanged(Runnable action) {
        for (SnippetModel one : lesson.snippets()) {
            one.result().lastRun().addListener((value, was, is) -> action.run());
            one.result().changedSinceRun().addListener((value, was, is) -> action.run());
        }
    }
}
