package coldwright.bench;

import coldwright.bench.compile.CompiledStep;
import coldwright.bench.compile.LineIndex;
import coldwright.bench.compile.StepRun;
import coldwright.bench.confine.NameCheck;
import coldwright.bench.process.BenchProcess;
import coldwright.bench.process.BenchProcesses;
import coldwright.bench.remote.BenchMessage;
import coldwright.bench.remote.CompiledClass;
import coldwright.bench.remote.Order;
import coldwright.bench.remote.ThrownException;
import coldwright.bench.remote.ValueText;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.WeakHashMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.TimeUnit;
import java.util.function.BiFunction;

/**
 * The second half of a run: runs the steps above as far as needed, then the step itself.
 *
 * <ul>
 *   <li>If exactly the steps above have run, or others that changed only their own variables,
 *       nothing needs to run first.
 *   <li>If others have, and none can have left traces, the process forgets the snippets' classes
 *       and runs the compiled steps above again.
 *   <li>Otherwise another process replaces it and runs them (measured: docs/decisions/0006).
 * </ul>
 */
final class StepReplayer implements AutoCloseable {
    /** A step above that takes longer than this is announced before it runs. */
    private static final long QUICK_NANOS = TimeUnit.MILLISECONDS.toNanos(50);

    private final BenchSettings settings;
    private final BenchProcesses processes;
    private final BiFunction<List<StackTraceElement>, Integer, List<Integer>> lines;
    private final ReplayState replayState = new ReplayState();
    private final Set<CompiledStep> tried = new HashSet<>();
    private final Set<CompiledStep> quick = Collections.newSetFromMap(new WeakHashMap<>());
    private CompletableFuture<BenchProcess> coming;
    private boolean comingConfined;
    private BenchProcess process;
    private boolean tainted;
    private volatile BenchProcess executing;
    private volatile boolean afresh;
    private volatile Duration processorAtStart = Duration.ZERO;

    /**
     * A replayer without a process yet.
     *
     * @param lines finds the lines of a step in a stack trace
     */
    StepReplayer(
            BenchSettings settings,
            BenchProcesses processes,
            BiFunction<List<StackTraceElement>, Integer, List<Integer>> lines) {
        this.settings = settings;
        this.processes = processes;
        this.lines = lines;
    }

    RunOutcome run(RunJob job, List<StepRun> runs) {
        int reach = replayState.reach(runs);
        if (process != null
                && (afresh
                        || !process.alive()
                        || !process.suits(job.rights() == SnippetRights.CONFINED)
                        || reach < 0 && !canForget())) {
            discard();
        }
        afresh = false;
        boolean fresh = false;
        if (process == null) {
            if (!takeNext(job)) {
                return new RunOutcome.Stopped();
            }
        } else if (reach < 0) {
            fresh = true;
            replayState.forget();
        } else {
            replayState.rewindTo(reach);
        }
        return runFrom(job, runs, fresh);
    }

    private RunOutcome runFrom(RunJob job, List<StepRun> runs, boolean fresh) {
        int above = runs.size() - 1;
        boolean begin = fresh;
        while (true) {
            int from = replayState.count();
            int upTo = from + 1;
            while (upTo < runs.size() && quick.contains(runs.get(upTo - 1).step())) {
                upTo++;
            }
            if (from < above && upTo == from + 1) {
                job.record().above(from, above);
            }
            RunOutcome outcome = execute(job, begin, runs, from, upTo);
            begin = false;
            if (!outcome.finished() || replayState.count() == runs.size()) {
                return outcome;
            }
        }
    }

    private boolean canForget() {
        return !tainted && tried.stream().allMatch(CompiledStep::hasNoSideEffects);
    }

    /** Waits for the next process; false if a stop came first. */
    private boolean takeNext(RunJob job) {
        boolean confined = job.rights() == SnippetRights.CONFINED;
        if (coming != null && comingConfined != confined) {
            coming.thenAccept(processes::retire);
            coming = null;
        }
        if (coming == null) {
            coming = processes.take(confined);
            comingConfined = confined;
        }
        try {
            CompletableFuture.anyOf(coming, job.stopAsked()).join();
            if (!coming.isDone()) {
                return false;
            }
            process = coming.join();
        } catch (CompletionException e) {
            Throwable first = e;
            while (first.getCause() != null && !(first instanceof IOException)) {
                first = first.getCause();
            }
            throw new BenchLostException(ExceptionMessages.text("ended.start", first.getMessage()));
        } finally {
            if (coming.isDone()) {
                coming = null;
            }
        }
        replayState.forget();
        tried.clear();
        tainted = false;
        return true;
    }

