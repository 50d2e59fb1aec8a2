package coldwright.play;

/** What to run and try of a lesson besides its snippets. */
public enum PlayMode {
    /**
     * For authors: every check line and every verified number, several at a time. The solution of
     * an exercise replaces its snippet until the end of the step.
     */
    CHECK,
    /** For learners: the check lines, each where it appears. */
    LEARN,
    /** The snippets alone. */
    PRINT,
    /** The snippets and their solutions. */
    PRINT_SOLVED;

    boolean solves() {
        return this == CHECK || this == PRINT_SOLVED;
    }
}
