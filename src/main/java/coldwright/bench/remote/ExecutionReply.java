package coldwright.bench.remote;

import coldwright.figure.wire.MalformedWireException;
import coldwright.figure.wire.WireReader;
import coldwright.figure.wire.WireWriter;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** The bench process' reply to a batch. */
public sealed interface ExecutionReply {
    /**
     * All orders were executed.
     *
     * @param value value of the last statement, if requested
     */
    record Done(Optional<ValueText> value) implements ExecutionReply {}

    /**
     * One order failed; the later ones weren't executed.
     *
     * @param order its index, from 0
     * @param thrown the exception, then its causes; at least one
     */
    record Failed(int order, List<ThrownException> thrown) implements ExecutionReply {
        /** Makes defensive copies. */
        public Failed {
            thrown = List.copyOf(thrown);
        }
    }

    /**
     * Sends a reply.
     *
     * @throws IOException if the other side is gone
     */
    static void write(ExecutionReply answer, DataOutput out) throws IOException {
        WireWriter wire = new WireWriter(OrderBatch.LIMITS, out);
        if (answer instanceof Done done) {
            wire.code(done.value().isPresent() ? 1 : 0);
            if (done.value().isPresent()) {
                wire.text("value", done.value().get().text());
                wire.text("value", done.value().get().exact());
                wire.text("type", done.value().get().type());
            }
        } else if (answer instanceof Failed failed) {
            wire.code(2);
            wire.whole(failed.order());
            wire.list(
                    "causes", failed.thrown(), ThrownException.MOST_CAUSES, one -> one.write(wire));
        } else {
            throw new AssertionError(answer);
        }
    }

    /**
     * Receives a reply.
     *
     * @throws IOException if the other side is gone or sends malformed data
     */
    static ExecutionReply read(DataInput in) throws IOException {
        WireReader wire = new WireReader(OrderBatch.LIMITS, in);
        int kind = wire.code("an unknown answer", 3);
        if (kind == 0) {
            return new Done(Optional.empty());
        }
        if (kind == 1) {
            return new Done(
                    Optional.of(
                            new ValueText(
                                    wire.text("value"), wire.text("value"), wire.text("type"))));
        }
        int order = wire.whole();
        List<ThrownException> thrown =
                wire.list("causes", ThrownException.MOST_CAUSES, () -> ThrownException.read(wire));
        if (thrown.isEmpty()) {
            throw new MalformedWireException("a failure without anything thrown");
        }
        return new Failed(order, thrown);
    }
}
