package coldwright.bench;

/**
 * What is wrong in a snippet, and where.
 *
 * @param start where it begins, characters from the snippet's start
 * @param end where it ends, not included; never before {@code start}
 * @param line the line in the snippet, from 1; 0 if it is not known
 * @param words one sentence for a learner: what is wrong and the mend
 * @param compilerWords what the compiler or the exception said, for those who want it; may be empty
 */
public record SnippetProblem(int start, int end, int line, String words, String compilerWords) {}
