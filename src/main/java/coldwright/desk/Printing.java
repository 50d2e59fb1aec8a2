package coldwright.desk;

import coldwright.bench.Outcome;
import coldwright.bench.Run;
import coldwright.bench.RunWatcher;
import coldwright.desk.model.Endings;
import coldwright.desk.model.Runner;
import coldwright.desk.model.Trouble;
import coldwright.desk.say.Say;
import coldwright.lesson.Lesson;
import coldwright.print.Given;
import coldwright.print.Handout;
import coldwright.print.Pdf;
import coldwright.print.Played;
import coldwright.print.Wish;
import coldwright.text.WholeFile;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Sets lessons for paper, off the window's thread and on a bench of its own. */
public final class Printing {
    /** A snippet of a lesson takes well under a second; one that needs this never ends. */
    private static final long PATIENCE_S = 60;

    private final Executor work;
    private final Executor window;
    private final Supplier<BenchRunner> benches;
    private final Consumer<String> tell;

    /**
     * A press that stands still.
     *
     * @param work a thread to set pages on
     * @param window the window's thread
     * @param benches a new bench for each lesson, so that the page's own goes on undisturbed
     * @param tell tells the learner something, on the window's thread
     */
    public Printing(
            Executor work, Executor window, Supplier<BenchRunner> benches, Consumer<String> tell) {
        this.work = work;
        this.window = window;
        this.benches = benches;
        this.tell = tell;
    }

    /**
     * Writes a handout and tells when it is done.
     *
     * @param lesson the lesson
     * @param wish how it is wanted; with a learner's work, that is run
     * @param file where to; PDF unless its name ends in {@code .html}
     * @param agreed whether its snippets may run; without, a page to write on has lines where their
     *     figures' axes would be
     * @return completes when it was told
     */
    public CompletableFuture<Void> write(Lesson lesson, Wish wish, Path file, boolean agreed) {
        tell.accept(Say.of("handout.going", name(file)));
        return CompletableFuture.supplyAsync(() -> written(lesson, wish, file, agreed), work)
                .exceptionally(
                        trouble -> Say.of("handout.failed", name(file), Trouble.said(trouble)))
                .thenAcceptAsync(tell, window);
    }

    private String written(Lesson lesson, Wish wish, Path file, boolean agreed) {
        Map<Integer, Given> given = agreed ? played(lesson, wish) : Map.of();
        String html = Handout.html(lesson, given, wish);
        boolean pdf = !file.toString().toLowerCase(Locale.ROOT).endsWith(".html");
        try {
            WholeFile.write(file, pdf ? Pdf.of(html) : html.getBytes(StandardCharsets.UTF_8));
        } catch (WholeFile.UnwrittenException e) {
            return Trouble.unwritten(name(file), e);
        }
        boolean failed = Handout.tellsTrouble(given, wish);
        return Say.of(failed ? "handout.done-with-trouble" : "handout.done", name(file));
    }

    private Map<Integer, Given> played(Lesson lesson, Wish wish) {
        try (BenchRunner bench = benches.get()) {
            return Played.of(lesson, wish, (above, code) -> play(bench, above, code));
        }
    }

    private static Given play(Runner bench, List<String> above, String code) {
        CompletableFuture<Run> running = bench.run(above, code, RunWatcher.NONE);
        CompletableFuture<Void> late =
                CompletableFuture.runAsync(
                        bench::stop,
                        CompletableFuture.delayedExecutor(PATIENCE_S, TimeUnit.SECONDS));
        Run run = running.join();
        late.cancel(false);
        return given(run);
    }

    private static Given given(Run run) {
        return run.outcome() instanceof Outcome.Finished done
                ? Given.ran(run.printed(), done.value(), done.type(), run.exhibits())
                : Given.failed(run.printed(), Endings.words(run.outcome()), run.exhibits());
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }
}
