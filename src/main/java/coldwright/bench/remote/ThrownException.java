package coldwright.bench.remote;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * An exception of a snippet as plain data.
 *
 * @param className binary name of its class
 * @param message its message; may be empty
 * @param trace innermost call first, cut at {@link #MOST_FRAMES}
 */
public record ThrownException(String className, String message, List<StackTraceElement> trace) {
    /** Maximum frames kept: a runaway recursion has thousands, all alike. */
    static final int MOST_FRAMES = 64;

    /** Maximum causes kept. */
    static final int MOST_CAUSES = 8;

    private static final int MOST_MESSAGE = 2_000;

    /** Makes defensive copies. */
    public ThrownException {
        trace = List.copyOf(trace);
    }

    /** A throwable and its causes as data, outermost first. */
    static List<ThrownException> chain(Throwable throwable) {
        List<ThrownException> chain = new ArrayList<>();
        Throwable one = throwable;
        while (one != null && chain.size() < MOST_CAUSES) {
            chain.add(of(one));
            one = given(one::getCause).orElse(null);
        }
        return chain;
    }

    private static ThrownException of(Throwable throwable) {
        StackTraceElement[] all =
                given(throwable::getStackTrace).orElseGet(() -> new StackTraceElement[0]);
        List<StackTraceElement> kept =
                Stream.of(all).filter(Objects::nonNull).limit(MOST_FRAMES).toList();
        String message = given(throwable::getMessage).orElse("");
        return new ThrownException(
                throwable.getClass().getName(),
                message.length() > MOST_MESSAGE
                        ? message.substring(0, MOST_MESSAGE) + "…"
                        : message,
                kept);
    }

    /** What a method of the snippet's own exception gives; it may throw anything itself. */
    private static <T> Optional<T> given(Supplier<T> method) {
        try {
            return Optional.ofNullable(method.get());
        } catch (Throwable e) {
            return Optional.empty();
        }
    }
}
