package coldwright.lesson;

/** One line of a check block. */
public sealed interface CheckExpectation extends LessonClaim {
    /** The source of the expected value, as its author wrote it; may be empty. */
    String source();

    /**
     * Whether its source is one that others can look up. It is if it names a year from 1500 to
     * 2099, a Handbook, the Codex, the USDA or the CFR, and says neither "from memory" nor "no
     * source".
     *
     * @return false for a reason alone, or for nothing
     */
    default boolean namesPublishedSource() {
        return PublishedSource.isNamedIn(source());
    }

    /**
     * The expression must give a number.
     *
     * @param line where it stands
     * @param expression what to evaluate
     * @param value the number
     * @param tolerance how far off is allowed
     * @param source where the value comes from; may be empty
     */
    record Value(int line, String expression, double value, double tolerance, String source)
            implements CheckExpectation {
        @Override
        public boolean passes(double given) {
            return Math.abs(given - value) <= tolerance;
        }
    }

    /**
     * The expression must be true.
     *
     * @param line where it stands
     * @param expression what to evaluate
     * @param source why it must be; may be empty
     */
    record True(int line, String expression, String source) implements CheckExpectation {
        @Override
        public boolean passes(double given) {
            return false;
        }
    }
}
