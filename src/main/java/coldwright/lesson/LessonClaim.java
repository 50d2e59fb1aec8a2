package coldwright.lesson;

/** Something that a lesson says of what its snippets give. */
public sealed interface LessonClaim permits CheckExpectation, VerifiedNumber {
    /**
     * Where it is.
     *
     * @return the line in the file, from 1
     */
    int line();

    /**
     * What to evaluate after the snippets above.
     *
     * @return a Java expression
     */
    String expression();

    /**
     * Whether a number is what the lesson says.
     *
     * @param given what the expression gave
     * @return true if it is as near as allowed; never for a claim that something is true
     */
    boolean passes(double given);
}
