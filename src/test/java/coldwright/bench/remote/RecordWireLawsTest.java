package coldwright.bench.remote;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import coldwright.figure.wire.MalformedWireException;
import coldwright.laws.Cases;
import coldwright.laws.Draw;

import org.junit.jupiter.api.Test;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What crosses the wire to the bench and back comes as it was sent, or is refused. */
class RecordWireLawsTest {
    private static final RecordWire<BenchMessage> MESSAGES = BenchMessage.wire(100);

    /** Every kind of component that a message may have. */
    record Everything(
            int count,
            double number,
            boolean is,
            String text,
            Optional<String> perhaps,
            Map<Integer, Double> numbers,
            List<Order> orders) {}

    @Cases(300)
    void ordersComeAsTheyWereSent(Draw draw) throws IOException {
        OrderBatch batch = new OrderBatch(draw.listOf(0, 20, RecordWireLawsTest::order));
        assertEquals(batch, OrderBatch.WIRE.read(in(bytes(OrderBatch.WIRE, batch))));
    }

    @Cases(300)
    void everyKindOfComponentComesAsItWasSent(Draw draw) throws IOException {
        RecordWire<Everything> wire = new RecordWire<>(Everything.class, 20, 20_000);
        Everything message =
                new Everything(
                        draw.intIn(Integer.MIN_VALUE, Integer.MAX_VALUE),
                        draw.finiteDouble(),
                        draw.anyBoolean(),
                        draw.text(40),
                        draw.anyBoolean() ? Optional.of(draw.text(9)) : Optional.empty(),
                        Map.of(draw.intIn(0, 9), draw.finiteDouble()),
                        draw.listOf(0, 20, RecordWireLawsTest::order));
        assertEquals(message, wire.read(in(bytes(wire, message))));
    }

    private static Order order(Draw draw) {
        return draw.<Order>from(
                one -> new Order.Fresh(),
                one -> new Order.Listen(one.intIn(0, 1_000_000), one.intIn(0, 100)),
                one -> new Order.Define(new CompiledClass(one.text(40), one.bytes(20_000))),
                one -> new Order.Redefine(new CompiledClass(one.text(40), one.bytes(20_000))),
                one -> new Order.Invoke(one.text(40), one.anyBoolean()),
                one -> new Order.Assign(one.text(40), one.text(40), one.finiteDouble()));
    }

    @Cases(300)
    void messagesComeAsTheyWereSent(Draw draw) throws IOException {
        BenchMessage message =
                draw.<BenchMessage>from(
                        one -> new BenchMessage.Cut(),
                        one -> new BenchMessage.Done(Optional.empty()),
                        one ->
                                new BenchMessage.Done(
                                        Optional.of(
                                                new ValueText(
                                                        one.text(90), one.text(90), one.text(9)))),
                        one ->
                                new BenchMessage.Failed(
                                        one.intIn(0, 1_000),
                                        one.listOf(1, 8, RecordWireLawsTest::thrown)));
        assertEquals(message, MESSAGES.read(in(bytes(MESSAGES, message))));
    }

    private static ThrownException thrown(Draw draw) {
        return new ThrownException(
                draw.text(40),
                draw.text(400),
                draw.listOf(
                        0,
                        64,
                        one ->
                                new StackTraceElement(
                                        one.text(20), one.text(20), "", one.intIn(-2, 999))));
    }

    /** Whatever comes, it is read or refused, and nothing else. */
    @Cases(1000)
    void anyBytesAreReadOrRefused(Draw draw) {
        byte[] drawn = draw.bytes(300);
        byte[] bytes =
                ByteBuffer.allocate(drawn.length + 4)
                        .putInt(draw.anyBoolean() ? RecordWire.OPENING : 0)
                        .put(drawn)
                        .array();
        try {
            OrderBatch.WIRE.read(in(bytes));
        } catch (IOException e) {
            // refused
        }
        try {
            MESSAGES.read(in(bytes));
        } catch (IOException e) {
            // refused
        }
    }

    @Test
    void falseCountsAreRefusedInOneSentence() throws IOException {
        byte[] opening = ByteBuffer.allocate(4).putInt(RecordWire.OPENING).array();
        assertEquals(
                "the bench's message has 2147483647 items; at most 1048576 are sent",
                refusal(OrderBatch.WIRE, opening, 0x7f, 0xff, 0xff, 0xff));
        assertEquals(
                "the bench's message has an unknown message, number 4",
                refusal(MESSAGES, opening, 4));
        assertEquals(
                "what came from the bench isn't a message", refusal(MESSAGES, new byte[1_000]));
        BenchMessage failed =
                new BenchMessage.Failed(0, List.of(new ThrownException("", "", List.of())));
        byte[] failure = Arrays.copyOf(bytes(MESSAGES, failed), 4 + 1 + 1 + 4);
        assertEquals(
                "the bench's message counts -1 items, less than none",
                refusal(MESSAGES, failure, 0xff, 0xff, 0xff, 0xff));
        assertEquals("a failure without anything thrown", refusal(MESSAGES, failure, 0, 0, 0, 0));
        byte[] printed =
                Arrays.copyOf(bytes(MESSAGES, new BenchMessage.Printed(new byte[0])), 4 + 1);
        assertEquals(
                "the bench's message has 101 bytes in one piece; at most 100 are sent",
                refusal(MESSAGES, printed, 0, 0, 0, 101));
        assertThrows(
                IOException.class,
                () ->
                        bytes(
                                OrderBatch.WIRE,
                                new OrderBatch(
                                        List.of(new Order.Invoke("x".repeat(1 << 21), true)))));
    }

    private static String refusal(RecordWire<?> wire, byte[] begin, int... more) {
        byte[] bytes = Arrays.copyOf(begin, begin.length + more.length);
        for (int i = 0; i < more.length; i++) {
            bytes[begin.length + i] = (byte) more[i];
        }
        return assertThrows(MalformedWireException.class, () -> wire.read(in(bytes))).getMessage();
    }

    private static <T> byte[] bytes(RecordWire<T> wire, T message) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        wire.write(message, new DataOutputStream(bytes));
        return bytes.toByteArray();
    }

    private static DataInputStream in(byte[] bytes) {
        return new DataInputStream(new ByteArrayInputStream(bytes));
    }
}