    /** Runs several steps in one batch; steps known to be quick aren't announced separately. */
    private RunOutcome execute(RunJob job, boolean fresh, List<StepRun> runs, int from, int upTo) {
        List<Order> orders = new ArrayList<>();
        List<Integer> steps = new ArrayList<>();
        if (fresh) {
            orders.add(new Order.Fresh());
        }
        for (int i = from; i < upTo; i++) {
            StepRun run = runs.get(i);
            tried.add(run.step());
            boolean last = i == runs.size() - 1;
            if (last) {
                orders.add(new Order.Listen(settings.printedLimit(), job.record().figuresLeft()));
            }
            orders.addAll(replayState.knows(run.step()) ? run.ordersAgain(last) : run.orders(last));
            steps.addAll(Collections.nCopies(orders.size() - steps.size(), i));
        }
        if (job.rights() == SnippetRights.CONFINED) {
            requireConfined(orders, runs);
        }
        replayState.startStep(runs.subList(from, upTo));
        long start = System.nanoTime();
        BenchMessage.Reply answer;
        try {
            processorAtStart = process.processorTime();
            executing = process;
            if (job.stopped()) {
                return new RunOutcome.Stopped();
            }
            answer = process.execute(orders, job.record()::accept);
        } catch (IOException e) {
            return lost(job, e);
        } finally {
            executing = null;
            if (job.stopped()) {
                discard();
            }
        }
        if (answer instanceof BenchMessage.Failed failed) {
            return job.stopped()
                    ? new RunOutcome.Stopped()
                    : failed(failed, steps.get(failed.order()), runs);
        }
        replayState.ran(runs.subList(from, upTo));
        if (upTo == from + 1 && System.nanoTime() - start < QUICK_NANOS) {
            quick.add(runs.get(from).step());
        }
        Optional<ValueText> value = ((BenchMessage.Done) answer).value();
        String type = runs.get(upTo - 1).step().type().orElse("");
        return value.map(one -> finished(one, type))
                .orElseGet(() -> new RunOutcome.Finished("", ""));
    }

    /**
     * Checks again that no class names more than a confined snippet may, now that they are about to
     * be defined.
     *
     * @param runs all steps that the classes may come from
     * @throws IllegalStateException if one does, which is a fault of the compiler's side
     */
    private static void requireConfined(List<Order> orders, List<StepRun> runs) {
        Map<String, CompiledClass> known = new HashMap<>();
        runs.forEach(run -> run.step().classes().forEach(code -> known.put(code.name(), code)));
        orders.stream()
                .flatMap(order -> order.definition().stream())
                .flatMap(code -> NameCheck.refused(code, known::get).stream())
                .findFirst()
                .ifPresent(
                        name -> {
                            throw new IllegalStateException(name.words());
                        });
    }

    /** A variable's actual value is more precise than its declared type. */
    private static RunOutcome finished(ValueText value, String type) {
        boolean vague = type.isEmpty() || type.equals("Object") || type.equals("java.lang.Object");
        return new RunOutcome.Finished(value.text(), vague ? value.type() : type, value.exact());
    }

    private RunOutcome failed(BenchMessage.Failed failed, int index, List<StepRun> runs) {
        List<ThrownException> chain = failed.thrown();
        if (chain.stream().anyMatch(one -> one.className().endsWith("Error"))) {
            tainted = true;
            processes.prepare();
        }
        String text = runs.get(index).text();
        int line = 0;
        for (ThrownException one : chain) {
            List<Integer> through = lines.apply(one.trace(), index);
            if (!through.isEmpty()) {
                line = through.get(0);
            }
        }
        RunOutcome.Threw threw =
                new RunOutcome.Threw(
                        new SnippetProblem(
                                LineIndex.startOf(text, line),
                                LineIndex.endOf(text, line),
                                line,
                                ExceptionMessages.words(chain, settings.heapMb()),
                                ExceptionMessages.own(chain)));
        return index == runs.size() - 1 ? threw : new RunOutcome.AboveFailed(index, threw);
    }

    private RunOutcome lost(RunJob job, IOException how) {
        if (job.stopped()) {
            return new RunOutcome.Stopped();
        }
        String why = ExceptionMessages.ended(process.forged(), process.exitStatus(), how);
        discard();
        return new RunOutcome.Died(why);
    }

    private void discard() {
        if (process != null) {
            processes.prepare();
            processes.retire(process);
            process = null;
        }
        replayState.forget();
    }

    /** Processor time of the process that is executing, since its orders began. */
    Duration processorTime() {
        BenchProcess now = executing;
        return now == null ? Duration.ZERO : now.processorTime().minus(processorAtStart);
    }

    /** The next run gets another process. May be called from other threads. */
    void startAfresh() {
        afresh = true;
        processes.prepare();
    }

    /** Ends what is executing. May be called from other threads. */
    void kill() {
        BenchProcess now = executing;
        if (now != null) {
            now.kill();
        }
    }

    @Override
    public void close() {
        if (process != null) {
            processes.retire(process);
        }
    }

    /** No process is available. */
    static final class BenchLostException extends RuntimeException {
        private static final long serialVersionUID = 1;

        BenchLostException(String message) {
            super(message);
        }
    }
}
