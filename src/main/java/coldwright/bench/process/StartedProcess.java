package coldwright.bench.process;

import coldwright.bench.remote.BenchFolder;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/** A started process, ready or not, with its folder. */
record StartedProcess(Process process, Path folder) {
    private static final int END_SECONDS = 1;

    /** Kills it and deletes its folder. */
    void end() {
        process.destroyForcibly();
        try {
            process.waitFor(END_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        BenchFolder.delete(folder);
    }
}
