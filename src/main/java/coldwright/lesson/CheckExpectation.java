package coldwright.lesson;

import java.util.function.Function;
import java.util.regex.Pattern;

/** One line of a check block. */
public sealed interface CheckExpectation extends LessonClaim {
    /** A year is a four-digit number that isn't part of a longer one and has no unit. */
    Pattern PUBLISHED =
            Pattern.compile(
                    "(?<![\\d.,−-])(?:1[5-9]|20)\\d\\d(?![\\d%°]|[.,]\\d|\\s?(?:%|°|g|kg|ml|mL|W|J|s|K)(?![\\p{L}]))"
                            + "|\\b(?:[Hh]andbook|USDA|Codex|CFR)\\b");

    /** What a source says that nobody can look up. */
    Pattern UNPUBLISHED = Pattern.compile("(?i)\\b(?:from memory|no source)\\b");

    /** The source of the expected value, as its author wrote it; may be empty. */
    String source();

    /**
     * Whether the source can be looked up: it names a year from 1500 to 2099, a Handbook, the
     * Codex, the USDA or the CFR, and says neither "from memory" nor "no source".
     */
    default boolean namesPublishedSource() {
        return PUBLISHED.matcher(source()).find() && !UNPUBLISHED.matcher(source()).find();
    }

    /** Expects a number within a tolerance; its source may be empty. */
    record Value(int line, String expression, double value, double tolerance, String source)
            implements CheckExpectation {
        /** Whether a number is near enough. */
        public boolean passes(double given) {
            return Math.abs(given - this.value) <= tolerance;
        }

        @Override
        public <T> T match(
                Function<Value, T> value,
                Function<True, T> truth,
                Function<VerifiedNumber, T> number) {
            return value.apply(this);
        }
    }

    /** Expects a true expression; the source is the reason why it must be, and may be empty. */
    record True(int line, String expression, String source) implements CheckExpectation {
        @Override
        public <T> T match(
                Function<Value, T> value,
                Function<True, T> truth,
                Function<VerifiedNumber, T> number) {
            return truth.apply(this);
        }
    }
}
