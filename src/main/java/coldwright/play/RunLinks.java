package coldwright.play;

import coldwright.lesson.LessonPart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The order of a step's runs: which run answers a question, and after which run a check is tried.
 * Follows the parts from top to bottom.
 *
 * @param <Q> type of a question
 * @param <S> type of a snippet
 */
public final class RunLinks<Q, S> {
    private final List<Q> open = new ArrayList<>();
    private Optional<S> last = Optional.empty();

    /** A question comes. */
    public void question(Q question) {
        open.add(question);
    }

    /**
     * A snippet comes, also as its author wrote it; returns the questions that its run answers. A
     * run that the learner doesn't start answers nothing.
     */
    public List<Q> snippet(S snippet, LessonPart.Snippet part) {
        last = Optional.of(snippet);
        return part.given() ? List.of() : unanswered();
    }

    /** The questions that no run has answered; none afterwards. */
    public List<Q> unanswered() {
        List<Q> answered = List.copyOf(open);
        open.clear();
        return answered;
    }

    /** The snippet after whose run a check is tried that comes now; empty before the first. */
    public Optional<S> triedAfter() {
        return last;
    }
}
