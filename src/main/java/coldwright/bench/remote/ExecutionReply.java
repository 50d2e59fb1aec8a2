package coldwright.bench.remote;

import coldwright.figure.wire.MalformedWireException;
import coldwright.figure.wire.WireReader;
import coldwright.figure.wire.WireWriter;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** What the bench's process says after a batch. */
public sealed interface ExecutionReply {
    /**
     * Every order was obeyed.
     *
     * @param value what the telling statement gave, if one was to tell
     */
    record Done(Optional<ValueText> value) implements ExecutionReply {}

    /**
     * One order failed; those after it were not obeyed.
     *
     * @param order which, from 0
     * @param thrown what was thrown, then its causes; at least one
     */
    record Failed(int order, List<ThrownException> thrown) implements ExecutionReply {
        /** Copies what is given. */
        public Failed {
            thrown = List.copyOf(thrown);
        }
    }

    /**
     * Sends an answer.
     *
     * @param answer what to send
     * @param out where to
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
     * Receives an answer.
     *
     * @param in where from
     * @return the answer
     * @throws IOException if the other side is gone or talks nonsense
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
