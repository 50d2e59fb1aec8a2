package coldwright.bench.process;

import coldwright.bench.remote.BenchFolder;
import coldwright.bench.remote.BenchMain;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.function.Consumer;

/** Starts a process and authenticates it by its token. */
final class BenchLauncher {
    /** How long a start may take, ms. */
    static final int PATIENCE_MS = 20_000;

    private static final int HANDSHAKE_MS = 2_000;
    private static final int BYTES_OF_A_POINT = 40;
    private static final int BYTES_BESIDE_POINTS = 4 << 20;
    private static final SecureRandom RANDOM = new SecureRandom();

    private BenchLauncher() {}

    /**
     * Starts a process and waits until it is warm.
     *
     * @param births receives the process as soon as it exists
     * @return the process, ready for orders
     * @throws IOException if it can't be started or doesn't connect in time
     */
    static BenchProcess start(LaunchSettings launch, Consumer<StartedProcess> births)
            throws IOException {
        Path folder = BenchFolder.create();
        Process process = null;
        try (ServerSocket door = new ServerSocket(0, 4, InetAddress.getLoopbackAddress())) {
            door.setSoTimeout(PATIENCE_MS);
            DebugConnection debugConnection = DebugConnection.listen();
            process = launch.start(folder, door.getLocalPort(), debugConnection.address());
            births.accept(new StartedProcess(process, folder));
            process.onExit().thenRun(() -> giveUp(door, debugConnection));
            byte[] token = newToken();
            process.getOutputStream().write(token);
            process.getOutputStream().flush();
            debugConnection.accept();
            Socket orders = accept(door, token, BenchMain.ORDERS);
            Socket frames = accept(door, token, BenchMain.FRAMES);
            int mostBytes = launch.pointLimit() * BYTES_OF_A_POINT + BYTES_BESIDE_POINTS;
            BenchProcess bench =
                    new BenchProcess(process, folder, debugConnection, orders, frames, mostBytes);
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
        byte[] token = new byte[BenchMain.TOKEN_BYTES];
        RANDOM.nextBytes(token);
        return token;
    }

    /** Accepts the next connection with the token and the role; rejects others. */
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
                // sent nothing: not our process
            }
            caller.close();
        }
    }

    private static void giveUp(ServerSocket door, DebugConnection debugConnection) {
        debugConnection.stopListening();
        try {
            door.close();
        } catch (IOException e) {
            // already closed
        }
    }
}
