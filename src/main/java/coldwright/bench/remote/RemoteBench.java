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
public final class RemoteBench {
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

    private RemoteBench() {}

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
            Watch.end(Watch.PROGRAM_GONE, folder);
            return;
        }
        FrameWriter writer = new FrameWriter(new BufferedOutputStream(frames.getOutputStream()));
        PrintedText printed = new PrintedText(writer);
        System.setOut(new SnippetPrint(printed));
        System.setErr(new SnippetPrint(printed));
        DrawnFigures figures = new DrawnFigures(writer, Integer.parseInt(args[1]));
        Page.readBy(figures::show);
        new Watch(printed, folder).begin(frames.getInputStream());
        serve(orders, new Obedience(writer, printed, figures));
    }

    private static Socket call(int port, byte[] token, int role) throws IOException {
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), port);
        socket.setTcpNoDelay(true);
        socket.getOutputStream().write(token);
        socket.getOutputStream().write(role);
        return socket;
    }

    private static void serve(Socket socket, Obedience obedience) throws IOException {
        warmUp(obedience);
        DataInputStream in =
                new DataInputStream(new BufferedInputStream(socket.getInputStream(), 1 << 16));
        DataOutputStream out =
                new DataOutputStream(new BufferedOutputStream(socket.getOutputStream()));
        Answer.write(new Answer.Done(java.util.Optional.empty()), out);
        out.flush();
        try {
            while (true) {
                Answer answer = obedience.obey(Batch.read(in));
                Answer.write(answer, out);
                out.flush();
            }
        } catch (EOFException e) {
            Runtime.getRuntime().halt(Watch.PROGRAM_GONE);
        }
    }

    /** Loads what the first run would have to wait for. */
    private static void warmUp(Obedience obedience) throws IOException {
        obedience.obey(new Batch(0, List.of()));
        Shown.of(List.of(0.5, Figure.of("").line("", 0, 1, x -> x)));
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
