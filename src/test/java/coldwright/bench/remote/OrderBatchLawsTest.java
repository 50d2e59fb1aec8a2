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
import java.util.List;
import java.util.Optional;

/** What crosses the wire to the bench and back comes as it was sent, or is refused. */
class OrderBatchLawsTest {
    @Cases(300)
    void ordersComeAsTheyWereSent(Draw draw) throws IOException {
        OrderBatch batch =
                new OrderBatch(
                        draw.intIn(Integer.MIN_VALUE, Integer.MAX_VALUE),
                        draw.listOf(0, 20, OrderBatchLawsTest::order));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        batch.write(new DataOutputStream(bytes));
        assertEquals(batch, OrderBatch.read(in(bytes.toByteArray())));
    }

    private static Order order(Draw draw) {
        return draw.<Order>from(
                one -> new Order.Fresh(),
                one -> new Order.Listen(one.intIn(0, 1_000_000), one.intIn(0, 100)),
                one -> new Order.Define(CompiledClass.of(one.text(40), one.bytes(20_000))),
                one -> new Order.Invoke(one.text(40), one.anyBoolean()),
                one -> new Order.Assign(one.text(40), one.text(40), one.finiteDouble()));
    }

    @Cases(300)
    void answersComeAsTheyWereSent(Draw draw) throws IOException {
        ExecutionReply answer =
                draw.<ExecutionReply>from(
                        one -> new ExecutionReply.Done(Optional.empty()),
                        one ->
                                new ExecutionReply.Done(
                                        Optional.of(
                                                new ValueText(
                                                        one.text(90), one.text(90), one.text(9)))),
                        one ->
                                new ExecutionReply.Failed(
                                        one.intIn(0, 1_000),
                                        one.listOf(1, 8, OrderBatchLawsTest::thrown)));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ExecutionReply.write(answer, new DataOutputStream(bytes));
        assertEquals(answer, ExecutionReply.read(in(bytes.toByteArray())));
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
        byte[] bytes = draw.bytes(300);
        try {
            OrderBatch.read(in(bytes));
        } catch (IOException e) {
            // refused
        }
        try {
            ExecutionReply.read(in(bytes));
        } catch (IOException e) {
            // refused
        }
        try {
            WireFrame.read(in(bytes), 100);
        } catch (IOException e) {
            // refused
        }
    }

    @Test
    void falseCountsAreRefusedInOneSentence() {
        byte[] manyOrders = ByteBuffer.allocate(8).putInt(1).putInt(Integer.MAX_VALUE).array();
        assertEquals(
                "the bench's message has 2147483647 orders; at most 1048576 are sent",
                assertThrows(MalformedWireException.class, () -> OrderBatch.read(in(manyOrders)))
                        .getMessage());
        byte[] noCauses = ByteBuffer.allocate(9).put((byte) 2).putInt(0).putInt(-1).array();
        assertEquals(
                "the bench's message counts -1 causes, less than none",
                assertThrows(MalformedWireException.class, () -> ExecutionReply.read(in(noCauses)))
                        .getMessage());
        byte[] longFrame =
                ByteBuffer.allocate(9).putInt(WireFrame.OPENING).put((byte) 0).putInt(101).array();
        assertEquals(
                "the bench's message has 101 bytes in a frame; at most 100 are sent",
                assertThrows(MalformedWireException.class, () -> WireFrame.read(in(longFrame), 100))
                        .getMessage());
        assertThrows(
                IOException.class,
                () ->
                        new OrderBatch(1, List.of(new Order.Invoke("x".repeat(1 << 21), true)))
                                .write(new DataOutputStream(new ByteArrayOutputStream())));
    }

    private static DataInputStream in(byte[] bytes) {
        return new DataInputStream(new ByteArrayInputStream(bytes));
    }
}
