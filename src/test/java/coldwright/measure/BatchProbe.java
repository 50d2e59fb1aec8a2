package coldwright.measure;

import coldwright.batch.Recipe;
import coldwright.batch.RecipeLine;
import coldwright.desk.batch.model.BatchModel;
import coldwright.desk.batch.model.BatchesModel;

import java.util.Arrays;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Types into the batch page's model, one key each 120 ms, and prints how many milliseconds go by
 * from the key to the first figures and to all figures: median and 95th percentile. Nothing is
 * drawn.
 */
public final class BatchProbe {
    private static final int WARM_UP = 100;
    private static final int KEYS = 200;
    private static final long BETWEEN_KEYS_MS = 120;

    private BatchProbe() {}

    /**
     * Measures.
     *
     * @param args none
     * @throws InterruptedException if it is stopped
     */
    public static void main(String[] args) throws InterruptedException {
        ExecutorService work = Executors.newCachedThreadPool();
        ExecutorService window = Executors.newSingleThreadExecutor();
        BatchModel batch = new BatchesModel(work, window).startBatch("Blood-orange sorbet");
        double[] first = new double[KEYS];
        double[] all = new double[KEYS];
        for (int key = -WARM_UP; key < KEYS; key++) {
            String typed = String.valueOf(150 + Math.floorMod(key, 37));
            Recipe recipe = batch.recipe().get().with(1, new RecipeLine(typed, "sucrose"));
            AtomicLong glanced = new AtomicLong();
            AtomicLong reckoned = new AtomicLong();
            CountDownLatch done = new CountDownLatch(2);
            javafx.beans.InvalidationListener glance = stamp(glanced, done);
            javafx.beans.InvalidationListener figures = stamp(reckoned, done);
            long start = System.nanoTime();
            window.execute(
                    () -> {
                        batch.preview().addListener(glance);
                        batch.figures().addListener(figures);
                        batch.change("amount 1", recipe);
                    });
            if (!done.await(10, TimeUnit.SECONDS)) {
                throw new IllegalStateException("no figures after 10 s");
            }
            window.execute(
                    () -> {
                        batch.preview().removeListener(glance);
                        batch.figures().removeListener(figures);
                    });
            if (key >= 0) {
                first[key] = (glanced.get() - start) / 1e6;
                all[key] = (reckoned.get() - start) / 1e6;
            }
            Thread.sleep(BETWEEN_KEYS_MS);
        }
        work.shutdown();
        window.shutdown();
        System.out.println("first figures: " + told(first));
        System.out.println("all figures:   " + told(all));
    }

    private static javafx.beans.InvalidationListener stamp(AtomicLong at, CountDownLatch done) {
        return value -> {
            ((javafx.beans.value.ObservableValue<?>) value).getValue();
            if (at.compareAndSet(0, System.nanoTime())) {
                done.countDown();
            }
        };
    }

    private static String told(double[] ms) {
        double[] sorted = ms.clone();
        Arrays.sort(sorted);
        return "median %.1f ms, p95 %.1f ms"
                .formatted(sorted[sorted.length / 2], sorted[(int) (0.95 * sorted.length)]);
    }
}
