package coldwright.batch;

import java.util.Optional;
import java.util.function.Function;

/**
 * The text of a field with its value or fault. It is parsed once, when it is typed.
 *
 * @param <T> type of its value
 * @param text as typed
 * @param value its value; empty if nothing valid is typed
 * @param fault its fault in a sentence; empty if there is none
 */
public record Typed<T>(String text, Optional<T> value, String fault) {
    /** Parses a field; the reader throws if the text is invalid. */
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

    /** An empty field. */
    static <T> Typed<T> nothing() {
        return new Typed<>("", Optional.empty(), "");
    }

    /** Whether the text is empty or only spaces. */
    public boolean isBlank() {
        return text.isBlank();
    }
}
