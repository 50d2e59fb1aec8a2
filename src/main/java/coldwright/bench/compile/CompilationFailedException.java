package coldwright.bench.compile;

import java.util.List;

/** A snippet does not compile; nothing of it stands. */
public final class CompilationFailedException extends Exception {
    private static final long serialVersionUID = 1;

    private final transient List<CompileProblem> complaints;

    /**
     * Refuses a snippet.
     *
     * @param complaints what is wrong, at least one
     */
    public CompilationFailedException(List<CompileProblem> complaints) {
        super(complaints.get(0).words());
        this.complaints = List.copyOf(complaints);
    }

    /**
     * What is wrong.
     *
     * @return at least one
     */
    public List<CompileProblem> complaints() {
        return complaints;
    }
}
