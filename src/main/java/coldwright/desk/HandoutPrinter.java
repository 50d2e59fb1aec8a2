package coldwright.desk;

import coldwright.bench.FinishedRun;
import coldwright.bench.RunListener;
import coldwright.bench.SnippetRights;
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
     * Lays out pages on a working thread, each lesson with a bench of its own so that the page's is
     * undisturbed.
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
     * Writes a handout, with a learner's work run, and shows the result; a PDF unless the file's
     * name ends in {@code .html}.
     */
    public CompletableFuture<Void> write(
            Lesson lesson, HandoutOptions handoutOptions, Path file, SnippetRights rights) {
        notify.accept(Messages.of("handout.going", name(file)));
        return CompletableFuture.supplyAsync(
                        () -> written(lesson, handoutOptions, file, rights), work)
                .exceptionally(
                        error ->
                                Messages.of(
                                        "handout.failed", name(file), ExceptionText.text(error)))
                .thenAcceptAsync(notify, window);
    }

    private String written(
            Lesson lesson, HandoutOptions handoutOptions, Path file, SnippetRights rights) {
        Map<Integer, SnippetOutput> given = played(lesson, handoutOptions, rights);
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

    private Map<Integer, SnippetOutput> played(
            Lesson lesson, HandoutOptions handoutOptions, SnippetRights rights) {
        try (BenchRunner bench = benches.get()) {
            return HandoutPlay.of(
                    lesson,
                    handoutOptions,
                    (above, code) -> run(bench, SnippetSource.of(above, code), rights),
                    OutcomeSentences::words);
        }
    }

    private static FinishedRun run(
            SnippetRunner bench, List<SnippetSource> snippets, SnippetRights rights) {
        CompletableFuture<FinishedRun> running = bench.run(snippets, rights, RunListener.NONE);
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
