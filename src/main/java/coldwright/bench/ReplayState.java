package coldwright.bench;

import coldwright.bench.compile.CompiledStep;
import coldwright.bench.compile.StepRun;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The steps that a process has run since its last fresh start. */
final class ReplayState {
    private final List<StepRun> done = new ArrayList<>();
    private final Set<CompiledStep> defined = new HashSet<>();
    private final Set<String> classNames = new HashSet<>();
    private boolean between;

    /**
     * How many steps needn't run again. Steps after those are skipped only if they changed nothing
     * but their own variables, and only if the next step can run in this process.
     *
     * @param runs the steps from the top, the one to run last
     * @return how many steps from the top remain valid; −1 if a fresh start is needed
     */
    int reach(List<StepRun> runs) {
        int above = runs.size() - 1;
        int same = 0;
        while (same < Math.min(done.size(), above) && done.get(same).equals(runs.get(same))) {
            same++;
        }
        boolean goesOn = !between;
        for (int i = same; goesOn && i < done.size(); i++) {
            goesOn = done.get(i).step().repeatable();
        }
        for (int i = same; goesOn && i < runs.size(); i++) {
            CompiledStep step = runs.get(i).step();
            goesOn =
                    knows(step)
                            ? step.repeatable()
                            : step.classNames().stream().noneMatch(classNames::contains);
        }
        return goesOn ? same : -1;
    }

    /** Whether the process has loaded the classes of a step. */
    boolean knows(CompiledStep step) {
        return defined.contains(step);
    }

    /** Drops the steps after the first {@code count}. */
    void rewindTo(int count) {
        done.subList(count, done.size()).clear();
    }

    /** Marks the start of these steps; the state is invalid until {@link #ran}. */
    void startStep(List<StepRun> runs) {
        between = true;
        for (StepRun run : runs) {
            if (defined.add(run.step())) {
                classNames.addAll(run.step().classNames());
            }
        }
    }

    /** Marks these steps as finished. */
    void ran(List<StepRun> runs) {
        between = false;
        done.addAll(runs);
    }

    /** The number of valid steps. */
    int count() {
        return done.size();
    }

    /** Forgets all steps. */
    void forget() {
        done.clear();
        defined.clear();
        classNames.clear();
        between = false;
    }
}
