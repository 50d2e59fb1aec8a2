package coldwright.terminal;

import coldwright.bench.Outcome;
import coldwright.bench.Problem;

import java.util.List;

/** What is wrong with a run, as sentences with their lines. */
final class Ending {
    private static final int MOST_PROBLEMS = 5;

    private Ending() {}

    /**
     * One thing that is wrong.
     *
     * @param line the line in the snippet, from 1; 0 if it is not known
     * @param words the sentence
     */
    record Trouble(int line, String words) {}

    /**
     * What went wrong.
     *
     * @param outcome how a run ended
     * @return nothing if it ran to its end
     */
    static List<Trouble> troubles(Outcome outcome) {
        if (outcome instanceof Outcome.Finished) {
            return List.of();
        }
        if (outcome instanceof Outcome.Rejected rejected) {
            return rejected.problems().stream().limit(MOST_PROBLEMS).map(Ending::of).toList();
        }
        if (outcome instanceof Outcome.Threw threw) {
            return List.of(of(threw.problem()));
        }
        if (outcome instanceof Outcome.Stopped) {
            return List.of(new Trouble(0, "it was stopped"));
        }
        if (outcome instanceof Outcome.Died died) {
            return List.of(new Trouble(0, died.why()));
        }
        if (outcome instanceof Outcome.AboveFailed above) {
            String how = troubles(above.how()).get(0).words();
            return List.of(new Trouble(0, "a snippet above did not run to its end: " + how));
        }
        throw new AssertionError(outcome);
    }

    private static Trouble of(Problem problem) {
        return new Trouble(problem.line(), problem.words());
    }
}
