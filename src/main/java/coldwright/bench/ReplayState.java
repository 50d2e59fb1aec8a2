package coldwright.bench;

import coldwright.bench.compile.CompiledStep;
import coldwright.bench.compile.StepRun;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What has run in a process since it last forgot everything. */
final class ReplayState {
    private final List<StepRun> done = new ArrayList<>();
    private final Set<CompiledStep> defined = new HashSet<>();
    private final Set<String> classNames = new HashSet<>();
    private boolean between;

    /**
     * How much of a lesson need not run again. What ran beyond that may be passed over only if it
     * changed nothing but its own variables, and what runs next only if it can run here.
     *
     * @param runs the steps from the top, the one asked for last
     * @return how many steps from the top stand; −1 if everything must be forgotten first
     */
    int reach(List<StepRun> runs) {
        int above = runs.size() - 1;
        int same = 0;
        while (same < Math.min(done.size(), above) && done.get(same).equals(runs.get(same))) {
            same++;
        }
        boolean goesOn = !between;
        for (int i = same; goesOn && i < done.size(); i++) {
            goesOn = repeatable(done, i);
        }
        for (int i = same; goesOn && i < runs.size(); i++) {
            CompiledStep step = runs.get(i).step();
            goesOn =
                    knows(step)
                            ? repeatable(runs, i)
                            : step.classNames().stream().noneMatch(classNames::contains);
        }
        return goesOn ? same : -1;
    }

    private static boolean repeatable(List<StepRun> runs, int index) {
        return runs.get(index)
                .step()
                .repeatable(runs.subList(0, index).stream().map(StepRun::step).toList());
    }

    /** Whether the classes of a step are known to the process. */
    boolean knows(CompiledStep step) {
        return defined.contains(step);
    }

    /** Passes over what ran beyond a place. */
    void rewindTo(int count) {
        done.subList(count, done.size()).clear();
    }

    /** Steps begin to run; until {@link #ran} all is uncertain. */
    void startStep(List<StepRun> runs) {
        between = true;
        for (StepRun run : runs) {
            if (defined.add(run.step())) {
                classNames.addAll(run.step().classNames());
            }
        }
    }

    /** They ran to their end. */
    void ran(List<StepRun> runs) {
        between = false;
        done.addAll(runs);
    }

    /** How many steps stand. */
    int count() {
        return done.size();
    }

    /** Nothing stands any more. */
    void forget() {
        done.clear();
        defined.clear();
        classNames.clear();
        between = false;
    }
}
