package coldwright.bench.remote;

import java.util.List;

/** Orders to execute together, in order. */
public record OrderBatch(List<Order> orders) {
    /** The program's messages to the bench: up to a million orders, classes up to 16 MB. */
    public static final RecordWire<OrderBatch> WIRE =
            new RecordWire<>(OrderBatch.class, 1 << 20, 1 << 24);

    /** Makes defensive copies. */
    public OrderBatch {
        orders = List.copyOf(orders);
    }
}
