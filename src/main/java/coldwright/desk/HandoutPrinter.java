package coldwright.desk;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunListener;
import coldwright.bench.compile.SnippetSource;
import coldwright.desk.messages.Messages;
import coldwright.desk.run.ExceptionText;
import coldwright.desk.run.OutcomeSentences;
import coldwright.desk.run.SnippetRunner;
import coldwright.lesson.Lesson;
import coldwright.print.Handout;
import coldwright.print.HandoutOptions;
import coldwright.print.HandoutPlay;
import coldwright.print.PdfWriter;
import coldwright.print.SnippetOutput;
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

/** Prints lessons, off the window's thread and on a bench of its own. */
public final class HandoutPrinter {
    /** A snippet of a lesson takes well under a second; one that takes this long never ends. */
    private static final long PATIENCE_S = 60;

    private final Executor work;
    private final Executor window;
    private final Supplier<BenchRunner> benches;
    private final Consumer<String> notify;

    /**
     * An idle printer.
     *
     * @param work a thread to lay out pages on
     * @param window the window's thread
     * @param benches a new bench for each lesson, so that the page's own bench is undisturbed
     * @param notify shows the learner a sentence, on the window's thread
     */
    public HandoutPrinter(
            Executor work,
            Executor window,
            Supplier<BenchRunner> benches,
            Consumer<String> notify) {
        this.work = work;
        this.window = window;
        this.benches = benches;
        this.notify = notify;
    }

    /**
     * Writes a handout and shows the result.
     *
     * @param lesson the lesson
     * @param handoutOptions edition and paper; with a learner's work, that is run
     * @param file target; PDF unless its name ends in {@code .html}
     * @param agreed whether its snippets may run; if not, blank lines replace the axes of their
     *     figures
     * @return completes when the result has been shown
     */
    public CompletableFuture<Void> write(
            Lesson lesson, HandoutOptions handoutOptions, Path file, boolean agreed) {
        notify.accept(Messages.of("handout.going", name(file)));
        return CompletableFuture.supplyAsync(
                        () -> written(lesson, handoutOptions, file, agreed), work)
                .exceptionally(
                        error ->
                                Messages.of(
                                        "handout.failed", name(file), ExceptionText.text(error)))
                .thenAcceptAsync(notify, window);
    }

    private String written(
            Lesson lesson, HandoutOptions handoutOptions, Path file, boolean agreed) {
        Map<Integer, SnippetOutput> given = agreed ? played(lesson, handoutOptions) : Map.of();
        String html = Handout.html(lesson, given, handoutOptions);
        boolean pdf = !file.toString().toLowerCase(Locale.ROOT).endsWith(".html");
        try {
            WholeFile.write(file, pdf ? PdfWriter.of(html) : html.getBytes(StandardCharsets.UTF_8));
        } catch (WholeFile.UnwrittenException e) {
            return ExceptionText.unwritten(name(file), e);
        }
        boolean failed = Handout.showsTrouble(given, handoutOptions);
        return Messages.of(failed ? "handout.done-with-error" : "handout.done", name(file));
    }

    private Map<Integer, SnippetOutput> played(Lesson lesson, HandoutOptions handoutOptions) {
        try (BenchRunner bench = benches.get()) {
            return HandoutPlay.of(
                    lesson,
                    handoutOptions,
                    (above, code) -> run(bench, above, code),
                    OutcomeSentences::words);
        }
    }

    private static FinishedRun run(SnippetRunner bench, List<String> above, String code) {
        CompletableFuture<FinishedRun> running =
                bench.run(SnippetSource.of(above, code), RunListener.NONE);
        CompletableFuture<Void> late =
                CompletableFuture.runAsync(
                        bench::stop,
                        CompletableFuture.delayedExecutor(PATIENCE_S, TimeUnit.SECONDS));
        FinishedRun run = running.join();
        late.cancel(false);
        return run;
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }
}
