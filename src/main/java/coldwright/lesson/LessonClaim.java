package coldwright.lesson;

/** Something that a lesson says of what its snippets give. */
public sealed interface LessonClaim permits CheckExpectation, VerifiedNumber {
    /** The line in the file, from 1. */
    int line();

    /** The Java expression to evaluate after the snippets above. */
    String expression();

    /**
     * Whether a number is what the lesson says.
     *
     * @param given what the expression gave
     * @return true if it is as near as allowed; never for a claim that something is true
     */
    boolean passes(double given);
}
