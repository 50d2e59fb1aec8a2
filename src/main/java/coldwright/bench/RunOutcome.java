package coldwright.bench;

import java.util.List;

/** How a run ended. */
public sealed interface RunOutcome {
    /**
     * The snippet finished.
     *
     * @param value value of the last expression as text; empty if none
     * @param type simple name of its type; empty if none
     * @param exact the value with all digits, for comparing; equal to {@code value} if it isn't a
     *     number
     */
    record Finished(String value, String type, String exact) implements RunOutcome {
        /** An outcome whose text is exact. */
        public Finished(String value, String type) {
            this(value, type, value);
        }

        /** Whether the last expression has a value. */
        public boolean gaveValue() {
            return !value.isEmpty() && !type.endsWith("PrintStream");
        }
    }

    /**
     * The snippet doesn't compile; nothing ran.
     *
     * @param problems at least one
     * @param beyond whether it compiles but names more than a confined snippet may
     */
    record Rejected(List<SnippetProblem> problems, boolean beyond) implements RunOutcome {
        /** Makes defensive copies. */
        public Rejected {
            problems = List.copyOf(problems);
        }

        /** A snippet that doesn't compile. */
        public Rejected(List<SnippetProblem> problems) {
            this(problems, false);
        }
    }

    /**
     * The snippet threw an exception.
     *
     * @param problem where and why, in plain words
     */
    record Threw(SnippetProblem problem) implements RunOutcome {}

    /** The learner stopped the run. */
    record Stopped() implements RunOutcome {}

    /**
     * The process ended during the run: exit, out of memory or killed.
     *
     * @param why the cause and what to do, one sentence
     */
    record Died(String why) implements RunOutcome {}

    /**
     * The snippet didn't start because one above it didn't finish.
     *
     * @param index index of that snippet, from 0
     * @param how how that one ended
     */
    record AboveFailed(int index, RunOutcome how) implements RunOutcome {}

    /** Whether this snippet, or one above it, names more than a confined snippet may. */
    default boolean beyond() {
        return this instanceof Rejected rejected && rejected.beyond()
                || this instanceof AboveFailed above && above.how().beyond();
    }

    /** Whether the outcome is {@link Finished}. */
    default boolean finished() {
        return this instanceof Finished;
    }
}
