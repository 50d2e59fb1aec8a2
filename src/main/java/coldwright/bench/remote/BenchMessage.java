package coldwright.bench.remote;

import java.util.List;
import java.util.Optional;

/** What the bench's process sends: output while it executes orders, then one reply. */
public sealed interface BenchMessage {
    /** The messages; figures have at most so many bytes. */
    static RecordWire<BenchMessage> wire(int mostBytes) {
        return new RecordWire<>(BenchMessage.class, ThrownException.MOST_FRAMES, mostBytes);
    }

    /**
     * Printed text.
     *
     * @param utf8 its bytes; a character may be split between two messages
     */
    record Printed(byte[] utf8) implements BenchMessage {}

    /** The output exceeded the limit. */
    record Cut() implements BenchMessage {}

    /**
     * A figure or drawing.
     *
     * @param bytes its wire form, not yet trusted
     */
    record Shown(byte[] bytes) implements BenchMessage {}

    /** The end of a batch of orders. */
    sealed interface Reply extends BenchMessage {}

    /**
     * All orders were executed.
     *
     * @param value value of the last statement, if requested
     */
    record Done(Optional<ValueText> value) implements Reply {}

    /**
     * One order failed; the later ones weren't executed.
     *
     * @param order its index, from 0
     * @param thrown the exception, then its causes; at least one
     */
    record Failed(int order, List<ThrownException> thrown) implements Reply {
        /** Makes defensive copies. */
        public Failed {
            thrown = List.copyOf(thrown);
            if (thrown.isEmpty()) {
                throw new IllegalArgumentException("a failure without anything thrown");
            }
        }
    }
}
