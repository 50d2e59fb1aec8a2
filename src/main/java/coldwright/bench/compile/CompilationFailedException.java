package coldwright.bench.compile;

import java.util.List;

/** A snippet doesn't compile; no part of it is kept. */
public final class CompilationFailedException extends Exception {
    private static final long serialVersionUID = 1;

    private final transient List<CompileProblem> complaints;

    /**
     * Creates the exception.
     *
     * @param complaints the problems, at least one
     */
    public CompilationFailedException(List<CompileProblem> complaints) {
        super(complaints.get(0).words());
        this.complaints = List.copyOf(complaints);
    }

    /** The problems, at least one. */
    public List<CompileProblem> complaints() {
        return complaints;
    }
}
