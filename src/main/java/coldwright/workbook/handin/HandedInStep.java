package coldwright.workbook.handin;

import java.util.List;
import java.util.Optional;

/** A step as handed in, whole; the title is empty for the part before the first step. */
public record HandedInStep(
        String title, boolean done, List<Prediction> predictions, List<Snippet> snippets) {
    public HandedInStep {
        predictions = List.copyOf(predictions);
        snippets = List.copyOf(snippets);
    }

    /**
     * A prediction as handed in, by its index in its step, from 0: the answer in words, empty if
     * none, the right answer in words, and how they compare.
     */
    public record Prediction(
            int index, String question, String answer, String right, PredictionOutcome outcome) {}

    /** A snippet as handed in, by its index in its step, from 0; and whether it was changed. */
    public record Snippet(int index, boolean changed, String text) {}

    /** The text of a snippet, by its index from 0; empty if it was not handed in. */
    public Optional<String> text(int index) {
        return snippets.stream().filter(one -> one.index() == index).map(Snippet::text).findFirst();
    }

    /** The answer to a question, in words; empty if there is none. */
    public String answer(String question) {
        return predictions.stream()
                .filter(one -> one.question().equals(question))
                .map(Prediction::answer)
                .findFirst()
                .orElse("");
    }
}
