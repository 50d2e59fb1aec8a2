package coldwright.bench.compile;

/**
 * A compile error.
 *
 * @param start where it begins, characters from the snippet's start
 * @param end where it ends, exclusive
 * @param words one sentence for a learner
 * @param compilerWords the compiler's message
 */
public record CompileProblem(int start, int end, String words, String compilerWords) {}
