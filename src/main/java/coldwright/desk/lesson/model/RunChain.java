package coldwright.desk.lesson.model;

import coldwright.desk.messages.Messages;

import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** Runs several snippets one after another, until one fails. */
public final class RunChain {
    private final Deque<SnippetModel> waiting = new ArrayDeque<>();
    private final ReadOnlyBooleanWrapper going = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyStringWrapper progress = new ReadOnlyStringWrapper("");
    private SnippetModel current;
    private int count;

    /** Listens to the ends of these snippets' runs. */
    void watch(List<SnippetModel> all) {
        all.forEach(one -> one.whenEnded(well -> ended(one, well)));
    }

    /** Starts to run snippets; those that still wait from before are dropped. */
    public void run(List<SnippetModel> snippets) {
        waiting.clear();
        waiting.addAll(snippets);
        count = snippets.size();
        if (current == null) {
            next();
        }
    }

    private void next() {
        current = waiting.poll();
        going.set(current != null);
        progress.set(
                current == null ? "" : Messages.of("lesson.runs", count - waiting.size(), count));
        if (current != null) {
            SnippetModel one = current;
            one.run();
            if (one.phase().get() == SnippetModel.Phase.RESTING && current == one) {
                ended(one, false);
            }
        }
    }

    private void ended(SnippetModel one, boolean well) {
        if (one == current) {
            if (!well) {
                waiting.clear();
            }
            next();
        }
    }

    /** Whether a snippet of it runs or waits. */
    public boolean awaits(SnippetModel one) {
        return one == current || waiting.contains(one);
    }

    /** Stops the one that runs and drops the rest. */
    public void stop() {
        waiting.clear();
        if (current != null) {
            current.stop();
        }
    }

    /** Whether any snippet of it runs or waits. */
    public ReadOnlyBooleanProperty going() {
        return going.getReadOnlyProperty();
    }

    /** Its progress, such as {@code runs 3 of 12}; empty if it is idle. */
    public ReadOnlyStringProperty progress() {
        return progress.getReadOnlyProperty();
    }
}
