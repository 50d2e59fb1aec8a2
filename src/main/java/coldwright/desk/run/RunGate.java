package coldwright.desk.run;

import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;

/** Blocks a lesson's runs until the learner has agreed to run its snippets. */
public final class RunGate {
    private final ReadOnlyBooleanWrapper open;
    private final ReadOnlyBooleanWrapper refusedRun = new ReadOnlyBooleanWrapper(false);

    private RunGate(boolean open) {
        this.open = new ReadOnlyBooleanWrapper(open);
    }

    /** A gate that allows all runs. */
    public static RunGate wide() {
        return new RunGate(true);
    }

    /** A gate that blocks runs until the learner agrees. */
    public static RunGate shut() {
        return new RunGate(false);
    }

    /** Whether a run may start; if not, remembers that one was wanted. */
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

    /** Whether snippets may run: once agreed, and from the start for the program's own lessons. */
    public ReadOnlyBooleanProperty open() {
        return open.getReadOnlyProperty();
    }

    /** Whether a run was blocked; true until the learner agrees. */
    public ReadOnlyBooleanProperty refusedRun() {
        return refusedRun.getReadOnlyProperty();
    }
}
