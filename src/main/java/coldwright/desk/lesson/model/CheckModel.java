package coldwright.desk.lesson.model;

import coldwright.bench.FinishedRun;
import coldwright.bench.SnippetRights;
import coldwright.bench.compile.SnippetSource;
import coldwright.desk.run.RunContext;
import coldwright.desk.run.RunQueue;
import coldwright.lesson.CheckExpectation;
import coldwright.lesson.LessonPart;
import coldwright.play.ClaimTrial;
import coldwright.play.ClaimVerdict;

import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A check on the snippets above, tried after each run of the snippet above it, as {@link
 * ClaimTrial} does.
 */
public final class CheckModel implements PartModel {
    private final LessonPart.Check check;
    private final RunContext context;
    private final List<SnippetModel> above;
    private final ObservableList<CheckLine> lines = FXCollections.observableArrayList();
    private final List<Runnable> afterTried = new ArrayList<>();
    private int round;
    private int awaited;

    CheckModel(LessonPart.Check check, RunContext context, List<SnippetModel> above) {
        this.check = check;
        this.context = context;
        this.above = above;
        check.expectations().forEach(line -> lines.add(CheckLine.open(line)));
    }

    @Override
    public void accept(Visitor visitor) {
        visitor.check(this);
    }

    /** Tries all lines when the bench is free. */
    public void evaluate() {
        int thisRound = ++round;
        List<Integer> all = IntStream.range(0, lines.size()).boxed().toList();
        awaited = 0;
        if (!all.isEmpty()) {
            evaluate(all, false, thisRound);
        }
    }

    private void evaluate(List<Integer> which, boolean alone, int thisRound) {
        awaited++;
        context.queue().add(new CheckRun(which, alone, thisRound));
    }

    private void accept(FinishedRun run, CheckRun tried) {
        if (tried.round != round) {
            return;
        }
        awaited--;
        List<Optional<ClaimVerdict>> verdicts = tried.verdicts(run);
        for (int i = 0; i < verdicts.size(); i++) {
            CheckExpectation line = tried.expectations.get(i);
            int index = tried.which.get(i);
            verdicts.get(i)
                    .ifPresentOrElse(
                            verdict -> lines.set(index, CheckLine.of(line, verdict)),
                            () -> evaluate(List.of(index), true, round));
        }
        if (awaited == 0) {
            afterTried.forEach(Runnable::run);
        }
    }

    /** No line was tried. */
    void reset() {
        round++;
        awaited = 0;
        lines.replaceAll(line -> CheckLine.open(line.expectation()));
    }

    /** Runs an action each time all lines were tried. */
    void whenTried(Runnable action) {
        afterTried.add(action);
    }

    /** Whether all lines passed when last tried. */
    boolean passes() {
        return awaited == 0
                && lines.stream().allMatch(line -> line.state() == CheckLine.State.PASSED);
    }

    /**
     * Whether a line fails although nothing above is changed, so the exercise is still to be done.
     */
    boolean missesAsWritten() {
        return awaited == 0
                && above.stream().noneMatch(model -> model.edited().get())
                && lines.stream()
                        .anyMatch(
                                line ->
                                        line.state() == CheckLine.State.MISSED
                                                || line.state() == CheckLine.State.FAILED);
    }

    /**
     * Whether the learner changed a snippet that it checks. Exercises don't count, because they are
     * meant to be changed.
     */
    public boolean onChangedText() {
        return above.stream()
                .anyMatch(model -> model.edited().get() && model.snippet().solution().isEmpty());
    }

    public LessonPart.Check check() {
        return check;
    }

    public ObservableList<CheckLine> lines() {
        return lines;
    }

    private final class CheckRun implements RunQueue.QueuedRun {
        private final List<Integer> which;
        private final List<CheckExpectation> expectations;
        private final boolean alone;
        private final int round;

        CheckRun(List<Integer> which, boolean alone, int round) {
            this.which = which;
            this.alone = alone;
            this.expectations = which.stream().map(check.expectations()::get).toList();
            this.round = round;
        }

        private List<Optional<ClaimVerdict>> verdicts(FinishedRun run) {
            return alone
                    ? List.of(Optional.of(ClaimVerdict.of(expectations.get(0), run.outcome())))
                    : ClaimTrial.verdicts(expectations, run);
        }

        @Override
        public List<SnippetSource> snippets() {
            List<SnippetSource> snippets = new ArrayList<>();
            above.forEach(model -> snippets.add(model.restedSource()));
            snippets.add(
                    SnippetSource.of(
                            alone
                                    ? expectations.get(0).expression()
                                    : ClaimTrial.snippet(expectations)));
            return snippets;
        }

        @Override
        public SnippetRights rights() {
            return context.gate().rights();
        }

        @Override
        public void ended(FinishedRun run) {
            accept(run, this);
        }
    }
}
