package coldwright.terminal.console;

import java.time.Duration;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.BiFunction;

/** Works through a list, several at a time, each worker on a bench of its own. */
public final class BenchWorkers {
    private BenchWorkers() {}

    /**
     * Starts the work.
     *
     * @param most the number of workers; a bench and its spare take some 250 MB
     * @param patience how long one snippet may run
     * @param work what is done with one of the list
     * @return the results to come, in the order of the list
     */
    public static <T, R> List<CompletableFuture<R>> start(
            List<T> list, int most, Duration patience, BiFunction<T, BlockingBench, R> work) {
        List<Turn<T, R>> turns =
                list.stream().map(one -> new Turn<>(one, new CompletableFuture<R>())).toList();
        Queue<Turn<T, R>> waiting = new ConcurrentLinkedQueue<>(turns);
        for (int i = 0; i < Math.min(most, list.size()); i++) {
            Thread worker = new Thread(() -> work(waiting, patience, work), "worker-" + (i + 1));
            worker.setDaemon(true);
            worker.start();
        }
        return turns.stream().map(Turn::result).toList();
    }

    private record Turn<T, R>(T of, CompletableFuture<R> result) {}

    private static <T, R> void work(
            Queue<Turn<T, R>> waiting, Duration patience, BiFunction<T, BlockingBench, R> work) {
        try (BlockingBench bench = new BlockingBench(patience)) {
            for (Turn<T, R> turn = waiting.poll(); turn != null; turn = waiting.poll()) {
                try {
                    turn.result().complete(work.apply(turn.of(), bench));
                } catch (RuntimeException | Error e) {
                    turn.result().completeExceptionally(e);
                }
            }
        }
    }
}
