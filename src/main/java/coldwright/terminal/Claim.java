package coldwright.terminal;

import coldwright.bench.Outcome;
import coldwright.lesson.Expectation;
import coldwright.lesson.Held;

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
record Claim(
        int line,
        String expression,
        boolean number,
        boolean sourced,
        Function<Outcome, Verdict> judge) {
    static Claim of(Expectation line) {
        return new Claim(
                line.line(),
                line.expression(),
                false,
                line.namesPublishedSource(),
                outcome -> Verdict.of(line, outcome));
    }

    static Claim of(Held held) {
        return new Claim(
                held.line(),
                held.expression(),
                true,
                false,
                outcome -> HeldVerdict.of(held, outcome));
    }
}
