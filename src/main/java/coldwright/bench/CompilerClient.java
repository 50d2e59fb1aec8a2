package coldwright.bench;

import coldwright.bench.compiler.CompilerMain;
import coldwright.bench.compiler.CompilerReply;
import coldwright.bench.compiler.CompilerRequest;
import coldwright.bench.process.JavaProcess;
import coldwright.bench.process.LaunchSettings;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The compiling process, started again when it is lost. For one thread. */
final class CompilerClient implements AutoCloseable {
    /** The largest snippets of learners take a tenth of it. */
    private static final int HEAP_MB = 256;

    /** A snippet of the most statements takes some 8 s. */
    private static final Duration MOST_PROCESSOR_TIME = Duration.ofSeconds(20);

    /** For a busy machine, and where the system doesn't tell the processor time. */
    private static final Duration MOST_TIME = MOST_PROCESSOR_TIME.multipliedBy(10);

    /** The same once a stop is asked for: an honest snippet, even the first, keeps its compiler. */
    private static final Duration MOST_PROCESSOR_TIME_STOPPED = Duration.ofSeconds(5);

    private static final int POLL_MS = 20;

    private final LaunchSettings launch;
    private final ExecutorService reader =
            Executors.newSingleThreadExecutor(
                    task -> {
                        Thread thread = new Thread(task, "bench-compiler");
                        thread.setDaemon(true);
                        return thread;
                    });
    private JavaProcess<CompilerRequest, CompilerReply> process;

    CompilerClient(BenchSettings settings) {
        List<String> arguments = new ArrayList<>();
        arguments.add(
                settings.classPath().stream()
                        .map(Path::toString)
                        .collect(Collectors.joining(File.pathSeparator)));
        arguments.addAll(settings.imports());
        List<Path> own =
                Stream.of(
                                System.getProperty("java.class.path")
                                        .split(Pattern.quote(File.pathSeparator)))
                        .map(Path::of)
                        .toList();
        launch = new LaunchSettings(CompilerMain.class, own, HEAP_MB, arguments);
    }

    /** Starts the process, unless it runs. */
    void open() {
        try {
            if (process == null || !process.alive()) {
                close();
                process =
                        new JavaProcess<>(launch, CompilerRequest.WIRE, CompilerReply.WIRE, false);
            }
        } catch (IOException e) {
            throw new IllegalArgumentException(
                    ExceptionMessages.text("ended.start", e.getMessage()), e);
        }
    }

    /**
     * Asks the process and waits for the answer.
     *
     * @param stopped polled; true to give up
     * @throws OverloadedException if the process didn't survive it
     * @throws CancellationException if stopped
     * @throws IllegalArgumentException if the compiler can't be made
     */
    CompilerReply ask(CompilerRequest request, BooleanSupplier stopped) throws OverloadedException {
        open();
        JavaProcess<CompilerRequest, CompilerReply> asked = process;
        Duration processorAtStart = asked.processorTime();
        long start = System.nanoTime();
        boolean stop = false;
        try {
            asked.send(request);
            CompletableFuture<CompilerReply> answer =
                    CompletableFuture.supplyAsync(() -> receive(asked), reader);
            while (true) {
                try {
                    CompilerReply reply = answer.get(POLL_MS, TimeUnit.MILLISECONDS);
                    if (reply instanceof CompilerReply.Broken broken) {
                        throw new IllegalArgumentException(broken.why());
                    }
                    return reply;
                } catch (TimeoutException e) {
                    if (!stop && stopped.getAsBoolean()) {
                        stop = true;
                        asked.send(new CompilerRequest.Hurry());
                    }
                    Duration most = stop ? MOST_PROCESSOR_TIME_STOPPED : MOST_PROCESSOR_TIME;
                    if (asked.processorTime().minus(processorAtStart).compareTo(most) > 0
                            || System.nanoTime() - start > MOST_TIME.toNanos()) {
                        close();
                        if (stop) {
                            throw new CancellationException("given up");
                        }
                        throw new OverloadedException(true);
                    }
                }
            }
        } catch (IOException | ExecutionException e) {
            boolean certain = asked.exitStatus().orElse(0) == LaunchSettings.OVERLOADED;
            close();
            throw new OverloadedException(certain);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("interrupted");
        }
    }

    private static CompilerReply receive(JavaProcess<CompilerRequest, CompilerReply> process) {
        try {
            return process.receive();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** Ends the process. */
    @Override
    public void close() {
        if (process != null) {
            process.close();
            process = null;
        }
    }

    /** The compiling process ended without an answer. */
    static final class OverloadedException extends Exception {
        private static final long serialVersionUID = 1;

        private final boolean certain;

        OverloadedException(boolean certain) {
            super(ExceptionMessages.text("overloaded", MOST_PROCESSOR_TIME.toSeconds(), HEAP_MB));
            this.certain = certain;
        }

        /** Whether it took too long or too much memory; it may have been killed otherwise. */
        boolean certain() {
            return certain;
        }
    }
}
