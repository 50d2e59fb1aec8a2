package coldwright.workbook.handin;

import java.util.List;
import java.util.Optional;

/**
 * A step as handed in.
 *
 * @param title the step's name; empty for what stands before the first step
 * @param done whether it was done
 * @param predictions its forecasts
 * @param snippets its snippets, all of them
 */
public record HandedInStep(
        String title,
        boolean done,
        List<HandedInPrediction> predictions,
        List<HandedInSnippet> snippets) {
    public HandedInStep {
        predictions = List.copyOf(predictions);
        snippets = List.copyOf(snippets);
    }

    /**
     * The text of a snippet.
     *
     * @param index which snippet, from 0
     * @return its text; empty if it was not handed in
     */
    public Optional<String> text(int index) {
        return snippets.stream()
                .filter(one -> one.index() == index)
                .map(HandedInSnippet::text)
                .findFirst();
    }

    /**
     * What was said to a question.
     *
     * @param question the question
     * @return in words; empty if nothing was
     */
    public String answer(String question) {
        return predictions.stream()
                .filter(one -> one.question().equals(question))
                .map(HandedInPrediction::answer)
                .findFirst()
                .orElse("");
    }
}
