package coldwright.bench;

import coldwright.bench.complete.CompletionProposal;

import java.util.List;
import java.util.concurrent.CompletableFuture;

/** What may stand at a caret, as somebody asked. */
final class CompletionRequest {
    private final List<String> above;
    private final String text;
    private final int caret;
    private final CompletableFuture<List<CompletionProposal>> answer = new CompletableFuture<>();

    /**
     * A question.
     *
     * @throws IllegalArgumentException if the caret stands outside the text
     */
    CompletionRequest(List<String> above, String text, int caret) {
        if (caret < 0 || caret > text.length()) {
            throw new IllegalArgumentException(
                    "caret is %d; it must be between 0 and %d, the length of the snippet"
                            .formatted(caret, text.length()));
        }
        this.above = List.copyOf(above);
        this.text = text;
        this.caret = caret;
    }

    List<String> above() {
        return above;
    }

    String text() {
        return text;
    }

    int caret() {
        return caret;
    }

    CompletableFuture<List<CompletionProposal>> answer() {
        return answer;
    }
}
