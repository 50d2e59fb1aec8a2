package coldwright.science.crystal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import org.junit.jupiter.api.Test;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ForkJoinPool;

class CornersTest {
    @Test
    void eachCornerKeepsItsPlace() {
        assertEquals(new Corners<>(2, 4, 6), new Corners<>(1, 2, 3).mapAtOnce(x -> 2 * x));
    }

    /** As when a learner's snippet keeps all of the common threads busy for ever. */
    @Test
    void theOneWhoAsksWaitsForNoThreadThatIsBusy() throws InterruptedException {
        CountDownLatch over = new CountDownLatch(1);
        int threads = ForkJoinPool.commonPool().getParallelism();
        CountDownLatch busy = new CountDownLatch(threads);
        try {
            for (int i = 0; i < threads; i++) {
                ForkJoinPool.commonPool()
                        .execute(
                                () -> {
                                    busy.countDown();
                                    waitFor(over);
                                });
            }
            busy.await();
            assertTimeoutPreemptively(
                    Duration.ofSeconds(20),
                    () ->
                            assertEquals(
                                    new Corners<>(2, 4, 6),
                                    new Corners<>(1, 2, 3).mapAtOnce(x -> 2 * x)));
        } finally {
            over.countDown();
        }
    }

    private static void waitFor(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
