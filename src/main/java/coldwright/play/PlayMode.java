package coldwright.play;

/** What is run and tried of a lesson beside its snippets. */
public enum PlayMode {
    /**
     * All that an author must know: every check line and every verified number, several at a time.
     * To the step's end the solution of an exercise stands in for its snippet.
     */
    CHECK,
    /** What a learner sees: the check lines, each check where it stands. */
    LEARN,
    /** Nothing more. */
    PRINT,
    /** The solutions too, beside the snippets. */
    PRINT_SOLVED;

    boolean solves() {
        return this == CHECK || this == PRINT_SOLVED;
    }
}
