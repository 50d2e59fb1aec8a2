package coldwright.terminal.console;

import java.util.List;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.BiFunction;
import java.util.function.Supplier;

/**
 * Works through a list, several at a time, each worker on a bench of its own. Each one of the list
 * begins in a fresh process, so nothing that it does is seen by the next.
 */
public final class BenchWorkers {
    private BenchWorkers() {}

    /**
     * Starts work on each of a list; the results come in its order. Each of {@code most} workers
     * opens a bench, which with its compiler takes some 250 MB.
     */
    public static <T, R> List<CompletableFuture<R>> start(
            List<T> list,
            int most,
            Supplier<BlockingBench> benches,
            BiFunction<T, BlockingBench, R> work) {
        List<Turn<T, R>> turns =
                list.stream().map(one -> new Turn<>(one, new CompletableFuture<R>())).toList();
        Queue<Turn<T, R>> waiting = new ConcurrentLinkedQueue<>(turns);
        for (int i = 0; i < Math.min(most, list.size()); i++) {
            Thread worker = new Thread(() -> work(waiting, benches, work), "worker-" + (i + 1));
            worker.setDaemon(true);
            worker.start();
        }
        return turns.stream().map(Turn::result).toList();
    }

    private record Turn<T, R>(T of, CompletableFuture<R> result) {}

    private static <T, R> void work(
            Queue<Turn<T, R>> waiting,
            Supplier<BlockingBench> benches,
            BiFunction<T, BlockingBench, R> work) {
        try (BlockingBench bench = benches.get()) {
            Turn<T, R> turn = waiting.poll();
            while (turn != null) {
                try {
                    turn.result().complete(work.apply(turn.of(), bench));
                } catch (RuntimeException | Error e) {
                    turn.result().completeExceptionally(e);
                }
                turn = waiting.poll();
                if (turn != null) {
                    bench.startAfresh();
                }
            }
        }
    }
}
