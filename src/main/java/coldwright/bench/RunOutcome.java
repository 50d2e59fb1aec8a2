package coldwright.bench;

import java.util.List;

/** How a run ended, sorted by whose doing it was. */
public sealed interface RunOutcome {
    /**
     * It ran to its end.
     *
     * @param value what the last expression gave, as text; empty if it gave nothing
     * @param type its type's name; empty if it gave nothing
     * @param exact the value with every digit, for comparing; {@code value} where it is no number
     */
    record Finished(String value, String type, String exact) implements RunOutcome {
        /**
         * A value whose text says all.
         *
         * @param value what the last expression gave, as text
         * @param type its type's name
         */
        public Finished(String value, String type) {
            this(value, type, value);
        }

        /** Whether the last expression gave something; a line that only printed gave nothing. */
        public boolean gaveValue() {
            return !value.isEmpty() && !type.endsWith("PrintStream");
        }
    }

    /**
     * The compiler refused it; nothing of it was run.
     *
     * @param problems what is wrong and where, at least one
     */
    record Rejected(List<SnippetProblem> problems) implements RunOutcome {
        /** Copies what is given. */
        public Rejected {
            problems = List.copyOf(problems);
        }
    }

    /**
     * It ran and failed.
     *
     * @param problem where in the snippet, and why in a learner's words
     */
    record Threw(SnippetProblem problem) implements RunOutcome {}

    /** The learner stopped it. */
    record Stopped() implements RunOutcome {}

    /**
     * The process ended under it: exit, memory, killed.
     *
     * @param why the cause and what to do, one sentence
     */
    record Died(String why) implements RunOutcome {}

    /**
     * It never began since a snippet above it did not finish.
     *
     * @param index which of those above, from 0
     * @param how that one ended
     */
    record AboveFailed(int index, RunOutcome how) implements RunOutcome {}

    /**
     * Whether everything ran to its end.
     *
     * @return true for {@link Finished}
     */
    default boolean finished() {
        return this instanceof Finished;
    }
}
