package coldwright.batch;

import java.util.Optional;
import java.util.function.Function;

/**
 * What somebody typed into a field, and what it means or what is wrong with it. It is read once,
 * when it is typed.
 *
 * @param <T> what it means
 * @param text as typed
 * @param value what it means; empty if nothing is typed or it is wrong
 * @param fault what is wrong with it, in a sentence; empty if nothing is
 */
public record Typed<T>(String text, Optional<T> value, String fault) {
    /** Reads a field with what gives its meaning or refuses it with a sentence. */
    static <T> Typed<T> of(String text, Function<String, T> reader) {
        if (text.isBlank()) {
            return new Typed<>(text, Optional.empty(), "");
        }
        try {
            return new Typed<>(text, Optional.of(reader.apply(text.strip())), "");
        } catch (IllegalArgumentException e) {
            return new Typed<>(text, Optional.empty(), e.getMessage());
        }
    }

    /** A field in which nothing is typed. */
    static <T> Typed<T> nothing() {
        return new Typed<>("", Optional.empty(), "");
    }

    /** Whether nothing is typed but spaces. */
    public boolean isBlank() {
        return text.isBlank();
    }
}
