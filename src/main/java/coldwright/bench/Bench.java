package coldwright.bench;

import coldwright.bench.compile.SnippetSource;
import coldwright.bench.compile.StepRun;
import coldwright.bench.complete.CompletionProposal;
import coldwright.bench.process.BenchProcesses;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;

/**
 * Runs snippets in a process of their own.
 *
 * <pre>{@code
 * Bench bench = Bench.open(BenchSettings.usual(BenchClassPath.ofThisProgram(), imports));
 * bench.run(List.of("double sugar = 120;"), "sugar / 10;", RunListener.NONE)
 *         .thenAccept(run -> ...);
 * }</pre>
 *
 * <p>The result is the same as running all snippets from the top in a new bench: earlier runs leave
 * no trace. No method blocks. Futures complete on a thread of the bench, so don't block there.
 *
 * <p>Runs are queued and executed one at a time. A snippet that differs from an earlier one only in
 * the numbers that its dials set isn't compiled again: the variables are set and the compiled
 * statements rerun.
 */
public final class Bench implements AutoCloseable {
    private final BenchSettings settings;
    private final BenchProcesses processes;
    private final SnippetCompilation snippetCompilation;
    private final StepReplayer live;
    private final Deque<RunJob> waiting = new ArrayDeque<>();
    private final Thread worker = new Thread(this::work, "bench");
    private RunJob current;
    private CompletionRequest question;
    private boolean closed;

    private Bench(BenchSettings settings, Duration mostCompileTime) {
        this.settings = settings;
        processes =
                new BenchProcesses(settings.classPath(), settings.heapMb(), settings.pointLimit());
        snippetCompilation = new SnippetCompilation(new CompilerClient(settings, mostCompileTime));
        live = new StepReplayer(settings, processes, snippetCompilation::lines);
        worker.setDaemon(true);
    }

    /**
     * Opens a bench and returns at once. Its process and the compiler warm up in the background.
     */
    public static Bench open(BenchSettings settings) {
        return open(settings, CompilerClient.MOST_PROCESSOR_TIME);
    }

    /** Opens a bench with a limit of processor time for the compilation of a snippet. */
    static Bench open(BenchSettings settings, Duration mostCompileTime) {
        Bench bench = new Bench(settings, mostCompileTime);
        bench.worker.start();
        return bench;
    }

    /**
     * Runs a snippet after those above it, all of them confined.
     *
     * @param above the snippets above, in order
     * @param watcher receives events during the run
     * @return the finished run; fails only by cancellation, when the bench is closed
     */
    public CompletableFuture<FinishedRun> run(
            List<String> above, String snippet, RunListener watcher) {
        return run(SnippetSource.of(above, snippet), SnippetRights.CONFINED, watcher);
    }

    /**
     * Runs a snippet after those above it, all at the current positions of their dials.
     *
     * @param snippets the snippets from the top, the one to run last
     * @param rights what they may do; what goes beyond is rejected before anything runs
     * @param watcher receives events during the run
     * @return the finished run; fails only by cancellation, when the bench is closed
     */
    public CompletableFuture<FinishedRun> run(
            List<SnippetSource> snippets, SnippetRights rights, RunListener watcher) {
        return add(new RunJob(snippets, rights, record(watcher)));
    }

    /**
     * Finds the valid names at a caret. Runs nothing and starts no process. Requests are handled
     * between runs; a new request replaces one that is still waiting.
     *
     * @param above the snippets above, in order
     * @param text the snippet
     * @param caret position in it, 0 to its length; the text after it is ignored
     * @return the names, in no particular order; none if a snippet above does not compile, or the
     *     caret is in a comment or a string; cancelled by a newer request or when the bench is
     *     closed
     * @throws IllegalArgumentException if the caret is outside the text
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

    /** The next run starts in a fresh process: nothing of the runs before outlives them. */
    public void startAfresh() {
        live.startAfresh();
    }

    /** Processor time that the current run's process has used since its run began; zero if none. */
    public Duration processorTime() {
        return live.processorTime();
    }

    /** Processor time that the compiling process has used since it started; zero if none runs. */
    public Duration compilerTime() {
        return snippetCompilation.processorTime();
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
     * Stops the current run and drops the waiting ones. Returns at once; the runs end as {@link
     * RunOutcome.Stopped}. The next run uses another process.
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
        if (running != null) {
            running.stop();
            live.kill();
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

    /** Answers the request, or postpones it if a run is requested meanwhile. */
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
            // a run has priority, or the request was cancelled
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
            List<StepRun> runs =
                    snippetCompilation.compile(job.snippets(), job.rights(), job::stopped);
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
        } catch (RuntimeException | Error e) { // the worker survives compiler errors
            System.getLogger("coldwright.bench").log(System.Logger.Level.ERROR, "a run broke", e);
            return new RunOutcome.Died(ExceptionMessages.text("ended.broke", e));
        }
    }

    /** Closes the bench and its processes; waiting runs are cancelled. */
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
        processes.close();
    }
}
