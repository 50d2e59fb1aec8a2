package coldwright.desk.run;

import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;

/** What a lesson's runs pass through: shut until the learner has agreed that its snippets run. */
public final class RunGate {
    private final ReadOnlyBooleanWrapper open;
    private final ReadOnlyBooleanWrapper refusedRun = new ReadOnlyBooleanWrapper(false);

    private RunGate(boolean open) {
        this.open = new ReadOnlyBooleanWrapper(open);
    }

    /** A gate that lets everything through. */
    public static RunGate wide() {
        return new RunGate(true);
    }

    /** A gate that lets nothing through yet. */
    public static RunGate shut() {
        return new RunGate(false);
    }

    /** Whether a run may begin; if not, that somebody wanted one is remembered. */
    public boolean passes() {
        if (!open.get()) {
            refusedRun.set(true);
        }
        return open.get();
    }

    /** The learner has agreed. */
    public void unlock() {
        open.set(true);
        refusedRun.set(false);
    }

    /**
     * Whether snippets may run.
     *
     * @return true once agreed, and from the start for lessons that came with the program
     */
    public ReadOnlyBooleanProperty open() {
        return open.getReadOnlyProperty();
    }

    /**
     * Whether somebody wanted to run a snippet while it was shut.
     *
     * @return true until the learner agrees
     */
    public ReadOnlyBooleanProperty refusedRun() {
        return refusedRun.getReadOnlyProperty();
    }
}
