package coldwright.workbook.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * A learner's work in one step; its title is the step's name after {@link StepNames}. Edits and
 * predictions are by index, one each; {@code aside} has the edits of snippets that the author has
 * changed since, saved but not shown.
 */
public record StepWork(
        String title,
        boolean read,
        boolean done,
        List<SnippetEdit> edits,
        List<SnippetEdit> aside,
        List<GivenPrediction> predictions) {
    /** Sorts edits and predictions; refuses two of the same index. */
    public StepWork {
        edits = edits.stream().sorted(Comparator.comparingInt(SnippetEdit::index)).toList();
        aside = List.copyOf(aside);
        predictions =
                predictions.stream()
                        .sorted(Comparator.comparingInt(GivenPrediction::index))
                        .toList();
        requireApart(edits.stream().map(SnippetEdit::index));
        requireApart(predictions.stream().map(GivenPrediction::index));
    }

    private static void requireApart(Stream<Integer> indexes) {
        Set<Integer> seen = new HashSet<>();
        if (!indexes.allMatch(seen::add)) {
            throw new IllegalArgumentException("two parts of a step have the same index");
        }
    }

    public static StepWork empty(String title) {
        return new StepWork(title, false, false, List.of(), List.of(), List.of());
    }

    /** Whether there is nothing to save. */
    public boolean isEmpty() {
        return equals(empty(title));
    }

    /**
     * The learner's text of a snippet, by its index from 0, if it is an edit of the author's
     * current text, else that.
     */
    public String textOf(int index, String authorText) {
        return edit(index)
                .filter(edit -> edit.from().equals(ContentHash.of(authorText)))
                .map(SnippetEdit::text)
                .orElse(authorText);
    }

    /** The edit of a snippet, by its index from 0; empty if it is the author's. */
    public Optional<SnippetEdit> edit(int index) {
        return edits.stream().filter(edit -> edit.index() == index).findFirst();
    }

    /** The answer to a prediction, by its index from 0; empty if there is none to that question. */
    public Optional<LearnerAnswer> answer(int index, String question) {
        return predictions.stream()
                .filter(one -> one.index() == index && one.question().equals(question))
                .map(GivenPrediction::answer)
                .findFirst();
    }

    /** Changes a snippet's text, by its index from 0. The author's own text removes the edit. */
    public StepWork withSnippet(int index, String text, String authorText) {
        List<SnippetEdit> next = but(edits, edit -> edit.index() == index);
        if (!text.equals(authorText)) {
            next.add(new SnippetEdit(index, text, ContentHash.of(authorText)));
        }
        return with(next, aside);
    }

    /** Restores the author's text of a snippet, by its index from 0. */
    public StepWork withoutSnippet(int index) {
        return with(but(edits, edit -> edit.index() == index), aside);
    }

    public StepWork withPrediction(GivenPrediction answer) {
        List<GivenPrediction> next = but(predictions, one -> one.index() == answer.index());
        next.add(answer);
        return new StepWork(title, read, done, edits, aside, next);
    }

    /** Removes the answer to a prediction, by its index from 0. */
    public StepWork withoutPrediction(int index) {
        List<GivenPrediction> next = but(predictions, one -> one.index() == index);
        return new StepWork(title, read, done, edits, aside, next);
    }

    public StepWork withRead(boolean nowRead) {
        return new StepWork(title, nowRead, done, edits, aside, predictions);
    }

    public StepWork withDone(boolean nowDone) {
        return new StepWork(title, read, nowDone, edits, aside, predictions);
    }

    /** Replaces the edits shown and those kept aside. */
    public StepWork with(List<SnippetEdit> newEdits, List<SnippetEdit> newAside) {
        return new StepWork(title, read, done, newEdits, newAside, predictions);
    }

    public StepWork withPredictions(List<GivenPrediction> answers) {
        return new StepWork(title, read, done, edits, aside, answers);
    }

    private static <T> List<T> but(List<T> all, Predicate<T> not) {
        return new ArrayList<>(all.stream().filter(not.negate()).toList());
    }

    StepWork titled(String newTitle) {
        return new StepWork(newTitle, read, done, edits, aside, predictions);
    }
}
