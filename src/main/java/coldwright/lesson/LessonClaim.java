package coldwright.lesson;

import java.util.function.Function;

/** A statement of a lesson about the results of its snippets. */
public sealed interface LessonClaim permits CheckExpectation, VerifiedNumber {
    /** The line in the file, from 1. */
    int line();

    /** The Java expression to evaluate after the snippets above. */
    String expression();

    /** Calls the function for this kind of claim. With a new kind every caller must treat it. */
    <T> T match(
            Function<CheckExpectation.Value, T> value,
            Function<CheckExpectation.True, T> truth,
            Function<VerifiedNumber, T> number);
}
