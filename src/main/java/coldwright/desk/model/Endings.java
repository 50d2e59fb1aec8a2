package coldwright.desk.model;

import coldwright.bench.Outcome;
import coldwright.desk.say.Say;

/** How a run ended, in a sentence. */
public final class Endings {
    private Endings() {}

    /**
     * Says it.
     *
     * @param outcome how a run ended
     * @return one sentence
     */
    public static String words(Outcome outcome) {
        if (outcome instanceof Outcome.Finished) {
            return Say.of("ending.finished");
        }
        if (outcome instanceof Outcome.Rejected rejected) {
            return rejected.problems().isEmpty()
                    ? Say.of("ending.rejected")
                    : rejected.problems().get(0).words();
        }
        if (outcome instanceof Outcome.Threw threw) {
            return threw.problem().words();
        }
        if (outcome instanceof Outcome.Stopped) {
            return Say.of("ending.stopped");
        }
        if (outcome instanceof Outcome.Died died) {
            return died.why();
        }
        if (outcome instanceof Outcome.AboveFailed above) {
            return Say.of("ending.above", words(above.how()));
        }
        throw new AssertionError(outcome);
    }
}
