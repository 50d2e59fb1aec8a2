package coldwright.desk.run;

import coldwright.bench.RunOutcome;
import coldwright.desk.messages.Messages;

/** Sentences on how a run ended. */
public final class OutcomeSentences {
    private OutcomeSentences() {}

    /** How a run ended, in one sentence. */
    public static String words(RunOutcome outcome) {
        if (outcome instanceof RunOutcome.Finished) {
            return Messages.of("ending.finished");
        }
        if (outcome instanceof RunOutcome.Rejected rejected) {
            return rejected.problems().isEmpty()
                    ? Messages.of("ending.rejected")
                    : rejected.problems().get(0).words();
        }
        if (outcome instanceof RunOutcome.Threw threw) {
            return threw.problem().words();
        }
        if (outcome instanceof RunOutcome.Stopped) {
            return Messages.of("ending.stopped");
        }
        if (outcome instanceof RunOutcome.Died died) {
            return died.why();
        }
        if (outcome instanceof RunOutcome.AboveFailed above) {
            return Messages.of("ending.above", words(above.how()));
        }
        throw new AssertionError(outcome);
    }
}
