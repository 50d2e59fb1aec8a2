package coldwright.desk.run;

import coldwright.bench.RunListener;
import coldwright.desk.messages.Messages;

import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;

/**
 * Passes a run's output to the window's thread, one task at a time, so that a flood never blocks
 * the window.
 */
public final class LiveOutput implements RunListener {
    private static final int MOST_KEPT = 20_000;

    private final Executor window;
    private final Consumer<String> printed;
    private final Consumer<String> progress;
    private final StringBuilder soFar = new StringBuilder();
    private final AtomicBoolean underWay = new AtomicBoolean();

    /** Passes on all output up to now, and a few words on what runs first. */
    public LiveOutput(Executor window, Consumer<String> printed, Consumer<String> progress) {
        this.window = window;
        this.printed = printed;
        this.progress = progress;
    }

    @Override
    public void printed(String text) {
        synchronized (soFar) {
            if (soFar.length() >= MOST_KEPT) {
                return;
            }
            soFar.append(text, 0, Math.min(text.length(), MOST_KEPT - soFar.length()));
        }
        if (underWay.compareAndSet(false, true)) {
            window.execute(this::deliver);
        }
    }

    private void deliver() {
        underWay.set(false);
        String all;
        synchronized (soFar) {
            all = soFar.toString();
        }
        printed.accept(all);
    }

    @Override
    public void above(int index, int count) {
        String words =
                count == 1
                        ? Messages.of("snippet.above-first")
                        : Messages.of("snippet.all-above-first", index + 1, count);
        window.execute(() -> progress.accept(words));
    }
}
