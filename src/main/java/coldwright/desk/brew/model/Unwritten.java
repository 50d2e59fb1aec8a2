package coldwright.desk.brew.model;

import coldwright.workbook.AtomicFile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.BiConsumer;
import java.util.function.BooleanSupplier;

/** Batch files that wait to be written: soon after a change, and only as they stand last. */
final class Unwritten {
    private static final long WAIT_MS = 400;

    private final Path folder;
    private final ScheduledExecutorService background;
    private final BooleanSupplier may;
    private final BiConsumer<String, IOException> failed;
    private final Map<String, String> waiting = new LinkedHashMap<>();
    private boolean scheduled;

    Unwritten(
            Path folder,
            ScheduledExecutorService background,
            BooleanSupplier may,
            BiConsumer<String, IOException> failed) {
        this.folder = folder;
        this.background = background;
        this.may = may;
        this.failed = failed;
    }

    void put(String name, String text) {
        synchronized (waiting) {
            waiting.put(name, text);
            if (scheduled) {
                return;
            }
            scheduled = true;
        }
        try {
            background.schedule(this::flush, WAIT_MS, TimeUnit.MILLISECONDS);
        } catch (RejectedExecutionException e) {
            flush();
        }
    }

    void forget(String name) {
        synchronized (waiting) {
            waiting.remove(name);
        }
    }

    /** Writes what waits, on the calling thread. */
    void flush() {
        Map<String, String> now;
        synchronized (waiting) {
            now = new LinkedHashMap<>(waiting);
            waiting.clear();
            scheduled = false;
        }
        if (may.getAsBoolean()) {
            now.forEach(this::write);
        }
    }

    private void write(String name, String text) {
        try {
            Files.createDirectories(folder);
            AtomicFile.write(folder.resolve(name), text);
        } catch (IOException e) {
            failed.accept(name, e);
        }
    }
}
