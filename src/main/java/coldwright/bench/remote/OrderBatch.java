package coldwright.bench.remote;

import coldwright.figure.wire.WireLimits;
import coldwright.figure.wire.WireReader;
import coldwright.figure.wire.WireWriter;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.List;

/**
 * Orders to execute together.
 *
 * @param number counts batches, to match each end frame to its batch
 * @param orders in order; without {@link Order.Redefine}
 */
public record OrderBatch(int number, List<Order> orders) {
    /** Limits of all messages except figures: strings up to 1 MB. */
    static final WireLimits LIMITS = new WireLimits("bench's message", "sent", 1 << 20);

    private static final int MOST_ORDERS = 1 << 20;
    private static final int MOST_CLASS_BYTES = 1 << 24;

    private static final int FRESH = 0;
    private static final int DEFINE = 1;
    private static final int INVOKE = 2;
    private static final int ASSIGN = 3;
    private static final int LISTEN = 4;

    /** Makes defensive copies. */
    public OrderBatch {
        orders = List.copyOf(orders);
    }

    /**
     * Sends the batch.
     *
     * @throws IOException if the other side is gone
     */
    public void write(DataOutput out) throws IOException {
        WireWriter wire = new WireWriter(LIMITS, out);
        wire.whole(number);
        wire.list("orders", orders, MOST_ORDERS, order -> write(order, wire));
    }

    private static void write(Order order, WireWriter out) throws IOException {
        if (order instanceof Order.Fresh) {
            out.code(FRESH);
        } else if (order instanceof Order.Listen listen) {
            out.code(LISTEN);
            out.whole(listen.printedLimit());
            out.whole(listen.figureLimit());
        } else if (order instanceof Order.Define define) {
            out.code(DEFINE);
            out.text("class name", define.code().name());
            out.bytes("bytes in a class", define.code().bytes(), MOST_CLASS_BYTES);
        } else if (order instanceof Order.Invoke invoke) {
            out.code(INVOKE);
            out.text("class name", invoke.className());
            out.code(invoke.wantsValue() ? 1 : 0);
        } else if (order instanceof Order.Assign assign) {
            out.code(ASSIGN);
            out.text("class name", assign.className());
            out.text("variable", assign.variable());
            out.number(assign.value());
        } else {
            throw new AssertionError("this order does not cross the wire: " + order);
        }
    }

    /**
     * Receives a batch.
     *
     * @throws IOException if the other side is gone or sends malformed data
     */
    public static OrderBatch read(DataInput in) throws IOException {
        WireReader wire = new WireReader(LIMITS, in);
        int number = wire.whole();
        return new OrderBatch(number, wire.list("orders", MOST_ORDERS, () -> readOrder(wire)));
    }

    private static Order readOrder(WireReader in) throws IOException {
        int kind = in.code("an unknown order", LISTEN + 1);
        return switch (kind) {
            case FRESH -> new Order.Fresh();
            case LISTEN -> new Order.Listen(in.whole(), in.whole());
            case DEFINE ->
                    new Order.Define(
                            CompiledClass.of(
                                    in.text("class name"),
                                    in.bytes("bytes in a class", MOST_CLASS_BYTES)));
            case INVOKE ->
                    new Order.Invoke(in.text("class name"), in.code("an unknown wish", 2) == 1);
            case ASSIGN ->
                    new Order.Assign(in.text("class name"), in.text("variable"), in.number());
            default -> throw new AssertionError(kind);
        };
    }
}
