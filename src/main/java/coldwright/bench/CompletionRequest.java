package coldwright.bench;

import coldwright.bench.complete.CompletionProposal;

import java.util.List;
import java.util.concurrent.CompletableFuture;

/** A request for the valid names at a caret. */
record CompletionRequest(
        List<String> above,
        String text,
        int caret,
        CompletableFuture<List<CompletionProposal>> answer) {
    /**
     * Validates and copies the components.
     *
     * @throws IllegalArgumentException if the caret is outside the text
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
