package coldwright.desk.model;

import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;

/** What a lesson's runs pass through: shut until the learner has agreed that its snippets run. */
public final class Gate {
    private final ReadOnlyBooleanWrapper open;
    private final ReadOnlyBooleanWrapper triedInVain = new ReadOnlyBooleanWrapper(false);

    private Gate(boolean open) {
        this.open = new ReadOnlyBooleanWrapper(open);
    }

    /** A gate that lets everything through. */
    static Gate wide() {
        return new Gate(true);
    }

    /** A gate that lets nothing through yet. */
    static Gate shut() {
        return new Gate(false);
    }

    /** Whether a run may begin; if not, that somebody wanted one is remembered. */
    boolean passes() {
        if (!open.get()) {
            triedInVain.set(true);
        }
        return open.get();
    }

    /** The learner has agreed. */
    void unlock() {
        open.set(true);
        triedInVain.set(false);
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
    public ReadOnlyBooleanProperty triedInVain() {
        return triedInVain.getReadOnlyProperty();
    }
}
