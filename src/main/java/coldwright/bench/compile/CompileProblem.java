package coldwright.bench.compile;

/**
 * Something the compiler refuses.
 *
 * @param start where it begins, characters from the snippet's start
 * @param end where it ends, not included
 * @param words one sentence for a learner
 * @param compilerWords what the compiler said
 */
public record CompileProblem(int start, int end, String words, String compilerWords) {}
