package coldwright.bench;

import coldwright.bench.compile.StepRun;
import coldwright.bench.confine.NameCheck;
import coldwright.bench.process.BenchProcess;
import coldwright.bench.remote.BenchMessage;
import coldwright.bench.remote.CompiledClass;
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

    /** An empty script; output of loud steps goes to the record. */
    OrderScript(BenchSettings settings, RunOutput record) {
        this.settings = settings;
        this.record = record;
    }

    /** Adds a fresh start. */
    void addFresh() {
        add(0, new Order.Fresh());
    }

    /** Adds a step's orders. A loud step's output is recorded; no quiet step may follow it. */
    void add(int step, List<Order> its, boolean loud) {
        if (loud) {
            add(step, new Order.Listen(settings.printedLimit(), record.figuresLeft()));
        }
        its.forEach(order -> add(step, order));
    }

    private void add(int step, Order order) {
        orders.add(order);
        steps.add(step);
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
     * Executes all orders.
     *
     * @throws IOException if the process is lost
     */
    BenchMessage.Reply play(BenchProcess process) throws IOException {
        return process.execute(orders, record::accept);
    }
}
