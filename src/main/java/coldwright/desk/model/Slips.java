package coldwright.desk.model;

import coldwright.bench.Problem;
import coldwright.lesson.Fault;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What its author has to mend in a lesson: what was found in reading its text, and what kept
 * snippets from their end when they last ran.
 */
public final class Slips {
    private final LessonModel lesson;

    /**
     * Those of a lesson.
     *
     * @param lesson the lesson
     */
    public Slips(LessonModel lesson) {
        this.lesson = lesson;
    }

    /**
     * All of them as they stand now. A snippet that the reader has changed is not its author's; of
     * the program's own lessons only the text counts.
     *
     * @return in the order of their lines
     */
    public List<Fault> all() {
        Stream<Fault> run =
                lesson.ownFile().isPresent()
                        ? lesson.snippets().stream().flatMap(one -> of(one).stream())
                        : Stream.of();
        return Stream.concat(lesson.lesson().faults().stream(), run)
                .sorted(Comparator.comparingInt(Fault::line))
                .toList();
    }

    private Optional<Fault> of(SnippetModel one) {
        if (one.edited().get()) {
            return Optional.empty();
        }
        return one.came().problems().stream().findFirst().map(problem -> fault(one, problem));
    }

    private Fault fault(SnippetModel one, Problem problem) {
        int line = one.snippet().line() + Math.max(0, problem.line());
        return new Fault(lesson.lesson().file(), line, problem.words());
    }

    /**
     * Does something whenever they may have changed.
     *
     * @param action what
     */
    public void whenChanged(Runnable action) {
        for (SnippetModel one : lesson.snippets()) {
            one.came().lastRun().addListener((value, was, is) -> action.run());
            one.came().changedSinceRun().addListener((value, was, is) -> action.run());
        }
    }
}
