package coldwright.terminal.check;

import coldwright.bench.RunOutcome;
import coldwright.lesson.CheckExpectation;
import coldwright.lesson.VerifiedNumber;

import java.util.function.Function;

/**
 * Something that a lesson says of what its snippets give.
 *
 * @param line where it stands in the file
 * @param expression Java to evaluate after the snippets above
 * @param number whether it is a number in the text, no line of a check
 * @param sourced whether it names a published source
 * @param judge compares what came out with what is said
 */
public record LessonClaim(
        int line,
        String expression,
        boolean number,
        boolean sourced,
        Function<RunOutcome, ClaimVerdict> judge) {
    public static LessonClaim of(CheckExpectation line) {
        return new LessonClaim(
                line.line(),
                line.expression(),
                false,
                line.namesPublishedSource(),
                outcome -> ClaimVerdict.of(line, outcome));
    }

    static LessonClaim of(VerifiedNumber verifiedNumber) {
        return new LessonClaim(
                verifiedNumber.line(),
                verifiedNumber.expression(),
                true,
                false,
                outcome -> VerifiedNumberVerdict.of(verifiedNumber, outcome));
    }
}
