package coldwright.bench.remote;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Orders to obey in one go.
 *
 * @param number counts batches, so that the last word of one is not taken for another's
 * @param orders what to do, in order; no {@link Order.Redefine} among them
 */
public record OrderBatch(int number, List<Order> orders) {
    private static final int FRESH = 1;
    private static final int DEFINE = 2;
    private static final int INVOKE = 3;
    private static final int ASSIGN = 4;
    private static final int LISTEN = 5;

    /** Copies what is given. */
    public OrderBatch {
        orders = List.copyOf(orders);
    }

    /**
     * Sends it.
     *
     * @param out where to
     * @throws IOException if the other side is gone
     */
    public void write(DataOutput out) throws IOException {
        out.writeInt(number);
        out.writeInt(orders.size());
        for (Order order : orders) {
            write(order, out);
        }
    }

    private static void write(Order order, DataOutput out) throws IOException {
        if (order instanceof Order.Fresh) {
            out.writeByte(FRESH);
        } else if (order instanceof Order.Listen listen) {
            out.writeByte(LISTEN);
            out.writeInt(listen.printedLimit());
            out.writeInt(listen.figureLimit());
        } else if (order instanceof Order.Define define) {
            out.writeByte(DEFINE);
            WireText.write(define.code().name(), out);
            out.writeInt(define.code().bytes().length);
            out.write(define.code().bytes());
        } else if (order instanceof Order.Invoke invoke) {
            out.writeByte(INVOKE);
            WireText.write(invoke.className(), out);
            out.writeBoolean(invoke.wantsValue());
        } else if (order instanceof Order.Assign assign) {
            out.writeByte(ASSIGN);
            WireText.write(assign.className(), out);
            WireText.write(assign.variable(), out);
            out.writeDouble(assign.value());
        } else {
            throw new AssertionError("this order does not cross the wire: " + order);
        }
    }

    /**
     * Receives one.
     *
     * @param in where from
     * @return the batch
     * @throws IOException if the other side is gone or talks nonsense
     */
    public static OrderBatch read(DataInput in) throws IOException {
        int number = in.readInt();
        int count = in.readInt();
        List<Order> orders = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            orders.add(readOrder(in));
        }
        return new OrderBatch(number, orders);
    }

    private static Order readOrder(DataInput in) throws IOException {
        int kind = in.readByte();
        switch (kind) {
            case FRESH:
                return new Order.Fresh();
            case LISTEN:
                return new Order.Listen(in.readInt(), in.readInt());
            case DEFINE:
                String name = WireText.read(in);
                byte[] bytes = new byte[in.readInt()];
                in.readFully(bytes);
                return new Order.Define(CompiledClass.of(name, bytes));
            case INVOKE:
                return new Order.Invoke(WireText.read(in), in.readBoolean());
            case ASSIGN:
                return new Order.Assign(WireText.read(in), WireText.read(in), in.readDouble());
            default:
                throw new IOException("no order has the number " + kind);
        }
    }
}
