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
 * The main class of the bench's process. It is started by the program with the port to call, the
 * most points of a figure and its own folder; on standard input it reads the token that proves who
 * it is.
 */
public final class BenchMain {
    /** Bytes in the token. */
    public static final int TOKEN_BYTES = 32;

    /** What the first connection says: orders and answers. */
    public static final int ORDERS = 1;

    /** What the second connection says: printed text and figures. */
    public static final int FRAMES = 2;

    /** Exit status when a snippet has started too many threads. */
    public static final int TOO_MANY_THREADS = 97;

    /** The thread that snippets run on. */
    public static final String THREAD = "snippets";

    /** Thrown into the snippets' thread by the program, through the debug interface, to stop it. */
    static final StoppedError STOP = new StoppedError();

    private BenchMain() {}

    /**
     * Serves until the program is gone.
     *
     * @param args port, most points of a figure, this process' folder
     * @throws IOException if the program does not answer
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

    /** Loads what the first run would have to wait for. */
    private static void warmUp(OrderExecutor orderExecutor) throws IOException {
        orderExecutor.execute(new OrderBatch(0, List.of()));
        ValueText.of(List.of(0.5, Figure.of("").line("", 0, 1, x -> x)));
        new Formatter().format("%.2f", 0.5).close();
    }

    /** What stops a snippet. */
    static final class StoppedError extends Error {
        private static final long serialVersionUID = 1;

        StoppedError() {
            super("stopped", null, false, false);
        }
    }
}
