package coldwright.desk.model;

import coldwright.bench.Outcome;
import coldwright.bench.Run;
import coldwright.bench.RunWatcher;
import coldwright.bench.Together;
import coldwright.lesson.Expectation;
import coldwright.lesson.Part;

import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * What the snippets above must give, tried after each run of the snippet it stands under.
 *
 * <p>All lines are tried in one snippet; only if that can't be compiled is each tried by itself, so
 * that one bad line does not hide the others.
 */
public final class CheckModel implements PartModel {
    private final Part.Check check;
    private final RunQueue queue;
    private final Supplier<List<SnippetModel>> above;
    private final ObservableList<Expected> lines = FXCollections.observableArrayList();
    private final List<Runnable> afterTried = new ArrayList<>();
    private int round;
    private int awaited;

    CheckModel(Part.Check check, RunQueue queue, Supplier<List<SnippetModel>> above) {
        this.check = check;
        this.queue = queue;
        this.above = above;
        check.expectations().forEach(line -> lines.add(Expected.open(line)));
    }

    /** Tries all lines when the bench is free. */
    public void evaluate() {
        int thisRound = ++round;
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            all.add(i);
        }
        awaited = 0;
        if (!all.isEmpty()) {
            evaluate(all, thisRound);
        }
    }

    private void evaluate(List<Integer> which, int thisRound) {
        awaited++;
        List<Expectation> expectations =
                which.stream().map(index -> check.expectations().get(index)).toList();
        queue.add(new CheckRun(expectations, run -> took(run, which, thisRound)));
    }

    private void took(Run run, List<Integer> which, int thisRound) {
        if (thisRound != round) {
            return;
        }
        awaited--;
        if (run.outcome() instanceof Outcome.Rejected && which.size() > 1) {
            which.forEach(index -> evaluate(List.of(index), thisRound));
            return;
        }
        List<Together.Given> given = Together.read(run.printed());
        for (int i = 0; i < which.size(); i++) {
            int index = which.get(i);
            Expectation expectation = check.expectations().get(index);
            lines.set(
                    index,
                    i < given.size()
                            ? Expected.of(expectation, given.get(i))
                            : Expected.failed(expectation, Endings.words(run.outcome())));
        }
        if (awaited == 0) {
            afterTried.forEach(Runnable::run);
        }
    }

    /** No line was tried. */
    void reset() {
        round++;
        awaited = 0;
        lines.replaceAll(line -> Expected.open(line.expectation()));
    }

    /** Does something each time all lines were tried. */
    void whenTried(Runnable action) {
        afterTried.add(action);
    }

    /** Whether all lines held when they were last tried. */
    boolean holds() {
        return awaited == 0 && lines.stream().allMatch(line -> line.state() == Expected.State.HELD);
    }

    /**
     * Whether a line did not hold although nothing above is changed: what is asked is to be done.
     */
    boolean missesAsWritten() {
        return awaited == 0
                && above.get().stream().noneMatch(model -> model.edited().get())
                && lines.stream()
                        .anyMatch(
                                line ->
                                        line.state() == Expected.State.MISSED
                                                || line.state() == Expected.State.FAILED);
    }

    /**
     * Whether the learner changed what it is about. An exercise is there to be changed, so its
     * changes don't count.
     *
     * @return true if a snippet above is no longer the author's
     */
    public boolean onChangedText() {
        return above.get().stream()
                .anyMatch(model -> model.edited().get() && model.snippet().solution().isEmpty());
    }

    /**
     * As the lesson has it.
     *
     * @return the author's check
     */
    public Part.Check check() {
        return check;
    }

    /**
     * Each line and how it stands.
     *
     * @return the lines, in order
     */
    public ObservableList<Expected> lines() {
        return lines;
    }

    private final class CheckRun implements RunQueue.Job {
        private final List<Expectation> expectations;
        private final java.util.function.Consumer<Run> end;

        CheckRun(List<Expectation> expectations, java.util.function.Consumer<Run> end) {
            this.expectations = expectations;
            this.end = end;
        }

        @Override
        public List<String> above() {
            return above.get().stream().map(model -> model.text().get()).toList();
        }

        @Override
        public String snippet() {
            return Together.snippet(expectations.stream().map(Expectation::expression).toList());
        }

        @Override
        public void begun() {}

        @Override
        public RunWatcher watcher() {
            return RunWatcher.NONE;
        }

        @Override
        public void ended(Run run) {
            end.accept(run);
        }
    }
}
