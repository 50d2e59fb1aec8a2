package coldwright.bench.process;

import coldwright.bench.remote.BenchFolder;
import coldwright.bench.remote.RemoteBench;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.function.Consumer;

/** Starts a process and shakes hands: only who shows the token is let in. */
final class BenchStart {
    /** How long a start may take, ms. */
    static final int PATIENCE_MS = 20_000;

    private static final int HANDSHAKE_MS = 2_000;
    private static final int BYTES_OF_A_POINT = 40;
    private static final int BYTES_BESIDE_POINTS = 4 << 20;
    private static final SecureRandom RANDOM = new SecureRandom();

    private BenchStart() {}

    /**
     * Starts a process and waits until it is warm.
     *
     * @param launch how
     * @param births told of the process as soon as there is one
     * @return the process, ready for orders
     * @throws IOException if it can't be started or doesn't call in time
     */
    static BenchProcess start(Launch launch, Consumer<Born> births) throws IOException {
        Path folder = BenchFolder.create();
        Process process = null;
        try (ServerSocket door = new ServerSocket(0, 4, InetAddress.getLoopbackAddress())) {
            door.setSoTimeout(PATIENCE_MS);
            Debugging debugging = Debugging.listen();
            process = launch.start(folder, door.getLocalPort(), debugging.address());
            births.accept(new Born(process, folder));
            process.onExit().thenRun(() -> giveUp(door, debugging));
            byte[] token = newToken();
            process.getOutputStream().write(token);
            process.getOutputStream().flush();
            debugging.accept();
            Socket orders = accept(door, token, RemoteBench.ORDERS);
            Socket frames = accept(door, token, RemoteBench.FRAMES);
            int mostBytes = launch.pointLimit() * BYTES_OF_A_POINT + BYTES_BESIDE_POINTS;
            BenchProcess bench =
                    new BenchProcess(process, folder, debugging, orders, frames, mostBytes);
            bench.awaitReady();
            return bench;
        } catch (IOException | RuntimeException e) {
            if (process != null) {
                process.destroyForcibly();
            }
            BenchFolder.delete(folder);
            throw e;
        }
    }

    private static byte[] newToken() {
        byte[] token = new byte[RemoteBench.TOKEN_BYTES];
        RANDOM.nextBytes(token);
        return token;
    }

    /** Lets in the next caller that shows the token and asks for the role; turns others away. */
    private static Socket accept(ServerSocket door, byte[] token, int role) throws IOException {
        while (true) {
            Socket caller = door.accept();
            try {
                caller.setSoTimeout(HANDSHAKE_MS);
                byte[] shown = caller.getInputStream().readNBytes(token.length);
                if (MessageDigest.isEqual(shown, token) && caller.getInputStream().read() == role) {
                    caller.setSoTimeout(0);
                    caller.setTcpNoDelay(true);
                    return caller;
                }
            } catch (SocketTimeoutException e) {
                // says nothing: not ours
            }
            caller.close();
        }
    }

    private static void giveUp(ServerSocket door, Debugging debugging) {
        debugging.stopListening();
        try {
            door.close();
        } catch (IOException e) {
            // closed already
        }
    }
}
