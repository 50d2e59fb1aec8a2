package coldwright.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/**
 * Stands for the background thread in tests: what is given to it runs at once, what is to be
 * repeated or to wait runs when told.
 */
final class ByHandClock extends ScheduledThreadPoolExecutor {
    private final List<Runnable> repeated = new ArrayList<>();
    private final List<Runnable> waiting = new ArrayList<>();

    ByHandClock() {
        super(0);
    }

    @Override
    public void execute(Runnable command) {
        if (isShutdown()) {
            throw new RejectedExecutionException();
        }
        command.run();
    }

    @Override
    public ScheduledFuture<?> scheduleWithFixedDelay(
            Runnable command, long first, long between, TimeUnit unit) {
        repeated.add(command);
        return null;
    }

    @Override
    public ScheduledFuture<?> schedule(Runnable command, long delay, TimeUnit unit) {
        waiting.add(command);
        return null;
    }

    /** The time of everything that is repeated has come. */
    void tick() {
        repeated.forEach(Runnable::run);
    }

    /** The time of everything that waits has come. */
    void pass() {
        List<Runnable> now = List.copyOf(waiting);
        waiting.clear();
        now.forEach(Runnable::run);
    }
}
