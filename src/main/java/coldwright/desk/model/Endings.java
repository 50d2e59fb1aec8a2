package coldwright.desk.model;

import coldwright.bench.Outcome;

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
            return "It ran to its end.";
        }
        if (outcome instanceof Outcome.Rejected rejected) {
            return rejected.problems().isEmpty()
                    ? "The Java text can't be read."
                    : rejected.problems().get(0).words();
        }
        if (outcome instanceof Outcome.Threw threw) {
            return threw.problem().words();
        }
        if (outcome instanceof Outcome.Stopped) {
            return "You stopped it. Nothing is lost: change the text or run it again.";
        }
        if (outcome instanceof Outcome.Died died) {
            return died.why();
        }
        if (outcome instanceof Outcome.AboveFailed above) {
            return "A snippet above did not run to its end: " + words(above.how());
        }
        throw new AssertionError(outcome);
    }
}
