package coldwright.bench;

import coldwright.bench.complete.CompletionProposal;

import java.util.List;
import java.util.concurrent.CompletableFuture;

/** What may stand at a caret, as somebody asked. */
record CompletionRequest(
        List<String> above,
        String text,
        int caret,
        CompletableFuture<List<CompletionProposal>> answer) {
    /**
     * A question.
     *
     * @throws IllegalArgumentException if the caret stands outside the text
     */
    CompletionRequest(List<String> above, String text, int caret) {
        this(List.copyOf(above), text, caret, new CompletableFuture<>());
        if (caret < 0 || caret > text.length()) {
            throw new IllegalArgumentException(
                    "caret is %d; it must be between 0 and %d, the length of the snippet"
                            .formatted(caret, text.length()));
        }
    }
}
