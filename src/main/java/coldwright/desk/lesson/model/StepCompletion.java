package coldwright.desk.lesson.model;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.SimpleBooleanProperty;

import java.util.ArrayList;
import java.util.List;

/** Whether a step is done: it ran or was read, and all its checks passed then. */
final class StepCompletion {
    private final List<SnippetModel> own;
    private final List<CheckModel> tried = new ArrayList<>();
    private final BooleanProperty read = new SimpleBooleanProperty(false);
    private final ReadOnlyBooleanWrapper done = new ReadOnlyBooleanWrapper(false);

    /** Once done it stays done, whatever the learner tries later. */
    private boolean here;

    /** Done in an earlier session; revoked if a check fails and nothing is changed. */
    private boolean before;

    StepCompletion(List<SnippetModel> snippets) {
        own = snippets.stream().filter(snippet -> !snippet.snippet().given()).toList();
        own.forEach(one -> one.result().everFinished().addListener(value -> judge()));
        read.addListener(value -> judge());
    }

    /** Counts a check, which is tried after each run of a snippet. */
    void tryAfter(SnippetModel snippet, CheckModel check) {
        tried.add(check);
        snippet.whenRun(check::evaluate);
        check.whenTried(this::judge);
    }

    private void judge() {
        boolean ran = own.stream().allMatch(snippet -> snippet.result().everFinished().get());
        here |= (own.isEmpty() ? read.get() : ran) && tried.stream().allMatch(CheckModel::passes);
        before &= tried.stream().noneMatch(CheckModel::missesAsWritten);
        done.set(here || before);
    }

    /** The next run decides whether it is done. */
    void judgeAgain() {
        before = false;
        judge();
    }

    /** Restores an earlier session's state. */
    void restore(boolean wasRead, boolean wasDone) {
        read.set(wasRead);
        before |= wasDone;
        judge();
    }

    /** Resets it to not done. */
    void reset() {
        tried.forEach(CheckModel::reset);
        here = false;
        before = false;
        read.set(false);
        judge();
    }

    /** Whether the learner reached the end of the text. */
    BooleanProperty read() {
        return read;
    }

    ReadOnlyBooleanProperty passes() {
        return done.getReadOnlyProperty();
    }
}
