package coldwright.bench.remote;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the bench's process says after a batch. */
public sealed interface Answer {
    /**
     * Every order was obeyed.
     *
     * @param value what the telling statement gave, if one was to tell
     */
    record Done(Optional<Shown> value) implements Answer {}

    /**
     * One order failed; those after it were not obeyed.
     *
     * @param order which, from 0
     * @param thrown what was thrown, then its causes; at least one
     */
    record Failed(int order, List<Thrown> thrown) implements Answer {
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
    static void write(Answer answer, DataOutput out) throws IOException {
        if (answer instanceof Done done) {
            out.writeByte(done.value().isPresent() ? 1 : 0);
            if (done.value().isPresent()) {
                Text.write(done.value().get().text(), out);
                Text.write(done.value().get().exact(), out);
                Text.write(done.value().get().type(), out);
            }
        } else if (answer instanceof Failed failed) {
            out.writeByte(2);
            out.writeInt(failed.order());
            out.writeByte(failed.thrown().size());
            for (Thrown one : failed.thrown()) {
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
    static Answer read(DataInput in) throws IOException {
        int kind = in.readByte();
        switch (kind) {
            case 0:
                return new Done(Optional.empty());
            case 1:
                return new Done(
                        Optional.of(new Shown(Text.read(in), Text.read(in), Text.read(in))));
            case 2:
                int order = in.readInt();
                int count = in.readByte();
                if (count < 1) {
                    throw new IOException("a failure without anything thrown");
                }
                List<Thrown> thrown = new ArrayList<>();
                for (int i = 0; i < count; i++) {
                    thrown.add(Thrown.read(in));
                }
                return new Failed(order, thrown);
            default:
                throw new IOException("no answer has the number " + kind);
        }
    }
}
