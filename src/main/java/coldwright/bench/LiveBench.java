package coldwright.bench;

import coldwright.bench.compile.CompiledStep;
import coldwright.bench.compile.Lines;
import coldwright.bench.compile.StepRun;
import coldwright.bench.process.BenchProcess;
import coldwright.bench.process.FrameListener;
import coldwright.bench.process.Spares;
import coldwright.bench.remote.Answer;
import coldwright.bench.remote.Batch;
import coldwright.bench.remote.Order;
import coldwright.bench.remote.Thrown;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.BiFunction;

/**
 * The second half of a run: brings the process to where the steps above have just run, then runs
 * the step itself.
 *
 * <ul>
 *   <li>If exactly those above have run, nothing is to do first.
 *   <li>If others have, and none of them can have left traces, the process forgets the snippets'
 *       classes and runs the compiled steps above again.
 *   <li>Otherwise the spare takes its place and runs the compiled steps above.
 * </ul>
 */
final class LiveBench implements AutoCloseable {
    private final BenchSettings settings;
    private final Spares spares;
    private final BiFunction<List<StackTraceElement>, Integer, List<Integer>> lines;
    private final List<StepRun> done = new ArrayList<>();
    private final Set<CompiledStep> tried = new HashSet<>();
    private CompletableFuture<BenchProcess> coming;
    private BenchProcess process;
    private boolean between;
    private boolean tainted;
    private volatile BenchProcess obeying;

    /**
     * A bench without a process yet.
     *
     * @param lines finds the lines of a step that a trace goes through
     */
    LiveBench(
            BenchSettings settings,
            Spares spares,
            BiFunction<List<StackTraceElement>, Integer, List<Integer>> lines) {
        this.settings = settings;
        this.spares = spares;
        this.lines = lines;
    }

    Outcome run(Job job, List<StepRun> runs) {
        int above = runs.size() - 1;
        boolean fresh = between || !done.equals(runs.subList(0, Math.min(done.size(), above)));
        if (process != null && (!process.alive() || fresh && !canForget())) {
            discard();
        }
        if (process == null) {
            if (!takeSpare(job)) {
                return new Outcome.Stopped();
            }
            fresh = false;
        }
        if (fresh) {
            done.clear();
        }
        for (int i = done.size(); i < runs.size(); i++) {
            if (i < above) {
                job.record().above(i, above);
            }
            Outcome outcome = obey(job, runs.get(i), i, fresh, i == above);
            fresh = false;
            if (!outcome.finished()) {
                boolean here = i == above || outcome instanceof Outcome.Stopped;
                return here ? outcome : new Outcome.AboveFailed(i, outcome);
            }
            if (i == above) {
                return outcome;
            }
        }
        throw new AssertionError("no step to run");
    }

    private boolean canForget() {
        return !tainted && tried.stream().allMatch(CompiledStep::leavesNoTraces);
    }

    /** Waits for the spare; false if a stop came first. */
    private boolean takeSpare(Job job) {
        if (coming == null) {
            coming = spares.take();
        }
        try {
            CompletableFuture.anyOf(coming, job.stopAsked()).join();
            if (!coming.isDone()) {
                return false;
            }
            process = coming.join();
        } catch (CompletionException e) {
            throw new BenchLostException(
                    "the bench's process can't be started: " + e.getCause().getMessage());
        } finally {
            if (coming.isDone()) {
                coming = null;
            }
        }
        done.clear();
        tried.clear();
        between = false;
        tainted = false;
        return true;
    }

    private Outcome obey(Job job, StepRun run, int index, boolean fresh, boolean aloud) {
        List<Order> orders = new ArrayList<>();
        if (fresh) {
            orders.add(new Order.Fresh());
        }
        orders.addAll(run.orders(aloud));
        between = true;
        tried.add(run.step());
        Answer answer;
        try {
            obeying = process;
            if (job.stopped()) {
                return new Outcome.Stopped();
            }
            answer = obey(orders, aloud ? job.record() : null);
        } catch (IOException e) {
            return lost(job, e);
        } finally {
            obeying = null;
            if (job.stopped()) {
                discard();
            }
        }
        if (answer instanceof Answer.Failed failed) {
            return job.stopped() ? new Outcome.Stopped() : threw(failed, run, index);
        }
        between = false;
        done.add(run);
        Answer.Done finished = (Answer.Done) answer;
        return finished.value()
                .map(
                        value ->
                                new Outcome.Finished(
                                        value.text(), run.step().type().orElse(""), value.exact()))
                .orElseGet(() -> new Outcome.Finished("", ""));
    }

    /** Has orders obeyed, those that exchange bodies through the debug interface. */
    private Answer obey(List<Order> orders, RunRecord record) throws IOException {
        List<Order> part = new ArrayList<>();
        for (Order order : orders) {
            if (order instanceof Order.Redefine redefine) {
                Answer answer = send(part, record);
                if (answer instanceof Answer.Failed) {
                    return answer;
                }
                part.clear();
                if (!process.redefine(redefine.code())) {
                    part.add(new Order.Define(redefine.code()));
                }
            } else {
                part.add(order);
            }
        }
        return send(part, record);
    }

    private Answer send(List<Order> orders, RunRecord record) throws IOException {
        if (record == null) {
            return process.obey(new Batch(0, 0, 0, orders), FrameListener.NONE);
        }
        return process.obey(
                new Batch(0, settings.printedLimit(), record.figuresLeft(), orders), record);
    }

    private Outcome threw(Answer.Failed failed, StepRun run, int index) {
        List<Thrown> chain = failed.thrown();
        tainted |= chain.stream().anyMatch(one -> one.className().endsWith("Error"));
        String text = run.step().text();
        int line = 0;
        for (Thrown one : chain) {
            List<Integer> through = lines.apply(one.trace(), index);
            if (!through.isEmpty()) {
                line = through.get(0);
            }
        }
        int start = Lines.startOf(text, line);
        int end = Lines.endOf(text, line);
        String words = FailureWords.words(chain, settings.heapMb());
        return new Outcome.Threw(new Problem(start, end, line, words, FailureWords.own(chain)));
    }

    private Outcome lost(Job job, IOException how) {
        if (job.stopped()) {
            return new Outcome.Stopped();
        }
        String why = EndWords.of(process.forged(), process.exitStatus(), how);
        discard();
        return new Outcome.Died(why);
    }

    private void discard() {
        if (process != null) {
            spares.retire(process);
            process = null;
        }
        done.clear();
    }

    /** The process that obeys just now; null if none does. Asked from other threads. */
    BenchProcess obeying() {
        return obeying;
    }

    @Override
    public void close() {
        discard();
    }

    /** No process can be had. */
    static final class BenchLostException extends RuntimeException {
        private static final long serialVersionUID = 1;

        BenchLostException(String message) {
            super(message);
        }
    }
}
