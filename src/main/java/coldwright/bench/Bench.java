package coldwright.bench;

import coldwright.bench.compile.SnippetSource;
import coldwright.bench.compile.StepRun;
import coldwright.bench.complete.CompletionProposal;
import coldwright.bench.process.BenchProcess;
import coldwright.bench.process.LaunchSettings;
import coldwright.bench.process.SpareProcesses;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Runs snippets in a process of their own.
 *
 * <pre>{@code
 * Bench bench = Bench.open(BenchSettings.usual(BenchClassPath.ofThisProgram(), imports));
 * bench.run(List.of("double sugar = 120;"), "sugar / 10;", RunWatcher.NONE)
 *         .thenAccept(run -> ...);
 * }</pre>
 *
 * <p>The result of a run is what a run from the top in a new bench would give: the snippets above,
 * in order, then the snippet itself; whatever ran before leaves no mark. No method waits; futures
 * complete on a thread of the bench, so go on from there quickly.
 *
 * <p>One run goes on at a time; others wait in the order in which they were asked for. A snippet
 * that differs from one that ran before in the numbers of its declarations only, as a dial turns
 * them, is not compiled: the variables are set and the compiled statements run again.
 */
public final class Bench implements AutoCloseable {
    private final BenchSettings settings;
    private final SpareProcesses spares;
    private final SnippetCompilation snippetCompilation;
    private final StepReplayer live;
    private final Deque<RunJob> waiting = new ArrayDeque<>();
    private final Thread worker = new Thread(this::work, "bench");
    private RunJob current;
    private CompletionRequest question;
    private boolean closed;

    private Bench(BenchSettings settings) {
        this.settings = settings;
        spares =
                new SpareProcesses(
                        new LaunchSettings(
                                settings.classPath(), settings.heapMb(), settings.pointLimit()));
        snippetCompilation = new SnippetCompilation(settings);
        live = new StepReplayer(settings, spares, snippetCompilation::lines);
        worker.setDaemon(true);
    }

    /**
     * Opens a bench. Its process, a spare and the compiler warm up in the background.
     *
     * @param settings what it is given and where it stops
     * @return the bench, at once
     */
    public static Bench open(BenchSettings settings) {
        Bench bench = new Bench(settings);
        bench.worker.start();
        return bench;
    }

    /**
     * Runs a snippet after those above it.
     *
     * @param above the snippets above, in order
     * @param snippet the snippet
     * @param watcher hears of the run while it goes on
     * @return how it ended; never fails but by cancelling when the bench is closed
     */
    public CompletableFuture<FinishedRun> run(
            List<String> above, String snippet, RunListener watcher) {
        return run(SnippetSource.of(above, snippet), watcher);
    }

    /**
     * Runs a snippet after those above it, all with their dials where they are.
     *
     * @param snippets the snippets from the top, the one to run last
     * @param watcher hears of the run while it goes on
     * @return how it ended; never fails but by cancelling when the bench is closed
     */
    public CompletableFuture<FinishedRun> run(List<SnippetSource> snippets, RunListener watcher) {
        return add(new RunJob(snippets, record(watcher)));
    }

    /**
     * Finds the names that may stand at a caret. Runs nothing and starts no process. It is looked
     * at between runs, and any run that is asked for goes first; a question that has no answer yet
     * gives way to the next one.
     *
     * @param above the snippets above, in order
     * @param text the snippet
     * @param caret where the caret stands in it, 0 to its length; what follows is not looked at
     * @return the names, in no order of use; none if a snippet above does not compile, or the caret
     *     stands in a remark or a text; cancelled if something else was asked, or the bench is
     *     closed
     * @throws IllegalArgumentException if the caret stands outside the text
     */
    public CompletableFuture<List<CompletionProposal>> complete(
            List<String> above, String text, int caret) {
        CompletionRequest asked = new CompletionRequest(above, text, caret);
        CompletionRequest dropped;
        synchronized (this) {
            dropped = closed ? asked : question;
            question = closed ? null : asked;
            notifyAll();
        }
        if (dropped != null) {
            dropped.answer().cancel(false);
        }
        return asked.answer();
    }

    private RunOutput record(RunListener watcher) {
        return new RunOutput(settings, watcher, System.nanoTime());
    }

