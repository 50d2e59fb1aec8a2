package coldwright.figure;

import coldwright.figure.wire.WireLimits;
import coldwright.figure.wire.WireReader;
import coldwright.figure.wire.WireWriter;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The wire format of figures and drawings, in which they leave the bench for a process of the same
 * build.
 *
 * <pre>
 * a record                  its components, in order
 * a sealed type             a byte, the index of the kind, then the record
 * an enum                   a byte: its ordinal
 * an optional               a byte: 0 none, 1 followed by the value
 * a list                    count, then elements
 * a column of numbers       count, then numbers
 * </pre>
 *
 * Counts, texts and numbers are as in {@link coldwright.figure.wire}. Input isn't trusted.
 */
public final class ExhibitCodec {
    /** The longest text is 16 kB of UTF-8. */
    private static final WireLimits LIMITS = new WireLimits("figure", "shown", 16_384);

    /** Maximum elements of lists; others have at most as many as there may be points. */
    static final Map<String, Integer> MOST =
            Map.of("series", 64, "marks", 64, "sources", 64, "moments", 400);

    /** What reflection finds of a sealed type or a record, kept because it is slow. */
    private record Shape(List<Class<?>> kinds, List<RecordComponent> parts, Constructor<?> maker) {
        private static final ClassValue<Shape> KNOWN =
                new ClassValue<>() {
                    @Override
                    protected Shape computeValue(Class<?> type) {
                        if (!type.isRecord()) {
                            return new Shape(
                                    List.of(type.getPermittedSubclasses()), List.of(), null);
                        }
                        List<RecordComponent> parts = List.of(type.getRecordComponents());
                        Class<?>[] types =
                                parts.stream().map(RecordComponent::getType).toArray(Class[]::new);
                        try {
                            return new Shape(List.of(), parts, type.getDeclaredConstructor(types));
                        } catch (NoSuchMethodException e) {
                            throw new AssertionError("a record has a canonical constructor", e);
                        }
                    }
                };
    }

    private ExhibitCodec() {}

    /**
     * Writes a figure or a drawing.
     *
     * @throws IOException if the stream fails, or a limit is exceeded; a part may have been written
     *     already
     */
    public static void write(Exhibit exhibit, DataOutput out) throws IOException {
        write(Exhibit.class, "figure", exhibit, new WireWriter(LIMITS, out));
    }

    private static void write(Type type, String name, Object value, WireWriter out)
            throws IOException {
        if (value instanceof String text) {
            out.text(name, text);
        } else if (value instanceof Double number) {
            out.number(number);
        } else if (value instanceof Enum<?> one) {
            out.code(one.ordinal());
        } else if (value instanceof NumberColumn column) {
            out.count("points", column.size(), Integer.MAX_VALUE);
            out.numbers(column.size(), column::at);
        } else if (value instanceof OptionalDouble end) {
            write(type, name, end.stream().boxed().findFirst(), out);
        } else if (value instanceof Optional<?> some) {
            out.code(some.isPresent() ? 1 : 0);
            if (some.isPresent()) {
                write(some.get().getClass(), name, some.get(), out);
            }
        } else if (value instanceof List<?> list) {
            int most = MOST.getOrDefault(name, Integer.MAX_VALUE);
            out.list(name, list, most, one -> write(elementOf(type), name, one, out));
        } else {
            List<Class<?>> kinds = Shape.KNOWN.get((Class<?>) type).kinds();
            if (!kinds.isEmpty()) {
                out.code(kinds.indexOf(value.getClass()));
            }
            for (RecordComponent part : Shape.KNOWN.get(value.getClass()).parts()) {
                write(part.getGenericType(), part.getName(), valueOf(part, value), out);
            }
        }
    }

    private static Object valueOf(RecordComponent part, Object of) {
        try {
            return part.getAccessor().invoke(of);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(part.toString(), e);
        }
    }

    private static Type elementOf(Type type) {
        return ((ParameterizedType) type).getActualTypeArguments()[0];
    }

    /**
     * Reads a figure or a drawing from an untrusted stream.
     *
     * @param pointLimit maximum points, over all series or over all pieces of all moments
     * @throws IOException if the stream fails or ends early, is neither, or exceeds a limit; the
     *     message is one sentence
     */
    public static Exhibit read(DataInput in, int pointLimit) throws IOException {
        WireReader wire = new WireReader(LIMITS, in);
        Reader reader = new Reader(wire, pointLimit);
        return wire.whole(() -> (Exhibit) reader.read(Exhibit.class, "figure"));
    }

    /** Reads one message, counting its points. */
    private static final class Reader {
        private final WireReader in;
        private final int pointLimit;
        private int pointsLeft;

        Reader(WireReader in, int pointLimit) {
            this.in = in;
            this.pointLimit = pointLimit;
            this.pointsLeft = pointLimit;
        }

        Object read(Type type, String name) throws IOException {
            if (type == String.class) {
                return in.text(name);
            } else if (type == double.class) {
                return in.number();
            } else if (type == NumberColumn.class) {
                return NumberColumn.of(in.numbers(in.count("points", pointsLeft)));
            } else if (type == OptionalDouble.class) {
                return present(name) ? OptionalDouble.of(in.number()) : OptionalDouble.empty();
            } else if (type instanceof ParameterizedType generic) {
                if (generic.getRawType() == Optional.class) {
                    return present(name)
                            ? Optional.of(read(elementOf(type), name))
                            : Optional.empty();
                }
                int most = MOST.getOrDefault(name, pointsLeft);
                return in.list(name, most, () -> read(elementOf(type), name));
            }
            Class<?> kind = (Class<?>) type;
            if (kind.isEnum()) {
                Object[] all = kind.getEnumConstants();
                return all[in.code("an unknown " + name, all.length)];
            }
            List<Class<?>> kinds = Shape.KNOWN.get(kind).kinds();
            return kinds.isEmpty()
                    ? made(Shape.KNOWN.get(kind))
                    : read(kinds.get(in.code("an unknown kind of " + name, kinds.size())), name);
        }

        private boolean present(String name) throws IOException {
            return in.code("an unreadable " + name, 2) == 1;
        }

        private Object made(Shape shape) throws IOException {
            Object[] values = new Object[shape.parts().size()];
            for (int i = 0; i < values.length; i++) {
                RecordComponent part = shape.parts().get(i);
                values[i] = read(part.getGenericType(), part.getName());
            }
            try {
                Object made = shape.maker().newInstance(values);
                pointsLeft -= made instanceof Series series ? series.size() : 0;
                pointsLeft -= made instanceof Piece piece ? piece.size() : 0;
                if (pointsLeft < 0) {
                    throw new IllegalArgumentException(
                            "the figure has more points than the %d that are shown"
                                    .formatted(pointLimit));
                }
                return made;
            } catch (InvocationTargetException e) {
                if (e.getCause() instanceof IllegalArgumentException refused) {
                    throw refused;
                }
                throw new AssertionError(e);
            } catch (InstantiationException | IllegalAccessException e) {
                throw new AssertionError(e);
            }
        }
    }
}
