package coldwright.bench.complete;

/**
 * A valid name at the caret.
 *
 * @param name the name alone
 * @param insert the name with the brackets of a call, if it is one: {@code massG()}, or {@code
 *     icePercentAt(} if an argument must follow
 * @param from start of the text that it replaces, characters from the snippet's start; that text
 *     ends at the caret
 * @param receiver the type of the expression before the dot, with its package; empty if there is no
 *     dot, or the type is unknown
 * @param fits whether its type matches the expected one
 * @param own whether a snippet declares it
 */
public record CompletionProposal(
        String name, String insert, int from, String receiver, boolean fits, boolean own) {}