    private CompletableFuture<FinishedRun> add(RunJob job) {
        boolean late;
        synchronized (this) {
            late = closed;
            if (!closed) {
                waiting.add(job);
                notifyAll();
            }
        }
        if (late) {
            job.result().cancel(false);
        }
        return job.result();
    }

    /**
     * Stops what runs and drops what waits. Returns at once; the runs end as {@link
     * RunOutcome.Stopped}, at the latest soon after the settings' patience. The next run goes to
     * the spare.
     */
    public void stop() {
        RunJob running;
        List<RunJob> dropped;
        synchronized (this) {
            running = current;
            dropped = List.copyOf(waiting);
            waiting.clear();
        }
        dropped.forEach(job -> job.result().complete(job.record().end(new RunOutcome.Stopped())));
        if (running != null && !running.stopped()) {
            running.stop();
            Thread stopper = new Thread(() -> stop(running), "bench-stop");
            stopper.setDaemon(true);
            stopper.start();
        }
    }

    private void stop(RunJob running) {
        BenchProcess process = live.executing();
        if (process == null) {
            return;
        }
        Thread asking = new Thread(process::stop, "bench-ask");
        asking.setDaemon(true);
        asking.start();
        try {
            running.result().get(settings.stopPatience().toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            process.kill();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (java.util.concurrent.ExecutionException | CancellationException e) {
            // over
        }
    }

    private void work() {
        snippetCompilation.warmUp();
        while (awaitWork()) {
            RunJob job = next();
            if (job == null) {
                answer();
                continue;
            }
            FinishedRun run = job.record().end(outcome(job));
            synchronized (this) {
                current = null;
            }
            job.result().complete(run);
        }
        live.close();
        snippetCompilation.close();
    }

    private synchronized boolean awaitWork() {
        try {
            while (waiting.isEmpty() && question == null && !closed) {
                wait();
            }
        } catch (InterruptedException e) {
            closed = true;
        }
        return !closed;
    }

    private synchronized RunJob next() {
        current = closed ? null : waiting.poll();
        return current;
    }

    /** Answers the question; leaves it for later if a run is asked for meanwhile. */
    private void answer() {
        CompletionRequest asked;
        synchronized (this) {
            asked = question;
        }
        if (asked == null) {
            return;
        }
        try {
            List<CompletionProposal> names =
                    snippetCompilation.complete(asked, () -> interrupted(asked));
            answered(asked);
            asked.answer().complete(names);
        } catch (CancellationException e) {
            // a run goes first, or nobody wants to know any more
        } catch (RuntimeException | Error e) {
            System.getLogger("coldwright.bench")
                    .log(System.Logger.Level.WARNING, "no names were found", e);
            answered(asked);
            asked.answer().complete(List.of());
        }
    }

    private synchronized boolean interrupted(CompletionRequest asked) {
        return closed || !asked.equals(question) || !waiting.isEmpty();
    }

    private synchronized void answered(CompletionRequest asked) {
        if (asked.equals(question)) {
            question = null;
        }
    }

    private RunOutcome outcome(RunJob job) {
        try {
            List<StepRun> runs = snippetCompilation.compile(job.snippets(), job::stopped);
            job.record().compiled();
            return live.run(job, runs);
        } catch (SnippetCompilation.RejectedSnippet e) {
            return e.index() == job.above()
                    ? e.outcome()
                    : new RunOutcome.AboveFailed(e.index(), e.outcome());
        } catch (CancellationException e) {
            return new RunOutcome.Stopped();
        } catch (IllegalArgumentException | StepReplayer.BenchLostException e) {
            return new RunOutcome.Died(e.getMessage());
        } catch (RuntimeException | Error e) { // whatever the compiler throws, the worker lives on
            System.getLogger("coldwright.bench").log(System.Logger.Level.ERROR, "a run broke", e);
            return new RunOutcome.Died("the bench broke at this snippet; run it again: " + e);
        }
    }

    /** Ends the bench and its processes; runs that wait are cancelled. */
    @Override
    public void close() {
        List<RunJob> dropped = new ArrayList<>();
        CompletionRequest unanswered;
        synchronized (this) {
            closed = true;
            unanswered = question;
            question = null;
            dropped.addAll(waiting);
            waiting.clear();
            notifyAll();
        }
        stop();
        dropped.forEach(job -> job.result().cancel(false));
        if (unanswered != null) {
            unanswered.answer().cancel(false);
        }
        spares.close();
    }
}
