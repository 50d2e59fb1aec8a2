package coldwright.workbook.handin;

import java.util.List;
import java.util.Optional;

/** A step as handed in, whole; the title is empty for the part before the first step. */
public record HandedInStep(
        String title,
        boolean done,
        List<HandedInPrediction> predictions,
        List<HandedInSnippet> snippets) {
    public HandedInStep {
        predictions = List.copyOf(predictions);
        snippets = List.copyOf(snippets);
    }

    /** The text of a snippet, by its index from 0; empty if it was not handed in. */
    public Optional<String> text(int index) {
        return snippets.stream()
                .filter(one -> one.index() == index)
                .map(HandedInSnippet::text)
                .findFirst();
    }

    /** The answer to a question, in words; empty if there is none. */
    public String answer(String question) {
        return predictions.stream()
                .filter(one -> one.question().equals(question))
                .map(HandedInPrediction::answer)
                .findFirst()
                .orElse("");
    }
}
