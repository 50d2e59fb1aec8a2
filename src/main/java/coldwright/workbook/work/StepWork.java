package coldwright.workbook.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * A learner's work in one step.
 *
 * @param title the step's name after {@link StepNames}
 * @param read whether its text was read
 * @param done whether it is done
 * @param edits snippets with another text than the author's, by index; one each
 * @param aside edits of snippets that the author has changed since, kept but not shown
 * @param predictions answers to forecasts, by index; one each
 */
public record StepWork(
        String title,
        boolean read,
        boolean done,
        List<SnippetEdit> edits,
        List<SnippetEdit> aside,
        List<GivenPrediction> predictions) {
    /**
     * Puts edits and forecasts in order.
     *
     * @throws IllegalArgumentException if two edits or two forecasts have the same index
     */
    public StepWork {
        edits = edits.stream().sorted(Comparator.comparingInt(SnippetEdit::index)).toList();
        aside = List.copyOf(aside);
        predictions =
                predictions.stream()
                        .sorted(Comparator.comparingInt(GivenPrediction::index))
                        .toList();
        requireApart(title, "edits", edits.stream().map(SnippetEdit::index));
        requireApart(title, "forecasts", predictions.stream().map(GivenPrediction::index));
    }

    private static void requireApart(String title, String what, Stream<Integer> places) {
        List<Integer> all = places.toList();
        if (all.stream().distinct().count() < all.size()) {
            throw new IllegalArgumentException(
                    "the step \"%s\" has two %s of one index; each may have one"
                            .formatted(title, what));
        }
    }

    /**
     * A step that nobody has worked on.
     *
     * @param title its name
     * @return no work
     */
    public static StepWork empty(String title) {
        return new StepWork(title, false, false, List.of(), List.of(), List.of());
    }

    /**
     * Whether there is nothing to keep.
     *
     * @return true if no work was done
     */
    public boolean isEmpty() {
        return equals(empty(title));
    }

    /**
     * What a snippet's text is for this learner.
     *
     * @param index which snippet, from 0
     * @param authorText the author's text of today
     * @return the learner's text if it was made from that author's text, else the author's
     */
    public String textOf(int index, String authorText) {
        return edit(index)
                .filter(edit -> edit.from().equals(ContentHash.of(authorText)))
                .map(SnippetEdit::text)
                .orElse(authorText);
    }

    /**
     * The edit of a snippet.
     *
     * @param index which snippet, from 0
     * @return the edit; empty if the snippet is as its author wrote it
     */
    public Optional<SnippetEdit> edit(int index) {
        return edits.stream().filter(edit -> edit.index() == index).findFirst();
    }

    /**
     * The answer to a forecast.
     *
     * @param index which forecast, from 0
     * @param question the question of today
     * @return the answer; empty if there is none to that question
     */
    public Optional<LearnerAnswer> answer(int index, String question) {
        return predictions.stream()
                .filter(one -> one.index() == index && one.question().equals(question))
                .map(GivenPrediction::answer)
                .findFirst();
    }

    /**
     * With a snippet's text changed. The author's own text is no edit.
     *
     * @param index which snippet, from 0
     * @param text the learner's text
     * @param authorText the author's
     * @return new work
     */
    public StepWork withSnippet(int index, String text, String authorText) {
        List<SnippetEdit> next = but(edits, edit -> edit.index() == index);
        if (!text.equals(authorText)) {
            next.add(new SnippetEdit(index, text, ContentHash.of(authorText)));
        }
        return with(next, aside);
    }

    /**
     * With a snippet as its author wrote it.
     *
     * @param index which snippet, from 0
     * @return new work
     */
    public StepWork withoutSnippet(int index) {
        return with(but(edits, edit -> edit.index() == index), aside);
    }

    /**
     * With a forecast answered.
     *
     * @param answer the answer
     * @return new work
     */
    public StepWork withPrediction(GivenPrediction answer) {
        List<GivenPrediction> next = but(predictions, one -> one.index() == answer.index());
        next.add(answer);
        return new StepWork(title, read, done, edits, aside, next);
    }

    /**
     * With a forecast not answered.
     *
     * @param index which forecast, from 0
     * @return new work
     */
    public StepWork withoutPrediction(int index) {
        List<GivenPrediction> next = but(predictions, one -> one.index() == index);
        return new StepWork(title, read, done, edits, aside, next);
    }

    /**
     * With the mark of a text that was read.
     *
     * @param nowRead whether it was
     * @return new work
     */
    public StepWork withRead(boolean nowRead) {
        return new StepWork(title, nowRead, done, edits, aside, predictions);
    }

    /**
     * With the mark of a step that is done.
     *
     * @param nowDone whether it is
     * @return new work
     */
    public StepWork withDone(boolean nowDone) {
        return new StepWork(title, read, nowDone, edits, aside, predictions);
    }

    /**
     * With other edits.
     *
     * @param newEdits those shown
     * @param newAside those kept aside
     * @return new work
     */
    public StepWork with(List<SnippetEdit> newEdits, List<SnippetEdit> newAside) {
        return new StepWork(title, read, done, newEdits, newAside, predictions);
    }

    /**
     * With other answers to its forecasts.
     *
     * @param answers all of them
     * @return new work
     */
    public StepWork withPredictions(List<GivenPrediction> answers) {
        return new StepWork(title, read, done, edits, aside, answers);
    }

    private static <T> List<T> but(List<T> all, Predicate<T> not) {
        return new ArrayList<>(all.stream().filter(not.negate()).toList());
    }

    /** The same under another title. */
    StepWork titled(String newTitle) {
        return new StepWork(newTitle, read, done, edits, aside, predictions);
    }
}
