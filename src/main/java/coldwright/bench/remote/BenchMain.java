package coldwright.bench.remote;

import coldwright.figure.Figure;
import coldwright.figure.Page;

import java.io.IOException;
import java.io.PrintStream;
import java.lang.instrument.Instrumentation;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Formatter;
import java.util.List;
import java.util.Optional;

/**
 * The main class of the bench's process. Snippets have a standard input and output of their own.
 */
public final class BenchMain {
    /** Exit status when a snippet has started too many threads. */
    public static final int TOO_MANY_THREADS = 97;

    /** Replaces the bodies of loaded classes. */
    private static Instrumentation instrumentation;

    private BenchMain() {}

    /** Called by Java before {@link #main}. */
    public static void premain(String argument, Instrumentation given) {
        instrumentation = given;
    }

    /**
     * Serves until the program is gone.
     *
     * @param args this process' folder, maximum points of a figure
     * @throws IOException if the program doesn't answer
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        ProgramLink<OrderBatch, BenchMessage> program =
                new ProgramLink<>(
                        OrderBatch.WIRE, BenchMessage.wire(Integer.MAX_VALUE), Path.of(args[0]));
        TextOutput printed = new TextOutput(program);
        System.setOut(unclosable(printed));
        System.setErr(unclosable(printed));
        FigureOutput figures = new FigureOutput(program, Integer.parseInt(args[1]));
        Page.readBy(figures::show);
        ProcessWatchdog.start(printed);
        OrderExecutor executor = new OrderExecutor(printed, figures, instrumentation);
        warmUp(executor);
        program.send(new BenchMessage.Done(Optional.empty()));
        while (true) {
            program.send(executor.execute(program.take()));
        }
    }

    private static PrintStream unclosable(TextOutput under) {
        return new PrintStream(under, false, StandardCharsets.UTF_8) {
            @Override
            public void close() {
                flush();
            }
        };
    }

    /** Loads classes that would delay the first run. */
    private static void warmUp(OrderExecutor executor) throws IOException {
        executor.execute(new OrderBatch(List.of()));
        ValueText.of(List.of(0.5, Figure.of("").line("", 0, 1, x -> x)));
        new Formatter().format("%.2f", 0.5).close();
    }
}
