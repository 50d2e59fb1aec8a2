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
            return ExceptionMessages.text("ended.forged");
        }
        if (status.isEmpty()) {
            return ExceptionMessages.text("ended.lost", how.getMessage());
        }
        int code = status.getAsInt();
        if (code == BenchMain.TOO_MANY_THREADS) {
            return ExceptionMessages.text("ended.threads");
        }
        if (code == KILL || code == TERMINATE) {
            return ExceptionMessages.text("ended.outside");
        }
        return ExceptionMessages.text(code > SIGNAL ? "ended.crash" : "ended.exit", code);
    }
}
