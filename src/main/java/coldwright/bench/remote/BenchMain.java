package coldwright.bench.remote;

import coldwright.figure.Figure;
import coldwright.figure.Page;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.file.Path;
import java.util.Formatter;
import java.util.List;

/**
 * The main class of the bench's process. Its arguments are the port to connect to, the maximum
 * points of a figure and its folder; it reads its authentication token from standard input.
 */
public final class BenchMain {
    /** Length of the token, bytes. */
    public static final int TOKEN_BYTES = 32;

    /** Role of the first connection: orders and replies. */
    public static final int ORDERS = 1;

    /** Role of the second connection: printed text and figures. */
    public static final int FRAMES = 2;

    /** Exit status when a snippet has started too many threads. */
    public static final int TOO_MANY_THREADS = 97;

    /** Name of the thread that runs snippets. */
    public static final String THREAD = "snippets";

    /** Thrown into the snippets' thread by the program, through the debug interface, to stop it. */
    static final StoppedError STOP = new StoppedError();

    private BenchMain() {}

    /**
     * Serves until the program is gone.
     *
     * @param args port, maximum points of a figure, this process' folder
     * @throws IOException if the program doesn't answer
     */
    public static void main(String[] args) throws IOException {
        Thread.currentThread().setName(THREAD);
        byte[] token = System.in.readNBytes(TOKEN_BYTES);
        System.setIn(InputStream.nullInputStream());
        Path folder = Path.of(args[2]);
        Socket orders;
        Socket frames;
        try {
            int port = Integer.parseInt(args[0]);
            orders = call(port, token, ORDERS);
            frames = call(port, token, FRAMES);
        } catch (IOException e) {
            ProcessWatchdog.end(ProcessWatchdog.PROGRAM_GONE, folder);
            return;
        }
        WireFrameWriter writer =
                new WireFrameWriter(new BufferedOutputStream(frames.getOutputStream()));
        TextOutput printed = new TextOutput(writer);
        System.setOut(new UnclosablePrintStream(printed));
        System.setErr(new UnclosablePrintStream(printed));
        FigureOutput figures = new FigureOutput(writer, Integer.parseInt(args[1]));
        Page.readBy(figures::show);
        new ProcessWatchdog(printed, folder).start(frames.getInputStream());
        serve(orders, new OrderExecutor(writer, printed, figures));
    }

    private static Socket call(int port, byte[] token, int role) throws IOException {
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), port);
        socket.setTcpNoDelay(true);
        socket.getOutputStream().write(token);
        socket.getOutputStream().write(role);
        return socket;
    }

    private static void serve(Socket socket, OrderExecutor orderExecutor) throws IOException {
        warmUp(orderExecutor);
        DataInputStream in =
                new DataInputStream(new BufferedInputStream(socket.getInputStream(), 1 << 16));
        DataOutputStream out =
                new DataOutputStream(new BufferedOutputStream(socket.getOutputStream()));
        ExecutionReply.write(new ExecutionReply.Done(java.util.Optional.empty()), out);
        out.flush();
        try {
            while (true) {
                ExecutionReply answer = orderExecutor.execute(OrderBatch.read(in));
                ExecutionReply.write(answer, out);
                out.flush();
            }
        } catch (EOFException e) {
            Runtime.getRuntime().halt(ProcessWatchdog.PROGRAM_GONE);
        }
    }

    /** Loads classes that would delay the first run. */
    private static void warmUp(OrderExecutor orderExecutor) throws IOException {
        orderExecutor.execute(new OrderBatch(0, List.of()));
        ValueText.of(List.of(0.5, Figure.of("").line("", 0, 1, x -> x)));
        new Formatter().format("%.2f", 0.5).close();
    }

    /** Stops a snippet. */
    static final class StoppedError extends Error {
        private static final long serialVersionUID = 1;

        StoppedError() {
            super("stopped", null, false, false);
        }
    }
}
