package coldwright.bench.complete;

/**
 * A name that may stand at the caret.
 *
 * @param name the name alone
 * @param insert the name with the brackets of a call, if it is one: {@code massG()}, or {@code
 *     icePercentAt(} where something must follow
 * @param from where the text begins that it takes the place of, characters from the snippet's
 *     start; that text ends at the caret
 * @param receiver the type of what stands before the point, with its package; empty if there is no
 *     point, or the type can't be told
 * @param fits whether its type is the one that is needed there
 * @param own whether a snippet declares it
 */
public record CompletionProposal(
        String name, String insert, int from, String receiver, boolean fits, boolean own) {}
