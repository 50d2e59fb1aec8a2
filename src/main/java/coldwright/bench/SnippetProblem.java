package coldwright.bench;

/**
 * A problem in a snippet and its location.
 *
 * @param start where it begins, characters from the snippet's start
 * @param end where it ends, not included; never before {@code start}
 * @param line line in the snippet, from 1; 0 if unknown
 * @param words one sentence for a learner: what is wrong and how to fix it
 * @param compilerWords message of the compiler or the exception; may be empty
 */
public record SnippetProblem(int start, int end, int line, String words, String compilerWords) {}
