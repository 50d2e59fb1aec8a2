package coldwright.bench;

import coldwright.bench.remote.BenchMain;

import java.io.IOException;
import java.util.OptionalInt;

/** Messages for the ways a bench's process can end. */
final class ProcessEndMessages {
    /** Unix adds the signal number to this to form the exit status. */
    private static final int SIGNAL = 128;

    private static final int KILL = SIGNAL + 9;
    private static final int TERMINATE = SIGNAL + 15;

    private ProcessEndMessages() {}

    static String of(boolean forged, OptionalInt status, IOException how) {
        if (forged) {
            return "the snippet sent something to the page that is no figure, so its bench was"
                    + " ended; show figures with `Page.show`";
        }
        if (status.isEmpty()) {
            return "the bench lost touch with its process (%s); run the snippet again"
                    .formatted(how.getMessage());
        }
        int code = status.getAsInt();
        if (code == BenchMain.TOO_MANY_THREADS) {
            return "the snippet started more threads than the bench allows, so it was ended; start"
                    + " fewer, and end them";
        }
        if (code == KILL || code == TERMINATE) {
            return "the bench's process was ended from outside; run the snippet again";
        }
        if (code > SIGNAL) {
            return "the bench's process broke down (status %d); run the snippet again"
                    .formatted(code);
        }
        return "the snippet ended its own bench (exit status %d); take `System.exit` or `halt` out"
                .formatted(code);
    }
}
