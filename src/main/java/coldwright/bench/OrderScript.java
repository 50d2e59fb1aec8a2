package coldwright.bench;

import coldwright.bench.compile.StepRun;
import coldwright.bench.confine.NameCheck;
import coldwright.bench.process.BenchProcess;
import coldwright.bench.remote.CompiledClass;
import coldwright.bench.remote.ExecutionReply;
import coldwright.bench.remote.Order;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Orders of one or more steps, with the step that each belongs to. */
final class OrderScript {
    private final BenchSettings settings;
    private final RunOutput record;
    private final List<Order> orders = new ArrayList<>();
    private final List<Integer> steps = new ArrayList<>();
    private int loudFrom = Integer.MAX_VALUE;

    /** An empty script; output of loud orders goes to the record. */
    OrderScript(BenchSettings settings, RunOutput record) {
        this.settings = settings;
        this.record = record;
    }

    /** Adds a fresh start. */
    void addFresh() {
        orders.add(new Order.Fresh());
        steps.add(0);
    }

    /** Adds a step's orders. A loud step's output is recorded; no quiet step may follow it. */
    void add(int step, List<Order> its, boolean loud) {
        if (loud) {
            loudFrom = orders.size();
        }
        for (Order order : its) {
            orders.add(order);
            steps.add(step);
        }
    }

    /** The step that an order belongs to. */
    int stepOf(int order) {
        return steps.get(order);
    }

    /**
     * Checks again that no class names more than a confined snippet may, now that they are about to
     * be defined.
     *
     * @param runs all steps that the classes may come from
     * @throws IllegalStateException if one does, which is a fault of the compiler's side
     */
    void requireConfined(List<StepRun> runs) {
        Map<String, CompiledClass> known = new HashMap<>();
        runs.forEach(run -> run.step().classes().forEach(code -> known.put(code.name(), code)));
        orders.stream()
                .flatMap(order -> order.definition().stream())
                .flatMap(code -> NameCheck.refused(code, known::get).stream())
                .findFirst()
                .ifPresent(
                        name -> {
                            throw new IllegalStateException(name.words());
                        });
    }

    /**
     * Executes all orders. Class bodies are exchanged through the debug interface, between two
     * batches.
     *
     * @return the reply; the index of a failed order counts from the start of the script
     * @throws IOException if the process is lost
     */
    ExecutionReply play(BenchProcess process) throws IOException {
        int from = 0;
        for (int i = 0; i < orders.size(); i++) {
            if (orders.get(i) instanceof Order.Redefine redefine) {
                ExecutionReply answer = play(process, from, i);
                if (answer instanceof ExecutionReply.Failed) {
                    return answer;
                }
                boolean inUse = process.redefine(redefine.code());
                orders.set(i, new Order.Define(redefine.code()));
                from = inUse ? i + 1 : i;
            }
        }
        return play(process, from, orders.size());
    }

    private ExecutionReply play(BenchProcess process, int from, int to) throws IOException {
        List<Order> part = new ArrayList<>(orders.subList(from, to));
        int listenAt = Math.max(0, loudFrom - from);
        boolean listens = loudFrom < to;
        if (listens) {
            part.add(listenAt, new Order.Listen(settings.printedLimit(), record.figuresLeft()));
        }
        ExecutionReply answer = process.execute(part, record);
        if (answer instanceof ExecutionReply.Failed failed) {
            boolean afterListen = listens && failed.order() > listenAt;
            int order = from + failed.order() - (afterListen ? 1 : 0);
            return new ExecutionReply.Failed(order, failed.thrown());
        }
        return answer;
    }
}
