package coldwright.desk.lesson.model;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.SimpleBooleanProperty;

import java.util.ArrayList;
import java.util.List;

/** Whether a step is done: it ran or was read, and all its checks held then. */
final class StepCompletion {
    private final List<SnippetModel> own;
    private final List<CheckModel> tried = new ArrayList<>();
    private final BooleanProperty read = new SimpleBooleanProperty(false);
    private final ReadOnlyBooleanWrapper done = new ReadOnlyBooleanWrapper(false);

    /** Done once stays done, whatever the learner tries after that. */
    private boolean here;

    /** Done at another time; taken back if a check does not hold and nothing is changed. */
    private boolean before;

    /**
     * Not done yet.
     *
     * @param snippets all of the step's
     */
    StepCompletion(List<SnippetModel> snippets) {
        own = snippets.stream().filter(snippet -> !snippet.snippet().given()).toList();
        own.forEach(one -> one.result().everFinished().addListener(value -> judge()));
        read.addListener(value -> judge());
    }

    /** A check is tried after each run of a snippet, and counts. */
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

    /** What comes of the next run says whether it is done. */
    void judgeAgain() {
        before = false;
        judge();
    }

    /** It was read or done at another time. */
    void restore(boolean wasRead, boolean wasDone) {
        read.set(wasRead);
        before |= wasDone;
        judge();
    }

    /** Nothing is done. */
    void reset() {
        tried.forEach(CheckModel::reset);
        here = false;
        before = false;
        read.set(false);
        judge();
    }

    /** Whether the learner came to the end of the text. */
    BooleanProperty read() {
        return read;
    }

    ReadOnlyBooleanProperty passes() {
        return done.getReadOnlyProperty();
    }
}
