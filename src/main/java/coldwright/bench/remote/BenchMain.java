package coldwright.bench.remote;

import coldwright.figure.Figure;
import coldwright.figure.Page;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.lang.instrument.Instrumentation;
import java.nio.file.Path;
import java.util.Formatter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;

/**
 * The main class of the bench's process. Orders come on its standard input and messages leave on
 * its standard output; snippets have streams of their own. Its arguments are the maximum points of
 * a figure and its folder.
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
     * @param args maximum points of a figure, this process' folder
     * @throws IOException if the program doesn't answer
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        DataInputStream in = new DataInputStream(new BufferedInputStream(System.in, 1 << 16));
        System.setIn(InputStream.nullInputStream());
        MessageWriter writer = new MessageWriter(new FileOutputStream(FileDescriptor.out));
        TextOutput printed = new TextOutput(writer);
        System.setOut(new UnclosablePrintStream(printed));
        System.setErr(new UnclosablePrintStream(printed));
        FigureOutput figures = new FigureOutput(writer, Integer.parseInt(args[0]));
        Page.readBy(figures::show);
        BlockingQueue<OrderBatch> batches = new LinkedBlockingQueue<>();
        new ProcessWatchdog(printed, Path.of(args[1])).start(in, batches);
        OrderExecutor executor = new OrderExecutor(printed, figures, instrumentation);
        warmUp(executor);
        writer.send(new BenchMessage.Done(Optional.empty()));
        while (true) {
            writer.send(executor.execute(batches.take()));
        }
    }

    /** Loads classes that would delay the first run. */
    private static void warmUp(OrderExecutor executor) throws IOException {
        executor.execute(new OrderBatch(List.of()));
        ValueText.of(List.of(0.5, Figure.of("").line("", 0, 1, x -> x)));
        new Formatter().format("%.2f", 0.5).close();
    }
}
