package coldwright.desk.batch.model;

import coldwright.workbook.Workbook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.BiConsumer;

/** Batch files that wait to be written: soon after a change, and only as they stand last. */
final class PendingWrites {
    private static final long WAIT_MS = 400;

    private final Path folder;
    private final ScheduledExecutorService background;
    private final Workbook workbook;
    private final BiConsumer<String, IOException> failed;
    private final Map<String, Text> waiting = new LinkedHashMap<>();
    private boolean scheduled;

    PendingWrites(
            Path folder,
            ScheduledExecutorService background,
            Workbook workbook,
            BiConsumer<String, IOException> failed) {
        this.folder = folder;
        this.background = background;
        this.workbook = workbook;
        this.failed = failed;
    }

    /** A file's text, what it is about, and what to do once it is written. */
    private record Text(String text, String about, Runnable written) {}

    void put(String name, String text, String about, Runnable written) {
        synchronized (waiting) {
            waiting.put(name, new Text(text, about, written));
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

    /** Writes what waits, on the calling thread. */
    void flush() {
        Map<String, Text> now;
        synchronized (waiting) {
            now = new LinkedHashMap<>(waiting);
            waiting.clear();
            scheduled = false;
        }
        if (workbook.keeps()) {
            now.forEach(this::write);
        }
    }

    private void write(String name, Text one) {
        try {
            workbook.files().write(folder.resolve(name), one.text(), one.about());
            one.written().run();
        } catch (IOException e) {
            failed.accept(name, e);
        }
    }
}
