package coldwright.bench.remote;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.ArrayList;
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
        if (answer instanceof Done done) {
            out.writeByte(done.value().isPresent() ? 1 : 0);
            if (done.value().isPresent()) {
                WireText.write(done.value().get().text(), out);
                WireText.write(done.value().get().exact(), out);
                WireText.write(done.value().get().type(), out);
            }
        } else if (answer instanceof Failed failed) {
            out.writeByte(2);
            out.writeInt(failed.order());
            out.writeByte(failed.thrown().size());
            for (ThrownException one : failed.thrown()) {
                one.write(out);
            }
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
        int kind = in.readByte();
        switch (kind) {
            case 0:
                return new Done(Optional.empty());
            case 1:
                return new Done(
                        Optional.of(
                                new ValueText(
                                        WireText.read(in), WireText.read(in), WireText.read(in))));
            case 2:
                int order = in.readInt();
                int count = in.readByte();
                if (count < 1) {
                    throw new IOException("a failure without anything thrown");
                }
                List<ThrownException> thrown = new ArrayList<>();
                for (int i = 0; i < count; i++) {
                    thrown.add(ThrownException.read(in));
                }
                return new Failed(order, thrown);
            default:
                throw new IOException("no answer has the number " + kind);
        }
    }
}
