package coldwright.lesson;

/** A statement of a lesson about the results of its snippets. */
public sealed interface LessonClaim permits CheckExpectation, VerifiedNumber {
    /** The line in the file, from 1. */
    int line();

    /** The Java expression to evaluate after the snippets above. */
    String expression();

    /**
     * Whether a number agrees with the lesson.
     *
     * @param given the value of the expression
     * @return always false if the claim is that something is true
     */
    boolean passes(double given);
}
