package coldwright.bench.remote;

import coldwright.figure.wire.MalformedWireException;
import coldwright.figure.wire.WireLimits;
import coldwright.figure.wire.WireReader;
import coldwright.figure.wire.WireWriter;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Messages between the program and its processes: a record is its components in order, a sealed
 * type the index of its kind and then that record. Incoming data isn't trusted.
 *
 * @param type the record or sealed interface of the messages
 * @param mostItems maximum length of a list
 * @param mostBytes maximum length of a byte array
 */
public record RecordWire<T>(Class<T> type, int mostItems, int mostBytes) {
    /** Texts up to 1 MB. */
    private static final WireLimits LIMITS = new WireLimits("bench's message", "sent", 1 << 20);

    /** Marks the start of each message. */
    static final int OPENING = 0x43424546;

    /**
     * Sends a message.
     *
     * @throws IOException if the other side is gone or the message exceeds a limit
     */
    public void write(T message, DataOutput out) throws IOException {
        WireWriter wire = new WireWriter(LIMITS, out);
        wire.whole(OPENING);
        write(type, message, wire);
    }

    /**
     * Receives a message.
     *
     * @throws MalformedWireException if it isn't one
     * @throws IOException if the other side is gone
     */
    public T read(DataInput in) throws IOException {
        WireReader wire = new WireReader(LIMITS, in);
        if (wire.whole() != OPENING) {
            throw new MalformedWireException("what came from the bench isn't a message");
        }
        try {
            return type.cast(read(type, wire));
        } catch (IllegalArgumentException e) {
            throw new MalformedWireException(e.getMessage());
        }
    }

    private void write(Type as, Object value, WireWriter out) throws IOException {
        if (value instanceof Integer number) {
            out.whole(number);
        } else if (value instanceof Double number) {
            out.number(number);
        } else if (value instanceof Boolean is) {
            out.code(is ? 1 : 0);
        } else if (value instanceof String text) {
            out.text("text", text);
        } else if (value instanceof byte[] bytes) {
            out.bytes("bytes in one piece", bytes, mostBytes);
        } else if (value instanceof List<?> list) {
            out.list("items", list, mostItems, one -> write(argument(as, 0), one, out));
        } else if (value instanceof Optional<?> optional) {
            out.code(optional.isPresent() ? 1 : 0);
            if (optional.isPresent()) {
                write(argument(as, 0), optional.get(), out);
            }
        } else if (value instanceof Map<?, ?> map) {
            out.list(
                    "items",
                    List.copyOf(map.entrySet()),
                    mostItems,
                    entry -> {
                        write(argument(as, 0), entry.getKey(), out);
                        write(argument(as, 1), entry.getValue(), out);
                    });
        } else if (value instanceof StackTraceElement frame) {
            out.text("text", frame.getClassName());
            out.text("text", frame.getMethodName());
            out.whole(frame.getLineNumber());
        } else if (((Class<?>) as).isSealed()) {
            List<Class<?>> kinds = Arrays.asList(((Class<?>) as).getPermittedSubclasses());
            int kind = 0;
            while (!kinds.get(kind).isInstance(value)) {
                kind++;
            }
            out.code(kind);
            write(kinds.get(kind), value, out);
        } else {
            for (RecordComponent component : ((Class<?>) as).getRecordComponents()) {
                write(component.getGenericType(), component(component, value), out);
            }
        }
    }

    private Object read(Type as, WireReader in) throws IOException {
        if (as == int.class || as == Integer.class) {
            return in.whole();
        } else if (as == double.class || as == Double.class) {
            return in.number();
        } else if (as == boolean.class) {
            return in.code("an unknown choice", 2) == 1;
        } else if (as == String.class) {
            return in.text("text");
        } else if (as == byte[].class) {
            return in.bytes("bytes in one piece", mostBytes);
        } else if (as == StackTraceElement.class) {
            return new StackTraceElement(in.text("text"), in.text("text"), "", in.whole());
        } else if (as instanceof ParameterizedType generic) {
            if (generic.getRawType() == List.class) {
                return in.list("items", mostItems, () -> read(argument(as, 0), in));
            } else if (generic.getRawType() == Optional.class) {
                return in.code("an unknown choice", 2) == 1
                        ? Optional.of(read(argument(as, 0), in))
                        : Optional.empty();
            }
            Map<Object, Object> map = new LinkedHashMap<>();
            for (int left = in.count("items", mostItems); left > 0; left--) {
                map.put(read(argument(as, 0), in), read(argument(as, 1), in));
            }
            return map;
        }
        Class<?> message = (Class<?>) as;
        if (message.isSealed()) {
            Class<?>[] kinds = message.getPermittedSubclasses();
            return read(kinds[in.code("an unknown message", kinds.length)], in);
        }
        RecordComponent[] components = message.getRecordComponents();
        Object[] values = new Object[components.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = read(components[i].getGenericType(), in);
        }
        return instance(message, components, values);
    }

    private static Type argument(Type generic, int index) {
        return ((ParameterizedType) generic).getActualTypeArguments()[index];
    }

    private static Object component(RecordComponent component, Object value) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(value);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Object instance(Class<?> type, RecordComponent[] components, Object[] values) {
        try {
            var constructor =
                    type.getDeclaredConstructor(
                            Arrays.stream(components)
                                    .map(RecordComponent::getType)
                                    .toArray(Class<?>[]::new));
            constructor.setAccessible(true);
            return constructor.newInstance(values);
        } catch (java.lang.reflect.InvocationTargetException e) {
            throw new IllegalArgumentException(e.getCause().getMessage(), e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
