package coldwright.desk.run;

import coldwright.bench.RunOutcome;
import coldwright.bench.SnippetRights;

import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;

/** What a lesson's snippets may do: they run confined until the learner agrees to more. */
public final class RunGate {
    private boolean open;
    private final ReadOnlyBooleanWrapper asking;

    private RunGate(boolean open, boolean asking) {
        this.open = open;
        this.asking = new ReadOnlyBooleanWrapper(asking);
    }

    /** A gate that allows everything. */
    public static RunGate wide() {
        return new RunGate(true, false);
    }

    /**
     * Confines runs until the learner agrees; {@code asking} if the lesson asks for more in its
     * head.
     */
    public static RunGate confined(boolean asking) {
        return new RunGate(false, asking);
    }

    /** What a run that starts now may do. */
    public SnippetRights rights() {
        return open ? SnippetRights.EVERYTHING : SnippetRights.CONFINED;
    }

    /** A run has ended; if it was refused because it goes beyond, the learner is asked. */
    public void ended(RunOutcome outcome) {
        if (outcome.beyond() && !open) {
            asking.set(true);
        }
    }

    /** The learner has agreed. */
    public void unlock() {
        open = true;
        asking.set(false);
    }

    /** Whether the lesson wants more than it may do; true until the learner agrees. */
    public ReadOnlyBooleanProperty asking() {
        return asking.getReadOnlyProperty();
    }
}
